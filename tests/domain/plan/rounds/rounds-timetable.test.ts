import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestOrder } from '../../../../src/domain/plan/rounds/best-order.ts';
import type { RoundStage } from '../../../../src/domain/plan/rounds/load-round.ts';
import { roundsTimetable } from '../../../../src/domain/plan/rounds/rounds-timetable.ts';
import { doneBy, type Shift, without } from '../../../../src/domain/plan/rounds/shifts.ts';
import { soonestByTrying } from './every-order.ts';

const hour = 3_600_000;
const minute = 60_000;

/** Days of work from 8 to 17. */
const days = (count: number): readonly Shift[] =>
  Array.from({ length: count }, (_, day) => ({ from: (24 * day + 8) * hour, to: (24 * day + 17) * hour }));

const glue: RoundStage<string> = { stage: 'glue', waiting: 60, cure: 4 * hour, load: 2 * minute, unload: 0 };

describe('one stage', () => {
  test('what the clamps take is loaded as soon as they are free, and the last round of a day cures over night', () => {
    // By hand: 24 pieces load in 48 min. 8:00 in by 8:48, cured 12:48; in by 13:36, cured 17:36, out at 8:00 next day.
    const { rounds, left } = roundsTimetable({
      ...{ stages: [glue], places: { capacity: 24, held: [] }, shifts: days(3), now: 8 * hour },
    });
    expect(rounds.map(({ pieces, from, ready }) => [pieces, from / hour, ready / hour])).toEqual([
      [24, 8, 12.8],
      [24, 12.8, 17.6],
      [12, 32, 36.4],
    ]);
    expect(left).toBe(0);
  });

  test('a round that the day has no time for is begun with what there is time for', () => {
    const { rounds } = roundsTimetable({
      ...{ stages: [glue], places: { capacity: 24, held: [] }, shifts: days(2), now: 16.5 * hour },
    });
    expect(rounds[0]).toMatchObject({ pieces: 15, from: 16.5 * hour, loaded: 17 * hour, ready: 21 * hour });
  });

  test('places that are held are loaded when they come free, and all together once all are', () => {
    const { rounds } = roundsTimetable({
      stages: [{ ...glue, waiting: 40, load: 0 }],
      places: { capacity: 24, held: [{ pieces: 14, until: 11 * hour }] },
      shifts: days(2),
      now: 9 * hour,
    });
    expect(rounds.map(({ pieces, from }) => [pieces, from / hour])).toEqual([
      [10, 9],
      [14, 11],
      [10, 13],
      [6, 15],
    ]);
  });

  test('what is held beyond the capacity leaves no place free, and none is counted twice', () => {
    const { rounds } = roundsTimetable({
      stages: [{ ...glue, waiting: 40, load: 0 }],
      places: { capacity: 24, held: [{ pieces: 30, until: 10 * hour }] },
      shifts: days(1),
      now: 9 * hour,
    });
    expect(rounds.map(({ pieces, from }) => [pieces, from / hour])).toEqual([
      [24, 10],
      [16, 14],
    ]);
  });

  test('a rack without limit takes all at once', () => {
    const { rounds } = roundsTimetable({
      ...{ stages: [{ ...glue, load: 0 }], places: { capacity: null, held: [] }, shifts: days(1), now: 0 },
    });
    expect(rounds).toHaveLength(1);
    expect(rounds[0]).toMatchObject({ pieces: 60, from: 8 * hour });
  });

  test.each([
    ['no clamps', { places: { capacity: 0, held: [] } }],
    ['nobody who works', { shifts: [] }],
    ['a piece that takes longer than a shift', { stages: [{ ...glue, load: 10 * hour }] }],
  ])('with %s all is left', (_, bad) => {
    const question = { stages: [glue], places: { capacity: 24, held: [] }, shifts: days(2), now: 0, ...bad };
    expect(roundsTimetable(question)).toEqual({ rounds: [], left: 60 });
  });

  test.each([{ waiting: -1 }, { cure: Number.NaN }, { load: -1 }])('%o is refused', (bad) => {
    const question = { places: { capacity: 1, held: [] }, shifts: days(1), now: 0 };
    expect(() => roundsTimetable({ ...question, stages: [{ ...glue, ...bad }] })).toThrow(RangeError);
  });
});

