import { createHash } from 'node:crypto';
import { gunzipSync } from 'node:zlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readBackup } from '../../../src/store/backup/read-backup.ts';
import { writeBackup } from '../../../src/store/backup/write-backup.ts';
import { about, linesOf, newerEntry, sampleEntries, text } from './sample-log.ts';

const entries = [...sampleEntries(), newerEntry];
const file = writeBackup({ entries, about });

function reading(bytes: Uint8Array) {
  const read = readBackup(bytes);
  if (read.kind === 'refused') throw new Error(`refused: ${read.why}`);
  return read;
}

test('a backup gives back every entry, byte for byte, and those of a newer version too', () => {
  fc.assert(
    fc.property(fc.subarray(entries), (some) => {
      const read = reading(writeBackup({ entries: some, about }));
      expect(new Set(linesOf(read.entries))).toEqual(new Set(linesOf(some)));
      expect(read).toMatchObject({ unreadable: [], cut: false, digestFits: true });
      expect(read.entries).toHaveLength(some.length);
    }),
  );
});

test('the same log gives the same file, in whatever order it comes, and doubled', () => {
  fc.assert(
    fc.property(fc.shuffledSubarray(entries, { minLength: entries.length }), (shuffled) => {
      expect(writeBackup({ entries: [...shuffled, ...shuffled.slice(3)], about })).toEqual(file);
    }),
    { numRuns: 20 },
  );
});

test('zlib unpacks the file, and every line stands by its own sums (FIPS 180-4, node:crypto)', () => {
  const unpacked = gunzipSync(file);
  const body = unpacked.subarray(unpacked.indexOf('\n') + 1);
  const [head, ...lines] = text.decode(unpacked).trimEnd().split('\n');
  const manifest = JSON.parse(head ?? '');
  expect(manifest.digest).toBe(createHash('sha256').update(body).digest('hex'));
  expect(manifest.entries).toBe(lines.length);
  expect(lines).toHaveLength(entries.length);
  for (const line of lines) {
    const { prev, link, event } = JSON.parse(line);
    const sum = createHash('sha256').update(prev + JSON.stringify(event));
    expect(sum.digest('hex').slice(0, 32)).toBe(link);
  }
});

test('the manifest says how far each station goes', () => {
  const { manifest } = reading(file);
  const bench = entries.filter(({ event }) => event.station === 'bench');
  expect(manifest?.stations.map(({ station }) => station)).toEqual(['bench', 'office', 'station-z']);
  expect(manifest?.stations[0]).toEqual({
    station: 'bench',
    last: bench.length,
    entries: bench.length,
    link: bench.at(-1)?.link,
  });
  expect(manifest?.made).toEqual({ wall: about.wall, zone: about.zone });
});

test('plain lines are read as the packed ones are', () => {
  expect(readBackup(gunzipSync(file))).toEqual(readBackup(file));
});
