import { gunzipSync, gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Entry, noLink } from '../../../src/domain/log/chain.ts';
import type { PackedRun } from '../../../src/domain/packed/packed-run.ts';
import { entriesIn } from '../../../src/domain/packed/parcel.ts';
import { readBackup } from '../../../src/store/backup/read-backup.ts';
import { readPacked } from '../../../src/store/backup/read-packed.ts';
import { writeBackup } from '../../../src/store/backup/write-backup.ts';
import type { LogSource } from '../../../src/store/log-to-copy.ts';
import { type FilesReading, readFiles } from '../../../src/store/read-files.ts';
import { freshName, openTestLog, sealAll } from '../../support/log-makers.ts';
import { longLog, otherStory } from '../../support/long-logs.ts';
import { saidOfPart, withoutPart, withPart } from '../../support/packed-files.ts';
import { packedRuns } from '../../support/run-makers.ts';
import { openSealed, sealBackup } from '../../support/sealed-bytes.ts';
import { about, linesOf, sampleEntries, text } from './sample-log.ts';

const log = [...longLog(900), ...longLog(300, 'station-y')];
/** Too few of a third station for a run. */
const entries = [...log, ...sampleEntries('bench')];
const file = writeBackup({ entries, about });
const read = ({ bytes, log: here }: { bytes: Uint8Array; log: LogSource }) =>
  readFiles({ files: [new Blob([Uint8Array.from(bytes)])], log: here, photos: null });
const nothing = { kind: 'lines', lines: [] } as const;

/** A reading as what it says and holds, however that is packed. */
function told(reading: FilesReading) {
  if (reading.kind === 'refused') return reading;
  const { parcel, manifest, ...rest } = reading;
  return { ...rest, made: manifest?.made, lines: linesOf(entriesIn(parcel)).toSorted() };
}

async function expectByLines(bytes: Uint8Array, wanted = file): Promise<void> {
  expect(await readPacked(bytes)).toBe(undefined);
  expect(told(await read({ bytes, log: nothing }))).toEqual(
    told(await read({ bytes: withoutPart(wanted), log: nothing })),
  );
}

describe('a backup with a packed part', () => {
  test('is told by it just as by its lines', async () => {
    const packed = await readPacked(file);
    expect(packed?.parcel.runs.map(({ entries: length }) => length)).toEqual([300, 900]);
    const reading = await read({ bytes: file, log: nothing });
    expect(told(reading)).toEqual(told(await read({ bytes: withoutPart(file), log: nothing })));
    expect(reading).toMatchObject({ kind: 'read', entries: entries.length, cut: false, digestFits: true });
  });

  test('is the same lines to whoever knows nothing of it', () => {
    const lines = text.decode(gunzipSync(file)).trimEnd().split('\n').slice(1);
    expect(new Set(lines)).toEqual(new Set(linesOf(entries)));
    const reading = readBackup(file);
    expect(reading).toMatchObject({ kind: 'read', unreadable: [], cut: false, digestFits: true });
    expect(reading.kind === 'read' && linesOf(reading.entries)).toEqual(lines);
    expect(readBackup(file)).toEqual(readBackup(withoutPart(file)));
  });

  test('may be unpacked and packed by another program, which leaves the part out', async () => {
    await expectByLines(gzipSync(gunzipSync(file)));
    await expectByLines(gunzipSync(file));
  });

  test('keeps it under a seal', async () => {
    const random = (length: number) => crypto.getRandomValues(new Uint8Array(length));
    const sealed = await sealBackup(file, { passphrase: 'twelve hafts', random });
    const opened = await openSealed(sealed.bytes, { passphrase: 'twelve hafts' });
    expect(opened.kind === 'opened' && (await readPacked(opened.bytes))).toBeTruthy();
  });

  test('has the runs of the store as they lie, without the names of taps', async () => {
    const name = freshName();
    const store = await openTestLog(name);
    await store.merge({ entries: log, now: 0 });
    await sealAll(name);
    const parcel = await store.parcel();
    const bytes = writeBackup({ ...parcel, about });
    expect(withoutPart(bytes).subarray(-2000)).toEqual(
      withoutPart(writeBackup({ entries: log, about })).subarray(-2000),
    );
    const packed = await readPacked(bytes);
    expect(packed?.parcel.runs.length).toBe(parcel.runs.length);
    expect(packed?.parcel.runs.every(({ columns }) => columns.act.every((mark) => mark === 0))).toBe(true);
  });

  test.each([
    ['a short log', sampleEntries()],
    ['a log with a cloned station', [...longLog(900), ...otherStory(longLog(900), 601)]],
    ['a log with a gap', [...longLog(900).slice(0, 400), ...longLog(900).slice(401)]],
  ])('%s has none', (_, some) => {
    expect(saidOfPart(writeBackup({ entries: some, about }))).toBe(undefined);
  });
});

