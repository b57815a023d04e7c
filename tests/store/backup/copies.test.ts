import { describe, expect, test } from 'vitest';
import type { Entry } from '../../../src/domain/log/chain.ts';
import { type CopyToKeep, keepCopy, listCopies } from '../../../src/store/backup/copies.ts';
import { readBackup } from '../../../src/store/backup/read-backup.ts';
import type { FileShelf } from '../../../src/store/file-shelf.ts';
import { memoryShelf } from '../../../src/store/memory-shelf.ts';
import { about, linesOf, sampleEntries } from './sample-log.ts';

const log = sampleEntries();

function order(entries: readonly Entry[], day = '2026-03-02', kind: CopyToKeep['kind'] = 'usual') {
  return { entries, about, day, kind };
}

/** The days of the usual copies on a shelf, the newest first. */
async function days(shelf: FileShelf): Promise<readonly string[]> {
  return (await listCopies(shelf)).filter(({ kind }) => kind === 'usual').map(({ day }) => day);
}

describe('copies on the shelf', () => {
  test('can be listed and read back, the newest first', async () => {
    const shelf = memoryShelf();
    await keepCopy(shelf, order(log.slice(0, 9), '2026-03-02'));
    const kept = await keepCopy(shelf, order(log, '2026-03-03'));
    const [newest, older] = await listCopies(shelf);
    expect(kept).toEqual({ kind: 'kept', name: newest?.name, entries: log.length, removed: [] });
    expect([newest?.day, older?.day]).toEqual(['2026-03-03', '2026-03-02']);
    const reading = readBackup((await shelf.read(newest?.name ?? '')) ?? new Uint8Array());
    const found = reading.kind === 'read' ? [...linesOf(reading.entries)].sort() : [];
    expect(found).toEqual([...linesOf(log)].sort());
  });

  test('are those of the last three days and of two weeks before', async () => {
    const shelf = memoryShelf();
    // Monday 2 to Wednesday 25 March 2026, Wednesdays free, twice a day: the weeks before end on Sundays.
    for (let date = 2; date <= 25; date += 1)
      for (let twice = 0; twice < 2 && date % 7 !== 4; twice += 1)
        await keepCopy(shelf, order(log, `2026-03-${String(date).padStart(2, '0')}`));
    expect(await days(shelf)).toEqual(['2026-03-24', '2026-03-23', '2026-03-22', '2026-03-15', '2026-03-08']);
  });

  test('go by their order and not by their day, since a clock may be wrong', async () => {
    const shelf = memoryShelf();
    for (const day of ['2093-01-05', '2093-01-06', '2093-01-07', '2026-03-02', '2026-03-03', '2026-03-04'])
      await keepCopy(shelf, order(log, day));
    expect((await days(shelf)).slice(0, 3)).toEqual(['2026-03-04', '2026-03-03', '2026-03-02']);
  });

  test('from before a restore are kept apart: the last two', async () => {
    const shelf = memoryShelf();
    for (const day of ['2026-03-02', '2026-03-03', '2026-03-04'])
      await keepCopy(shelf, order(log, day, 'before-restore'));
    await keepCopy(shelf, order(log, '2026-03-05'));
    const list = await listCopies(shelf);
    expect(list.map(({ day, kind }) => `${day} ${kind}`)).toEqual([
      '2026-03-05 usual',
      '2026-03-04 before-restore',
      '2026-03-03 before-restore',
    ]);
  });

  test('leave the other files of the shelf alone', async () => {
    const shelf = memoryShelf();
    await shelf.write('journal-000001.jsonl', Uint8Array.of(1));
    for (let copy = 0; copy < 3; copy += 1) await keepCopy(shelf, order(log));
    expect(await shelf.names()).toHaveLength(2);
    expect(await shelf.read('journal-000001.jsonl')).toEqual(Uint8Array.of(1));
  });
});

