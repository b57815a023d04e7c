import { expect, test } from 'vitest';
import { roundsUntil } from '../../../../src/domain/plan/rounds/rounds-until.ts';

const minute = 60_000;
const hour = 60 * minute;
/** Eight to sixteen on so many days, from the start of time on. */
const days = (count: number) =>
  Array.from({ length: count }, (_, day) => ({ from: (24 * day + 8) * hour, to: (24 * day + 16) * hour }));
const ask = (stage: { cure: number; load?: number }, shifts = days(2), until = shifts.at(-1)?.to ?? 0) =>
  roundsUntil({ stage: 'glue', load: 0, unload: 0, ...stage }, { capacity: 8, shifts, now: 0, until });

test('rounds follow one another while somebody is there, and the last of a day cures over night', () => {
  // By hand: loaded at 8, 11 and 14, cured at 17 when nobody is there; the next day the same, but 17 is past the end.
  expect(ask({ cure: 3 * hour })).toEqual({ rounds: 5, pieces: 40 });
  // A cure of a night and a half: loaded at 8, emptied the next morning at 8, and that round would be ready too late.
  expect(ask({ cure: 18 * hour })).toEqual({ rounds: 1, pieces: 8 });
});

test('loading takes hands, and a shift too short for all places loads fewer', () => {
  // Eight at half an hour are 4 h, then 4 h of cure: one round a day.
  expect(ask({ cure: 4 * hour, load: 30 * minute })).toEqual({ rounds: 2, pieces: 16 });
  // Two hours a piece: four before the day ends, cured over night, and again.
  expect(ask({ cure: hour, load: 2 * hour }, days(2), 48 * hour)).toEqual({ rounds: 2, pieces: 8 });
});

test('without time there is no round', () => {
  expect(ask({ cure: hour }, [])).toEqual({ rounds: 0, pieces: 0 });
  expect(ask({ cure: 90 * hour })).toEqual({ rounds: 0, pieces: 0 });
});
