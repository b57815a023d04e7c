import { expect, test } from 'vitest';
import type { Link } from '../../../src/domain/log/chain.ts';
import { readBackup } from '../../../src/store/backup/read-backup.ts';
import { writeBackup } from '../../../src/store/backup/write-backup.ts';
import { previewOf } from '../../support/preview-of.ts';
import { about, newerEntry, sampleEntries } from './sample-log.ts';

const entries = sampleEntries();
const bench = entries.filter(({ event }) => event.station === 'bench');

function reading(bytes: Uint8Array) {
  const read = readBackup(bytes);
  if (read.kind === 'refused') throw new Error(`refused: ${read.why}`);
  return read;
}

test('a backup is weighed against what is here: new, here already, unreadable, newest', () => {
  const held = new Set(bench.slice(0, 10).map(({ link }) => link));
  const read = reading(writeBackup({ entries: [...entries, newerEntry], about }));
  const preview = previewOf(read, held);
  const office = entries.length - bench.length;
  // The 24th and last event of each station's log is a minute after the one before it, from 9 o'clock on.
  const newest = Date.UTC(2026, 2, 2, 9) + (bench.length - 3) * 60_000;
  expect(preview.perStation.map(({ newest: _, ...rest }) => rest)).toEqual([
    { station: 'bench', adds: bench.length - 10, here: 10 },
    { station: 'office', adds: office, here: 0 },
    { station: 'station-z', adds: 1, here: 0 },
  ]);
  expect(preview).toMatchObject({ adds: entries.length + 1 - 10, here: 10, unreadable: 0 });
  expect(preview.newest).toBe(Math.max(...preview.perStation.map((each) => each.newest)));
  expect(preview.newest).toBeGreaterThanOrEqual(newest);
});

test('merged three times, the second and the third add nothing', () => {
  const held = new Set<Link>();
  const added = [1, 2, 3].map(() => {
    const read = reading(writeBackup({ entries, about }));
    const { adds } = previewOf(read, held);
    for (const { link } of read.entries) held.add(link);
    return adds;
  });
  expect(added).toEqual([entries.length, 0, 0]);
});

test('an entry that comes twice in a file counts once', () => {
  const file = reading(writeBackup({ entries, about }));
  const doubled = { ...file, entries: [...file.entries, ...file.entries] };
  expect(previewOf(doubled, new Set()).adds).toBe(entries.length);
});

test('a backup without entries has no newest', () => {
  expect(previewOf(reading(writeBackup({ entries: [], about })), new Set())).toEqual({
    adds: 0,
    here: 0,
    unreadable: 0,
    newest: null,
    perStation: [],
  });
});