test('a log that has something of a station in the file is held against its lines', async () => {
  const held = log.slice(0, 500);
  const lines = linesOf([...held, ...otherStory(longLog(900), 501).slice(0, 3)]);
  const here = { kind: 'lines', lines } as const;
  const reading = await read({ bytes: file, log: here });
  expect(reading).toMatchObject({ held: 503, preview: { here: 500, adds: entries.length - 500 } });
  expect(told(reading)).toEqual(told(await read({ bytes: withoutPart(file), log: here })));
  const stranger = { kind: 'lines', lines: linesOf(sampleEntries('office')) } as const;
  const other = await read({ bytes: file, log: stranger });
  expect(other.kind === 'read' && other.parcel.packs?.size).toBe(2);
  expect(told(other)).toEqual(told(await read({ bytes: withoutPart(file), log: stranger })));
});

test('what comes in by a packed part is the same store, and is read again from its packs', async () => {
  const said = async (bytes: Uint8Array) => {
    const name = freshName();
    const store = await openTestLog(name);
    const reading = await read({ bytes, log: { kind: 'store', name } });
    if (reading.kind === 'refused') throw new Error(reading.why);
    const { added, ...merged } = await store.merge({ ...reading.parcel, now: about.wall });
    store.close();
    const again = await openTestLog(name);
    return {
      ...{ merged, lines: linesOf(await again.entries()).toSorted(), holding: await again.holding() },
      reading: await again.since(new Map()),
    };
  };
  expect(await said(file)).toEqual(await said(withoutPart(file)));
});

describe('a packed part that is in doubt leaves the word to the lines', () => {
  const runs = packedRuns(log);
  const parcel = { runs, entries: sampleEntries('bench') };
  const changed = (change: (run: PackedRun) => Partial<PackedRun>) => ({
    ...parcel,
    runs: runs.map((run, at) => (at === 0 ? { ...run, ...change(run) } : run)),
  });

  test('but one that is written anew does not', async () => {
    expect(await readPacked(withPart(file, parcel))).toBeDefined();
  });

  test.each<[string, Parameters<typeof withPart>[1]]>([
    ['lacks a run', { ...parcel, runs: runs.slice(1) }],
    ['lacks an entry', { ...parcel, entries: parcel.entries.slice(1) }],
    [
      'has an entry too many',
      { ...parcel, entries: [...parcel.entries, ...sampleEntries('office').slice(0, 1)] },
    ],
    ['has an entry twice', { ...parcel, entries: [...parcel.entries, ...parcel.entries.slice(0, 1)] }],
    ['has a run twice', { ...parcel, runs: [...runs, ...runs.slice(0, 1)] }],
    [
      'has a run in two that do not join',
      {
        ...parcel,
        runs: [...packedRuns(longLog(400)), ...packedRuns(otherStory(longLog(900), 401)), ...runs.slice(1)],
      },
    ],
    ['begins with a link', changed(() => ({ prev: runs[1]?.link ?? noLink }))],
    ['ends in another link', changed(() => ({ link: runs[1]?.link ?? noLink }))],
    ['is of another station', changed(() => ({ station: 'station-x' as PackedRun['station'] }))],
    [
      'has a shape that is not sound',
      changed(({ shapes }) => ({ shapes: shapes.map((shape) => shape.replace('"kind"', '"sort"')) })),
    ],
    [
      'has a field of no name',
      changed(({ shapes }) => ({ shapes: shapes.map((shape) => shape.replace('{', '{"__proto__":1,')) })),
    ],
    ['has a day that is none', changed(({ days }) => ({ days: days.map(() => '"2026-02-30"') }))],
    [
      'has facts of a tray that are none',
      changed(({ trays }) => ({ trays: trays.map(() => '{"tray":"x"}') })),
    ],
    [
      'has times before there was any',
      changed(({ columns }) => ({ base: 5, columns: { ...columns, time: columns.time.map(() => 10) } })),
    ],
    ['has times past 2199', changed(() => ({ base: Date.UTC(2200, 0, 1) }))],
    ['has too few days', changed(() => ({ days: [] }))],
    ['has too few shapes', changed(({ shapes }) => ({ shapes: shapes.slice(1) }))],
    ['has an extra too many', changed(({ extras }) => ({ extras: Float64Array.of(...extras, 1) }))],
    ['has extras beyond reason', changed(({ extras }) => ({ extras: extras.map(() => 1e300) }))],
  ])('when it %s', async (_, other) => {
    await expectByLines(withPart(file, other));
  });

  test.each([
    ['another version', { ...saidOfPart(file), form: 2 }],
    ['no length', { ...saidOfPart(file), bytes: 0 }],
    ['more than the file', { ...saidOfPart(file), bytes: 1e9 }],
    ['more than it unpacks to', { ...saidOfPart(file), unpacked: 1e6 }],
    ['less than it unpacks to', { ...saidOfPart(file), unpacked: 1000 }],
    ['another digest', { ...saidOfPart(file), digest: '0'.repeat(64) }],
    ['no kind of thing', 'x'],
  ])('when the manifest says %s of it', async (_, packed) => {
    await expectByLines(withPart(file, parcel, { packed }));
  });

  test('when the manifest says of a station what the part has not', async () => {
    const reading = readBackup(file);
    const stations = (reading.kind === 'read' && reading.manifest?.stations) || [];
    for (const change of [{ last: 5 }, { entries: 5 }, { link: noLink }, { station: 'station-x' }]) {
      const bytes = withPart(file, parcel, {
        stations: stations.map((each, at) => (at === 1 ? { ...each, ...change } : each)),
      });
      expect(await readPacked(bytes)).toBe(undefined);
    }
  });
});

