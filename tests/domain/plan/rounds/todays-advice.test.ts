import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { RoundStage } from '../../../../src/domain/plan/rounds/load-round.ts';
import { roundsTimetable } from '../../../../src/domain/plan/rounds/rounds-timetable.ts';
import { todaysAdvice } from '../../../../src/domain/plan/rounds/todays-advice.ts';

const hour = 3_600_000;
const minute = 60_000;
const shifts = [
  { from: 8 * hour, to: 17 * hour },
  { from: 32 * hour, to: 41 * hour },
];
const glue: RoundStage<string> = { stage: 'glue', waiting: 60, cure: 4 * hour, load: 2 * minute, unload: 0 };
const scene = { stages: [glue], places: { capacity: 24, held: [] }, shifts, now: 8 * hour };

test('loaded in time, a second round fits before they leave, and it cures over night', () => {
  // By hand: the second round takes 48 min and must begin at 16:12; the first must have cured by then, so be in by 12:12.
  expect(todaysAdvice(scene, 17 * hour)).toMatchObject({
    kind: 'load',
    round: { stage: 'glue', pieces: 24, from: 8 * hour },
    by: 12 * hour + 12 * minute,
    more: 1,
    overNight: true,
  });
});

test('the last round can be put off until there is just time to load it', () => {
  const advice = todaysAdvice({ ...scene, now: 14 * hour, stages: [{ ...glue, waiting: 10 }] }, 17 * hour);
  expect(advice).toMatchObject({ kind: 'load', by: 17 * hour, more: 0, overNight: true });
});

test('what cures before they leave is not said to cure over night', () => {
  const advice = todaysAdvice({ ...scene, stages: [{ ...glue, waiting: 10 }] }, 17 * hour);
  expect(advice).toMatchObject({ kind: 'load', more: 0, overNight: false });
});

test('with all places held until tomorrow the next round is not today', () => {
  const places = { capacity: 24, held: [{ pieces: 24, until: 18 * hour }] };
  expect(todaysAdvice({ ...scene, places }, 17 * hour)).toMatchObject({
    kind: 'not-today',
    round: { from: 32 * hour, pieces: 24 },
  });
});

test('nothing waits, and nobody works', () => {
  expect(todaysAdvice({ ...scene, stages: [{ ...glue, waiting: 0 }] }, 17 * hour)).toEqual({
    kind: 'nothing-waits',
  });
  expect(todaysAdvice({ ...scene, shifts: [] }, 17 * hour)).toEqual({ kind: 'no-time' });
});

test('at the time that is told as many pieces are loaded today, and a minute later fewer', () => {
  const cases = fc.record({
    waiting: fc.integer({ min: 1, max: 90 }),
    cure: fc.integer({ min: 1, max: 9 }).map((hours) => hours * hour),
    load: fc.integer({ min: 0, max: 9 }).map((minutes) => minutes * minute),
    now: fc.integer({ min: 480, max: 1019 }).map((minutes) => minutes * minute),
  });
  fc.assert(
    fc.property(cases, ({ waiting, cure, load, now }) => {
      const today = 17 * hour;
      const question = { ...scene, stages: [{ ...glue, waiting, cure, load }], now };
      const loadedAt = (at: number) =>
        roundsTimetable({ ...question, now: at })
          .rounds.filter(({ from }) => from < today)
          .reduce((sum, { pieces }) => sum + pieces, 0);
      const advice = todaysAdvice(question, today);
      if (advice.kind !== 'load') {
        expect(loadedAt(now)).toBe(0);
        return;
      }
      const start = advice.by - (advice.round.loaded - advice.round.from);
      expect(loadedAt(start)).toBe(loadedAt(now));
      expect(loadedAt(start + minute)).toBeLessThan(loadedAt(now));
    }),
    { numRuns: 200 },
  );
});
