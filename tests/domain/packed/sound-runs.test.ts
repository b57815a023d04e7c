import fc from 'fast-check';
import { expect, test } from 'vitest';
import { demoShop } from '../../../shared/demo/demo-shop.ts';
import { chained } from '../../../src/domain/log/chain.ts';
import type { ShopEvent } from '../../../src/domain/log/event.ts';
import { readEvent } from '../../../src/domain/log/read-event.ts';
import type { Column } from '../../../src/domain/packed/column.ts';
import { eventTexts } from '../../../src/domain/packed/event-texts.ts';
import { packRun } from '../../../src/domain/packed/pack-run.ts';
import { columnNames, type PackedRun } from '../../../src/domain/packed/packed-run.ts';
import { soundRuns } from '../../../src/domain/packed/sound-runs.ts';
import { entriesOf } from '../../../src/domain/packed/unpack-run.ts';
import { beyondReason, greatestNumbers } from '../../../src/store/backup/beyond-reason.ts';
import { packedRuns } from '../../support/run-makers.ts';
import { spoilt } from '../../support/spoilt-events.ts';

const log = demoShop({ now: Date.UTC(2026, 2, 4, 14) });
/** Stretches of each station's log, from its beginning and from its midst. */
const runs = [0, 400].flatMap((from) =>
  packedRuns(chained(log)).map((run) => {
    const entries = entriesOf(run).slice(from, from + 120);
    return packRun(entries.map((entry) => ({ entry })));
  }),
);

function judge(event: unknown): string | null {
  const read = readEvent(event);
  return read.kind === 'damaged' ? read.problems.join() : beyondReason(event);
}
const soundRun = soundRuns({ judge, greatest: greatestNumbers });

const eventsOf = (run: PackedRun) => Array.from(eventTexts(run), ({ text }) => text);
const newestIn = (texts: readonly string[]) =>
  Math.max(...texts.map((text) => (JSON.parse(text) as ShopEvent).stamp.wall));

/** What a run that was called sound has to be, event by event. */
function expectSound(run: PackedRun, newest: number): void {
  const texts = eventsOf(run);
  const wrong = texts.filter((text, at) => {
    const event = JSON.parse(text) as ShopEvent;
    const isOwn = event.station === run.station && event.seq === run.first + at;
    return !isOwn || judge(event) !== null || JSON.stringify(event) !== text;
  });
  expect(wrong).toEqual([]);
  expect(newest).toBe(newestIn(texts));
}

test('the runs of a shop are sound, and tell their latest time', () => {
  for (const run of runs) expectSound(run, soundRun(run)?.newest ?? 0);
});

test('a run with events that could not be taken apart is judged by those themselves', () => {
  const [run] = runs;
  if (!run) throw new Error('the demo has a run');
  const texts = eventsOf(run).slice(0, 3);
  const whole = (shapes: readonly string[]): PackedRun => ({
    ...{ ...run, entries: 3, shapes, base: 0, extras: new Float64Array() },
    columns: {
      ...run.columns,
      shape: Uint8Array.of(0, 1, 2),
      wall: new Uint8Array(3),
      time: new Uint8Array(3),
    },
  });
  expect(soundRun(whole(texts))).toEqual({ newest: newestIn(texts) });
  // Each says by itself which it is.
  expect(soundRun(whole(texts.toReversed()))).toBe(undefined);
  expect(soundRun(whole(texts.map((text) => text.replace('"kind"', '"sort"'))))).toBe(undefined);
});

/** A run with something else in one place. */
const spoiltRuns = fc.constantFrom(...runs).chain((run) => {
  const other = fc.oneof(fc.nat(3), fc.nat(300), fc.constantFrom(70_000, 0xffff_ffff));
  const number = fc.oneof(other, fc.constantFrom(-1, 1.5, Number.NaN, 1e300, 2 ** 53));
  const at = (length: number) => fc.nat(Math.max(0, length - 1));
  const inColumn = fc
    .tuple(fc.constantFrom(...columnNames), at(run.entries), other)
    .map(([name, row, value]) => ({
      columns: { ...run.columns, [name]: Uint32Array.from(run.columns[name] as Column).with(row, value) },
    }));
  const inExtras = fc
    .tuple(at(run.extras.length), number)
    .map(([index, value]) => ({ extras: run.extras.with(index, value) }));
  const inTexts = fc
    .constantFrom('shapes' as const, 'days' as const, 'persons' as const, 'trays' as const)
    .chain((name) =>
      at(run[name].length).chain((index) =>
        spoilt(run[name][index] ?? '""').map((text) => ({ [name]: run[name].with(index, text) })),
      ),
    );
  const inHead = fc.constantFrom<Partial<PackedRun>>(
    { first: 2 },
    { first: 2e9 },
    { base: 0 },
    { base: 4e12 },
  );
  return fc.oneof(inColumn, inExtras, inTexts, inHead).map((change): PackedRun => ({ ...run, ...change }));
});

test('a run that is called sound is sound event by event, whatever stands in it', { timeout: 60_000 }, () => {
  let sound = 0;
  let other = 0;
  fc.assert(
    fc.property(spoiltRuns, (run) => {
      const told = soundRun(run);
      if (told) expectSound(run, told.newest);
      if (told) sound += 1;
      else other += 1;
    }),
    { numRuns: 300 },
  );
  expect(Math.min(sound, other)).toBeGreaterThan(30);
});