describe('the guard', () => {
  test('makes no copy of a log that is empty or has shrunk, and keeps the old one', async () => {
    const shelf = memoryShelf();
    await keepCopy(shelf, order(log));
    const before = await shelf.names();
    for (const left of [[], log.slice(0, Math.floor(log.length / 10))]) {
      expect(await keepCopy(shelf, order(left))).toEqual({
        kind: 'guarded',
        name: null,
        holder: before[0],
        lacking: log.length - left.length,
      });
      expect(await shelf.names()).toEqual(before);
    }
  });

  test('keeps the old copy beside one of a log that lost some entries and gained others', async () => {
    const shelf = memoryShelf();
    const first = await keepCopy(shelf, order(log.slice(0, 20)));
    const result = await keepCopy(shelf, order(log.slice(5)));
    expect(result).toMatchObject({ kind: 'guarded', lacking: 5 });
    // However many good copies follow, none of them has those five.
    for (let date = 10; date < 20; date += 1) await keepCopy(shelf, order(log.slice(5), `2026-03-${date}`));
    expect(first.kind === 'kept' && (await shelf.names()).includes(first.name)).toBe(true);
  });

  test('lets the old copy go once its entries are back', async () => {
    const shelf = memoryShelf();
    const first = await keepCopy(shelf, order(log.slice(0, 20)));
    await keepCopy(shelf, order(log.slice(5)));
    const last = await keepCopy(shelf, order(log));
    expect(last.kind === 'kept' && first.kind === 'kept' && last.removed.includes(first.name)).toBe(true);
    expect(await shelf.names()).toHaveLength(1);
  });

  test('leaves a copy that cannot be read where it is', async () => {
    const shelf = memoryShelf();
    const first = await keepCopy(shelf, order(log));
    if (first.kind !== 'kept') throw new Error('no copy was kept');
    await shelf.write(first.name, Uint8Array.of(1, 2, 3));
    await keepCopy(shelf, order(log));
    expect(await shelf.names()).toContain(first.name);
  });
});

describe('a shelf that fails', () => {
  /** A shelf on which the writing of a file goes wrong as told. */
  const failing = (files: Map<string, Uint8Array>, wrong: Partial<FileShelf>): FileShelf => ({
    ...memoryShelf(files),
    ...wrong,
  });

  test('costs no older copy, whatever it does with the new one', async () => {
    const files = new Map<string, Uint8Array>();
    await keepCopy(memoryShelf(files), order(log));
    const before = [...files];
    const write = async (name: string, bytes: Uint8Array) => void files.set(name, bytes);
    const shelves: readonly FileShelf[] = [
      failing(files, { write: () => Promise.reject(new Error('the disk is full')) }),
      failing(files, { write: async () => undefined }),
      failing(files, { write: (name, bytes) => write(name, bytes.slice(0, -40)) }),
      failing(files, {
        write: (name, bytes) =>
          write(
            name,
            bytes.map((byte, at) => (at === 400 ? byte ^ 4 : byte)),
          ),
      }),
      failing(files, { names: () => Promise.reject(new Error('the shelf is gone')) }),
    ];
    for (const shelf of shelves) {
      expect(await keepCopy(shelf, order(log))).toMatchObject({ kind: 'failed' });
      expect([...files]).toEqual(before);
    }
  });

  test('takes no older copy off before the new one was read back', async () => {
    const files = new Map<string, Uint8Array>();
    const done: string[] = [];
    const inner = memoryShelf(files);
    const shelf: FileShelf = {
      ...inner,
      write: (name, bytes) => inner.write(name, bytes).finally(() => done.push(`write ${name}`)),
      read: (name) => inner.read(name).finally(() => done.push(`read ${name}`)),
      remove: (name) => inner.remove(name).finally(() => done.push(`remove ${name}`)),
    };
    const first = await keepCopy(shelf, order(log));
    const second = await keepCopy(shelf, order(log));
    if (first.kind !== 'kept' || second.kind !== 'kept') throw new Error('no copy was kept');
    const steps = done.slice(done.indexOf(`write ${second.name}`));
    expect(steps.indexOf(`read ${second.name}`)).toBe(1);
    expect(steps.at(-1)).toBe(`remove ${first.name}`);
  });
});