test('whatever becomes of a file, its packed part is taken whole or not at all', {
  timeout: 120_000,
}, async () => {
  const all = new Set(linesOf(entries));
  let taken = 0;
  let left = 0;
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.tuple(fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true }), fc.nat(7)), {
        minLength: 1,
        maxLength: 3,
      }),
      fc.constantFrom('flip', 'cut', 'lose', 'double'),
      async (places, how) => {
        let bytes: Uint8Array = file.slice();
        for (const [share, bit] of places) {
          const at = Math.floor(share * bytes.length);
          if (how === 'flip') bytes[at] = (bytes[at] ?? 0) ^ (1 << bit);
          else if (how === 'cut') bytes = bytes.slice(0, at + 1);
          else if (how === 'lose') bytes = Buffer.concat([bytes.slice(0, at), bytes.slice(at + 1 + bit)]);
          else bytes = Buffer.concat([bytes.slice(0, at), bytes.slice(at - bit)]);
        }
        const packed = await readPacked(bytes);
        const reading = await read({ bytes, log: nothing });
        const found = reading.kind === 'read' ? linesOf(entriesIn(reading.parcel)) : [];
        if (packed) {
          taken += 1;
          expect(new Set(found)).toEqual(all);
        } else {
          left += 1;
          expect(found.every((line) => all.has(line))).toBe(true);
          const byLines = readBackup(bytes);
          expect(reading.kind).toBe(byLines.kind);
          if (byLines.kind === 'read') expect(found.length).toBe(new Set(linesOf(byLines.entries)).size);
        }
      },
    ),
    { numRuns: 60 },
  );
  expect(Math.min(taken, left)).toBeGreaterThan(3);
});

test('logs of any stations and lengths, sealed or not, are told alike by part and lines', {
  timeout: 120_000,
}, async () => {
  let inPart = 0;
  const station = fc.record({
    length: fc.integer({ min: 1, max: 700 }),
    from: fc.oneof(fc.constant(0), fc.nat(300)),
    cut: fc.nat(699),
    gap: fc.oneof({ weight: 4, arbitrary: fc.constant(0) }, fc.nat(2)),
    cloned: fc.oneof({ weight: 5, arbitrary: fc.constant(false) }, fc.constant(true)),
  });
  await fc.assert(
    fc.asyncProperty(fc.array(station, { minLength: 1, maxLength: 3 }), async (stations) => {
      const runs: PackedRun[] = [];
      const singles: Entry[] = [];
      stations.forEach(({ length, from, cut, gap, cloned }, at) => {
        const chain = longLog(length + from, `station-${at}`);
        const [sealed, young] = [
          chain.slice(from, from + Math.min(cut, length)),
          chain.slice(from + Math.min(cut, length) + gap),
        ];
        runs.push(...packedRuns(sealed));
        singles.push(...young, ...(cloned && chain.length > 9 ? otherStory(chain, chain.length - 5) : []));
      });
      const bytes = writeBackup({ runs, entries: singles, about });
      if (await readPacked(bytes)) inPart += 1;
      expect(told(await read({ bytes, log: nothing }))).toEqual(
        told(await read({ bytes: withoutPart(bytes), log: nothing })),
      );
      expect(readBackup(bytes)).toEqual(readBackup(withoutPart(bytes)));
    }),
    { numRuns: 15 },
  );
  expect(inPart).toBeGreaterThan(1);
});
