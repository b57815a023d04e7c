/**
 * What-if questions with the same random numbers. Of independent pieces at one stage more hands are never later. Of whole
 * shops that is not so: a rule that takes what comes first can end later with more of anything (R. L. Graham, Bounds on
 * multiprocessing timing anomalies, SIAM J. on Applied Mathematics 17 (1969) 416-429; from memory), so it is held on
 * average only.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { changedPlan, type PlanChange } from '../../../../src/domain/plan/forecast/changed-plan.ts';
import { compared } from '../../../../src/domain/plan/forecast/compared.ts';
import { minutesOfGood } from '../../../../src/domain/plan/forecast/minutes-of-good.ts';
import type { PlanModel } from '../../../../src/domain/plan/forecast/plan-model.ts';
import { replicator } from '../../../../src/domain/plan/forecast/replicator.ts';
import { meanOf } from '../../../calibration/row.ts';
import { aLot, always, aPlan, aStep, day, hour, known, takes, workWeeks } from './plans.ts';
import { somePlan } from './random-plans.ts';

const replications = 60;
const ends = (plan: PlanModel, seed: number) =>
  replicator({ plan, marks: [], seed, replications })(0, replications);

test('trays at one stage are never done later with more hands, in any replication', () => {
  const trays = fc.array(fc.integer({ min: 1, max: 12 }), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(trays, fc.integer({ min: 1, max: 4 }), fc.nat(), (pieces, hands, seed) => {
      const plan = aPlan([aStep(0, 0, { minutes: takes(3, 0.6) })], {
        lots: pieces.map((each) => aLot(each)),
      });
      const withHands = (many: number) =>
        ends({ ...plan, people: Array.from({ length: many }, () => ({ hours: always })) }, seed).doneAt;
      const [fewer, more] = [withHands(hands), withHands(hands + 1)];
      expect(more.every((at, run) => at <= (fewer[run] ?? 0))).toBe(true);
    }),
  );
});

test('pieces meet the same luck whatever the shop has: what is scrapped does not depend on hands, clamps or times', () => {
  fc.assert(
    fc.property(somePlan, fc.nat(), (plan, seed) => {
      // Without sending back each piece meets each step once: the same number of them, in another order.
      const steps = (of: PlanModel['variants'][number]['steps'], faster: number) =>
        of.map((step) => ({
          ...{ ...step, back: known(0), backTo: [] },
          minutes: { ...step.minutes, median: step.minutes.median * faster },
        }));
      const once = { ...plan, variants: plan.variants.map((of) => ({ ...of, steps: steps(of.steps, 1) })) };
      const other = {
        ...once,
        variants: plan.variants.map((of) => ({ ...of, steps: steps(of.steps, 0.5) })),
        people: [...plan.people, ...plan.people],
        resources: plan.resources.map((each) => ({ ...each, capacity: null })),
      };
      expect(ends(other, seed).scrapped).toEqual(ends(once, seed).scrapped);
    }),
    { numRuns: 60 },
  );
});

test('on average more hands and more places end sooner, and seldom later by more than a tenth', () => {
  const shops = fc
    .sample(somePlan, { numRuns: 80, seed: Number(process.env.SEED) })
    .filter(({ lots }) => lots.length > 0);
  const mean = (plan: PlanModel, seed: number) => meanOf([...ends(plan, seed).doneAt]) - plan.now;
  for (const more of [
    (plan: PlanModel): PlanModel => ({ ...plan, people: [...plan.people, ...plan.people.slice(0, 1)] }),
    (plan: PlanModel): PlanModel => ({
      ...plan,
      resources: plan.resources.map((each) => ({ ...each, capacity: 2 * (each.capacity ?? 1) })),
    }),
  ]) {
    const ratios = shops.map((plan, seed) => mean(more(plan), seed) / mean(plan, seed));
    expect(meanOf(ratios)).toBeLessThan(1);
    expect(ratios.filter((ratio) => ratio > 1.1).length).toBeLessThan(0.05 * shops.length);
  }
});

test('a helper on Saturdays leaves nothing half done for a week, and so never makes it later', () => {
  const lots = Array.from({ length: 12 }, () => aLot(10));
  const plan = aPlan([aStep(0, 0, { minutes: takes(13, 0.4) })], {
    lots,
    people: [{ hours: workWeeks(20) }],
  });
  const hours = Array.from({ length: 20 }, (_, week) => ({
    from: (7 * week + 5) * day + 9 * hour,
    to: (7 * week + 5) * day + 17 * hour,
  }));
  const [alone, helped] = [plan, changedPlan(plan, [{ kind: 'helper', hours }])].map((of) => ends(of, 5));
  if (!alone || !helped) throw new Error('both are worked off');
  const later = alone.doneAt.map((at, run) => (helped.doneAt[run] ?? 0) - at);
  // Twelve trays of about 130 minutes are more than half a week of one person.
  expect(Math.max(...later)).toBeLessThanOrEqual(0);
  expect(helped.handsMs.reduce((sum, ms) => sum + ms, 0)).toBe(
    helped.workedMs.reduce((sum, ms) => sum + ms, 0),
  );
});

test('what nobody has the hours for between two absences is done all the same, by who has just come', () => {
  const hours = [5, 12].map((at) => ({ from: at * day, to: at * day + hour }));
  const plan = aPlan([aStep(0, 90)], { lots: [aLot(1)], people: [{ hours }] });
  expect([...ends(plan, 1).doneAt]).toEqual(Array.from({ length: replications }, () => 12 * day + hour / 2));
});

test('each change changes what it names, and nothing else', () => {
  const plan = aPlan([aStep(0, 4), aStep(1, 2)], {
    stages: [
      { kind: 'hold', resource: 0, cureMinutes: 600 },
      { kind: 'work', resource: null },
    ],
    resources: [{ name: 'clamps', capacity: 4 }],
    variants: [
      { wanted: 30, finished: 0, due: null, steps: [aStep(0, 4), aStep(1, 2)] },
      { wanted: 5, finished: 0, due: null, steps: [aStep(1, 2)] },
    ],
    lots: [aLot(6, { step: 1 }), aLot(10), aLot(10, { variant: 1 }), aLot(3, { firsts: 1, seconds: 2 })],
  });
  const changed = (change: PlanChange) => changedPlan(plan, [change]);
  expect(changedPlan(plan, [])).toBe(plan);
  expect(changed({ kind: 'places', resource: 0, capacity: 9 })).toEqual({
    ...plan,
    resources: [{ name: 'clamps', capacity: 9 }],
  });
  expect(changed({ kind: 'cure', stage: 0, minutes: 60 }).stages[0]).toMatchObject({ cureMinutes: 60 });
  expect(changed({ kind: 'cure', stage: 1, minutes: 60 })).toEqual(plan);
  const medians = (of: PlanModel) =>
    of.variants.map(({ steps }) => steps.map(({ minutes }) => minutes.median));
  expect(medians(changed({ kind: 'faster', stage: 1, percent: 25 }))).toEqual([[4, 1.5], [1.5]]);
  // The least far go first, the last of them first: 3, then 5 of the 10.
  const fewer = changed({ kind: 'fewer', variant: 0, pieces: 8 });
  expect(fewer.variants.map(({ wanted }) => wanted)).toEqual([22, 5]);
  expect(fewer.lots.map(({ firsts, seconds }) => [firsts, seconds])).toEqual([
    [6, 0],
    [5, 0],
    [10, 0],
  ]);
});

test('plans are compared luck by luck: what is common to both is no doubt about the difference', () => {
  const each = (doneAt: number[]) => ({
    each: { doneAt: Float64Array.from(doneAt), handsMs: Float64Array.from(doneAt, (at) => at * hour) },
  });
  const wide = Array.from({ length: 40 }, (_, at) => at * day);
  const later = compared(each(wide), each(wide.map((at) => at + 2 * day)));
  expect(later.done).toEqual({ low: 2 * day, middle: 2 * day, high: 2 * day });
  expect(later.hours).toEqual({ low: 2 * day, middle: 2 * day, high: 2 * day });
  const never = wide.map((at, run) => (run < 4 ? Number.POSITIVE_INFINITY : at));
  expect(compared(each(wide), each(never)).done).toBeNull();
  expect(() => compared(each(wide), each([1]))).toThrow(RangeError);
});

test('a good piece takes the minutes of its visits over the share that comes through', () => {
  const steps = [
    aStep(0, 10, { lost: known(0.5) }),
    aStep(1, 6, { lowered: known(0.2), back: known(0.25), backTo: [{ step: 1, weight: 1 }] }),
  ];
  const plan = aPlan(steps, {
    pace: { median: 1.5, logSd: 0 },
    variants: [{ wanted: 1, finished: 0, due: null, steps }],
  });
  // By hand: 10 + 0.5 × 6 ÷ 0.75 visits of each = 14 minutes; 0.5 × 0.8 come out as firsts, 0.5 as any; 1.5 for the pace.
  expect(minutesOfGood(plan)?.likely).toBeCloseTo((1.5 * 14) / 0.4, 9);
  expect(minutesOfGood({ ...plan, goal: 'finished' })?.likely).toBeCloseTo((1.5 * 14) / 0.5, 9);
  const unsure = minutesOfGood({ ...plan, pace: { median: 1.5, logSd: 0.1 } });
  expect((unsure?.high ?? 0) / (unsure?.likely ?? 1)).toBeCloseTo(Math.exp(0.1645), 6);
  expect(minutesOfGood({ ...plan, variants: [] })).toBeUndefined();
});
