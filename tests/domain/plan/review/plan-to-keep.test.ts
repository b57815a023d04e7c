import * as v from 'valibot';
import { expect, test } from 'vitest';
import { shopDayText } from '../../../../src/domain/log/ids.ts';
import { planToKeep, type VariantToKeep } from '../../../../src/domain/plan/review/plan-to-keep.ts';
import { batchPlan } from '../../../../src/domain/set-up/batch-facts.ts';

const day = v.parse(shopDayText, '2026-03-02');
const ash: VariantToKeep = {
  ...{ finished: { first: 4, second: 1 }, scrapped: 1, ahead: 20 },
  ...{ seconds: 1.5, lost: 2.25, costEach: 1000, markdown: 1300 },
};
const plum: VariantToKeep = {
  ...{ finished: { first: 0, second: 0 }, scrapped: 0, ahead: 10 },
  ...{ seconds: 0.25, lost: 1, costEach: 2000, markdown: 500 },
};
const keep = (...variants: readonly VariantToKeep[]) =>
  planToKeep({ day, done: null, minutes: { soFar: 90, ahead: 600.4 }, variants });

// Worked out by hand: of ash 26 are made up and 22.75 come out, 2.5 of them seconds; of plum 10, 9 and 0.25.
test('all of a batch is in its plan, what is finished and scrapped too', () => {
  const plan = keep(ash, plum);
  expect(plan).toEqual({
    ...{ day, done: null, started: 36, comesOut: 32, firsts: 29, minutes: 690 },
    cost: 22_750 + 2.5 * 1300 + 18_000 + 0.25 * 500,
  });
  expect(v.parse(batchPlan, plan)).toEqual(plan);
});

test('what nobody knows makes the cost unknown, unless no piece bears it', () => {
  expect(keep(ash, { ...plum, costEach: null }).cost).toBeNull();
  expect(keep({ ...ash, markdown: null }).cost).toBeNull();
  expect(keep({ ...plum, markdown: null, seconds: 0 }).cost).toBe(18_000);
});

test('a batch of which more is lost than there is comes to nothing, never below', () => {
  expect(keep({ ...plum, lost: 12 })).toMatchObject({ started: 10, comesOut: 0, firsts: 0, cost: 125 });
  expect(keep()).toMatchObject({ started: 0, comesOut: 0, firsts: 0, cost: 0 });
});
