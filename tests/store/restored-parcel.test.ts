import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chained, type Entry } from '../../src/domain/log/chain.ts';
import type { ShopEvent } from '../../src/domain/log/event.ts';
import { packStream, type RunLengths } from '../../src/domain/packed/pack-stream.ts';
import { countIn, entriesIn, type Parcel } from '../../src/domain/packed/parcel.ts';
import { buffersOf } from '../../src/domain/packed/run-buffers.ts';
import { textEntryOf } from '../../src/domain/packed/text-entry.ts';
import { readBackup } from '../../src/store/backup/read-backup.ts';
import { whatItWouldAdd } from '../../src/store/backup/what-it-would-add.ts';
import { writeBackup } from '../../src/store/backup/write-backup.ts';
import type { LogStore, Merged } from '../../src/store/log-store.ts';
import { readFiles } from '../../src/store/read-files.ts';
import { spellDraft } from '../support/drafts.ts';
import { histories, play } from '../support/histories.ts';
import { freshName, openTestLog, sealAll, spoilRecord } from '../support/log-makers.ts';
import { longLog, otherStory } from '../support/long-logs.ts';
import { about } from './backup/sample-log.ts';

const now = Date.UTC(2026, 2, 2, 9);

/** What a file with these entries is packed into, for a log that holds `held`. */
function packed(file: readonly Entry[], held: readonly Entry[], lengths?: RunLengths): Parcel {
  const { weigh, hasMet } = whatItWouldAdd(new Set(held.map(({ link }) => link)));
  const stream = packStream(lengths);
  for (const entry of file.map(textEntryOf)) {
    const kind = weigh(entry);
    if (kind !== 'again') stream.take(entry, kind);
  }
  return stream.parcel(hasMet);
}

const byId = (a: { station: string; seq: number }, b: typeof a) =>
  a.station < b.station ? -1 : a.station > b.station ? 1 : a.seq - b.seq;

/** All that a log says, under the identities that it has there. */
async function said(log: LogStore) {
  const { events, newer, damaged } = await log.since(new Map());
  const entries = await log.entries();
  return {
    events: events.toSorted(byId),
    others: [newer.length, damaged.length],
    entries: entries.toSorted((a, b) => (a.link < b.link ? -1 : 1)),
    holding: await log.holding(),
    station: log.station(),
  };
}

const counts = ({ added, here, mended, unplaced, renewed }: Merged) => ({
  ...{ taken: countIn(added) + mended, here, unplaced, renewed },
});

/** The entries of a file in the order in which a backup has them, as far as they can be read. */
function inFile(entries: readonly Entry[], cut = 1): readonly Entry[] {
  const bytes = writeBackup({ entries, about });
  const reading = readBackup(bytes.subarray(0, Math.ceil(bytes.length * cut)));
  return reading.kind === 'read' ? reading.entries : [];
}

const share = fc.double({ min: 0, max: 1, noNaN: true });
const part = fc.tuple(share, share).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);
type Part = readonly [from: number, to: number];
const within = <Item>(items: readonly Item[], [from, to]: Part) =>
  items.slice(Math.floor(items.length * from), Math.ceil(items.length * to));
const without = <Item>(items: readonly Item[], gap: Part) => {
  const gone = new Set(within(items, gap));
  return items.filter((item) => !gone.has(item));
};

const seldom = <Value, Usual>(arbitrary: fc.Arbitrary<Value>, usual: Usual) =>
  fc.oneof({ weight: 3, arbitrary: fc.constant(usual) }, { weight: 1, arbitrary });
const nowhere = [0, 0] as const;

const worlds = fc.record({
  steps: histories,
  /** Which stations were cloned, and after which share of their log. */
  clones: seldom(fc.array(fc.tuple(fc.nat(3), share), { minLength: 1, maxLength: 2 }), []),
  /** What is missing in the midst of the file, what of it comes a second time, where it is turned round and cut. */
  gap: seldom(part, nowhere),
  again: seldom(part, nowhere),
  turn: seldom(share, 0),
  cut: seldom(share, 1),
  /** What the store holds: a part of all entries, some of them missing and one damaged. */
  held: part,
  missing: seldom(part, nowhere),
  spoilt: seldom(share, null),
  young: fc.nat(40),
  isSealed: fc.boolean(),
  longest: fc.integer({ min: 3, max: 12 }),
});

function storyOf({
  steps,
  clones,
}: {
  steps: Parameters<typeof play>[0];
  clones: readonly (readonly [number, number])[];
}) {
  const own = chained(play(steps).log);
  const stations = [...new Set(own.map(({ event }) => event.station))];
  const others = clones.flatMap(([which, from]) => {
    const chain = own.filter(({ event }) => event.station === stations[which % stations.length]);
    return otherStory(chain as readonly Entry<ShopEvent>[], 1 + Math.floor(from * (chain.length - 1)));
  });
  return { own, all: [...new Map([...own, ...others].map((entry) => [entry.link, entry])).values()] };
}

