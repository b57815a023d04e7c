/** What the pace of a shop is reckoned from: what is sent back, what days usually take, and when there was work for hands. */
import { expect, test } from 'vitest';
import { handsWanted } from '../../../src/domain/study/hands-wanted.ts';
import { sentBack } from '../../../src/domain/study/sent-back.ts';
import { busyByDay, usualByDay } from '../../../src/domain/study/usual-by-day.ts';
import { dayOf, stageNamed, tapsOfShop, woodNamed } from '../../calibration/taps-of-shop.ts';
import type { Spot, Tapped } from '../../calibration/work-off.ts';

const [hour, day] = [3_600_000, 86_400_000];
const spot = (stage: number | null, more: Partial<Spot> = {}): Spot => ({
  ...{ stage, second: false, redo: null, held: null },
  ...more,
});

/** A piece of wood 0 that leaves a stage. */
function tap(at: number, from: Spot | null, to: Spot, more: Partial<Tapped> = {}): Tapped {
  const stage = from?.stage ?? to.stage ?? 0;
  return {
    at,
    person: 0,
    wood: 0,
    tray: 1,
    stage,
    pieces: 1,
    elapsed: 60_000,
    worked: 60_000,
    begins: false,
    from,
    to,
    ...more,
  };
}

const tableOf = (taps: readonly Tapped[]) => tapsOfShop(taps, 1000 * day);

test('what is sent back counts by where to, over all visits, and what comes again visits again', () => {
  const table = tableOf([
    tap(1, spot(2), spot(3), { pieces: 7 }),
    tap(2, spot(2), spot(0, { redo: 2 }), { pieces: 2 }),
    tap(3, spot(2), spot(1, { redo: 2 })),
    tap(4, spot(2, { redo: 2 }), spot(3)),
    tap(5, spot(2), spot(null)),
    tap(6, spot(2), spot(3), { wood: 1 }),
  ]);
  expect(sentBack(table)).toEqual([
    {
      stage: stageNamed(2),
      species: woodNamed(0),
      visits: 12,
      to: new Map([
        [stageNamed(0), 2],
        [stageNamed(1), 1],
      ]),
    },
    { stage: stageNamed(2), species: woodNamed(1), visits: 1, to: new Map() },
  ]);
});

test('a day usually takes its pieces times their minutes, of work and of loading; what is not known takes none', () => {
  const table = tableOf([
    tap(hour, spot(0), spot(1), { pieces: 3 }),
    tap(2 * hour, null, spot(1, { held: day }), { pieces: 4 }),
    tap(day + hour, spot(1), spot(2), { pieces: 4 }),
    tap(day + 2 * hour, spot(5), spot(6)),
  ]);
  const usual = usualByDay(table, (stage, _, of) =>
    stage === stageNamed(5) ? undefined : of === 'loading' ? 10 : stage === stageNamed(0) ? 2 : 0.5,
  );
  expect([...usual]).toEqual([
    [dayOf(0), 46],
    [dayOf(day), 2],
  ]);
});

test('hands are busy from tap to tap of their station, but not through an absence or from one day to the next', () => {
  const minute = 60_000;
  const at = (minutes: number, more: Partial<Tapped> = {}) =>
    tap(8 * hour + minutes * minute, spot(0), spot(1), more);
  const table = tableOf([
    at(0),
    // Five minutes for what takes two: so long it was.
    at(5),
    // A long absence; then three pieces at once after seven minutes.
    at(5 + 33),
    at(45, { pieces: 3 }),
    // Somebody else begins, and one goes on the next day.
    at(46, { person: 1 }),
    tap(day + 8 * hour, spot(0), spot(1)),
  ]);
  expect([...busyByDay(table, () => 2)]).toEqual([
    [dayOf(0), 2 + 5 + 2 + 7 + 2],
    [dayOf(day), 2],
  ]);
});

test('there is work for hands as long as something waits at a bench, and none while all of it cures', () => {
  const stages = [0, 1, 2].map(stageNamed);
  // Stage 1 is a cure. A tray of four is bored one by one, cures, and is turned.
  const table = tableOf([
    ...[1, 2, 3, 4].map((at) => tap(at * hour, spot(0), spot(1))),
    tap(5 * hour, null, spot(1, { held: 8 * hour }), { pieces: 4 }),
    tap(9 * hour, spot(1), spot(2), { pieces: 4 }),
    tap(10 * hour, spot(2), spot(3), { pieces: 2 }),
  ]);
  const asked = {
    routes: { stages, byBatch: new Map() },
    bench: new Set([stageNamed(0), stageNamed(2)]),
    waiting: 2,
    each: 4,
  };
  const wanted = handsWanted(table, { ...asked, people: 1 });
  const during = (from: number, to: number) => wanted({ from: from * hour, to: to * hour });
  expect(during(0, 1)).toBe(1);
  expect(during(3, 4)).toBeCloseTo(0.25, 9);
  expect(during(0, 4)).toBeCloseTo((1 + 0.75 + 0.5 + 0.25) / 4, 9);
  expect(during(4, 9)).toBe(0);
  expect(during(9, 10)).toBe(1);
  expect(during(10, 12)).toBe(0.5);
  expect(during(8, 12)).toBeCloseTo(0.5, 9);
  expect(during(5, 5)).toBe(0);
  // A tray keeps one pair of hands in work and not two.
  expect(handsWanted(table, { ...asked, people: 2 })({ from: 0, to: hour })).toBe(0.5);
});