test('of two stages that share clamps, the one that cures long goes over night', () => {
  // By hand: 4 h cures at 8:00 and 12:00 fill the day, the 12 h cure goes in at 16:00 and is out in the morning.
  const { rounds } = roundsTimetable({
    stages: [
      { stage: 'long', waiting: 24, cure: 12 * hour, load: 0, unload: 0 },
      { stage: 'short', waiting: 48, cure: 4 * hour, load: 0, unload: 0 },
    ],
    places: { capacity: 24, held: [] },
    shifts: days(3),
    now: 8 * hour,
  });
  expect(rounds.map(({ stage, from }) => [stage, from / hour])).toEqual([
    ['short', 8],
    ['short', 12],
    ['long', 16],
  ]);
});

const stages = fc.array(
  fc.record({
    waiting: fc.integer({ min: 0, max: 7 }),
    cure: fc.integer({ min: 1, max: 14 }).map((hours) => hours * hour),
    load: fc.constantFrom(0, 20 * minute, hour),
    unload: fc.constantFrom(0, 15 * minute),
  }),
  { minLength: 1, maxLength: 3 },
);

test('no order of rounds that can be tried cures all sooner (brute force)', () => {
  fc.assert(
    fc.property(
      stages,
      fc.integer({ min: 2, max: 4 }),
      fc.integer({ min: 0, max: 20 }),
      (list, capacity, from) => {
        const named = list.map((each, at) => ({ ...each, stage: at }));
        const scene = { lane: { capacity, from: from * hour }, shifts: days(12) };
        const rounds = bestOrder(named, scene);
        const ready = Math.max(0, ...rounds.map((round) => round.ready));
        expect(ready).toBe(soonestByTrying(named, scene));
      },
    ),
    { numRuns: 150 },
  );
});

test('each piece that waits is in one round or is left, and places never take more than there are', () => {
  const held = fc.array(
    fc.record({
      pieces: fc.integer({ min: 1, max: 6 }),
      until: fc.integer({ min: 0, max: 30 }).map((h) => h * hour),
    }),
    { maxLength: 3 },
  );
  fc.assert(
    fc.property(stages, held, fc.integer({ min: 0, max: 8 }), (list, busy, capacity) => {
      const named = list.map((each, at) => ({ ...each, stage: at }));
      const shifts = days(2);
      const { rounds, left } = roundsTimetable({
        ...{ stages: named, places: { capacity, held: busy }, shifts, now: 0 },
      });
      const waiting = list.reduce((sum, each) => sum + each.waiting, 0);
      expect(left + rounds.reduce((sum, { pieces }) => sum + pieces, 0)).toBe(waiting);
      for (const { from, loaded } of rounds) {
        const inPlace = rounds.filter((other) => other.from <= from && other.free > from);
        const still = busy.filter(({ until }) => until > from).reduce((sum, { pieces }) => sum + pieces, 0);
        const taken = inPlace.reduce((sum, { pieces }) => sum + pieces, 0);
        expect(taken + still).toBeLessThanOrEqual(capacity);
        expect(shifts.some((shift) => shift.from <= from && loaded <= shift.to)).toBe(true);
        expect(rounds.some((other) => other.from < loaded && other.from > from)).toBe(false);
      }
    }),
  );
});

test('work rests between shifts, and a stretch that is spoken for is no shift', () => {
  expect(doneBy(days(2), { from: 16 * hour, work: 2 * hour })).toBe(33 * hour);
  expect(doneBy(days(1), { from: 16 * hour, work: 2 * hour })).toBeUndefined();
  expect(without(days(1), { from: 9 * hour, to: 10 * hour })).toEqual([
    { from: 8 * hour, to: 9 * hour },
    { from: 10 * hour, to: 17 * hour },
  ]);
});