describe('a file that comes in packed', () => {
  test('makes the same store as its entries do, one by one, whatever is in either, and twice', async () => {
    let packedRuns = 0;
    await fc.assert(
      fc.asyncProperty(worlds, async (world) => {
        const { all } = storyOf(world);
        const whole = without(inFile(all, world.cut), world.gap);
        const at = Math.floor(whole.length * world.turn);
        const turned = [...whole.slice(at), ...whole.slice(0, at)];
        const file = [...turned, ...within(turned, world.again)];
        const held = without(within(inFile(all), world.held), world.missing);

        async function store() {
          const name = freshName();
          const log = await openTestLog(name);
          await log.append({ act: 'first', drafts: [spellDraft('turn')], now });
          await log.merge({ entries: held, now });
          if (world.isSealed) await sealAll(name, { young: world.young, together: 1 });
          const { entries } = await log.parcel();
          const spoilt =
            world.spoilt === null ? undefined : entries[Math.floor(entries.length * world.spoilt)];
          if (spoilt && spoilt.event.station !== log.station())
            await spoilRecord(name, [spoilt.event.station, spoilt.event.seq], (record) => ({
              ...record,
              prev: 'f'.repeat(32),
            })).catch(() => undefined);
          return log;
        }

        const [one, other] = [await store(), await store()];
        const known = await other.entries();
        const parcel = packed(file, known, { shortest: 3, longest: world.longest });
        packedRuns += parcel.runs.length;
        expect(new Set(entriesIn(parcel).map(({ link }) => link))).toEqual(
          new Set(file.map(({ link }) => link)),
        );
        const singly = counts(await one.merge({ entries: file, now }));
        const together = counts(await other.merge({ ...parcel, now }));
        const doubled = file.length - new Set(file).size;
        if (doubled === 0) expect(together).toEqual(singly);
        expect(await said(other)).toEqual(await said(one));
        const again = counts(await other.merge({ ...parcel, now }));
        expect(again).toMatchObject({ taken: 0, here: countIn(parcel) - together.unplaced });
        expect(await said(other)).toEqual(await said(one));
        one.close();
        other.close();
      }),
      { numRuns: 25 },
    );
    expect(packedRuns).toBeGreaterThan(20);
  }, 120_000);

  test('is packed by the job that reads it, but for ends, gaps in a cloned station, and what tells another story', async () => {
    const log = longLog(900);
    const bytes = writeBackup({
      entries: [...log, ...otherStory(log, 601), ...longLog(20, 'station-y')],
      about,
    });
    const name = freshName();
    const store = await openTestLog(name);
    await store.merge({ entries: log.slice(0, 300), now });
    await store.append({ act: 'one', drafts: [spellDraft('turn')], now });
    const reading = await readFiles({
      ...{ files: [new Blob([Uint8Array.from(bytes)])], log: { kind: 'store', name }, photos: null },
    });
    if (reading.kind !== 'read') throw new Error(`refused: ${reading.why}`);
    const { runs, entries } = reading.parcel;
    // The first of the two stories in the file goes on in the run; what is held already is a run of its own.
    expect(runs.map(({ station, first, entries: length }) => [station, first, length])).toEqual([
      ['station-z', 1, 300],
      ['station-z', 301, 600],
    ]);
    expect(entries).toHaveLength(320);
    expect(reading).toMatchObject({ held: 301, preview: { adds: 920, here: 300 } });
    // It goes to another thread without being copied.
    const buffers = buffersOf(runs);
    const there = structuredClone(reading, { transfer: [...buffers] });
    expect(buffers.every(({ byteLength }) => byteLength === 0)).toBe(true);
    const all = new Set(entriesIn(there.parcel).map(({ link }) => link));
    expect(all).toEqual(
      new Set([...log, ...otherStory(log, 601), ...longLog(20, 'station-y')].map(({ link }) => link)),
    );
  });

  test.each([
    ['whose beginning is missing', (log: readonly Entry[]) => log.slice(40), [[41, 560]]],
    [
      'with a gap',
      (log: readonly Entry[]) => [...log.slice(0, 270), ...log.slice(280)],
      [
        [1, 270],
        [281, 320],
      ],
    ],
    ['too short for a run', (log: readonly Entry[]) => log.slice(0, 255), []],
    [
      'that stops short of a run behind a gap',
      (log: readonly Entry[]) => [...log.slice(0, 300), ...log.slice(400)],
      [[1, 300]],
    ],
  ])('that is a log %s', (_, file, wanted) => {
    const { runs } = packed(file(longLog(600)), []);
    expect(runs.map(({ first, entries }) => [first, entries])).toEqual(wanted);
  });

  test('is packed no further than is sure when it has a cloned station whose stories are mixed up, or begin in the midst', () => {
    const log = longLog(600);
    const other = otherStory(log, 301);
    const runsOf = (...file: readonly Entry[]) =>
      packed(file, []).runs.map(({ first, entries }) => [first, entries]);
    expect(runsOf(...other, ...log)).toEqual([]);
    expect(runsOf(...log.slice(0, 300), ...other, ...log.slice(300))).toEqual([[1, 600]]);
    expect(runsOf(...log.slice(0, 300), ...other.slice(1), ...log.slice(301))).toEqual([[1, 300]]);
    expect(runsOf(...log.slice(300), ...other)).toEqual([[301, 300]]);
  });
});
