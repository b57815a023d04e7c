/**
 * What-if questions with the same random numbers. Of independent pieces at one stage more hands are never later. Of whole
 * shops that is not so: a rule that takes what comes first can end later with more of anything (R. L. Graham, Bounds on
 * multiprocessing timing anomalies, SIAM J. on Applied Mathematics 17 (1969) 416-429; from memory), so it is held on
 * average only.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { PlanModel } from '../../../../src/domain/plan/forecast/plan-model.ts';
import { replicator } from '../../../../src/domain/plan/forecast/replicator.ts';
import { meanOf } from '../../../calibration/row.ts';
import { aLot, always, aPlan, aStep, known, takes } from './plans.ts';
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
