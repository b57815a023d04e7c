import fc from 'fast-check';
import type { PlanModel, PlanStep } from '../../../../src/domain/plan/forecast/plan-model.ts';
import { aLot, takes, workWeeks } from './plans.ts';

const chance = fc.oneof(
  fc.record({ kind: fc.constant('known' as const), chance: fc.double({ min: 0, max: 0.3, noNaN: true }) }),
  fc.record({
    kind: fc.constant('beta' as const),
    alpha: fc.double({ min: 0.1, max: 3, noNaN: true }),
    beta: fc.double({ min: 1, max: 60, noNaN: true }),
    shared: fc.double({ min: 0, max: 1, noNaN: true }),
  }),
);

/** Seldom enough for what is sent back to come to an end. */
const chanceOfBack = fc.oneof(
  fc.record({ kind: fc.constant('known' as const), chance: fc.double({ min: 0, max: 0.3, noNaN: true }) }),
  fc.record({
    kind: fc.constant('beta' as const),
    alpha: fc.double({ min: 0.1, max: 3, noNaN: true }),
    beta: fc.double({ min: 20, max: 60, noNaN: true }),
    shared: fc.double({ min: 0, max: 1, noNaN: true }),
  }),
);

/** Small shops of all kinds, with holds, lathes, what is sent back and what is yet to come; everybody has ten weeks. */
export const somePlan: fc.Arbitrary<PlanModel> = fc
  .record({ stages: fc.integer({ min: 1, max: 5 }), variants: fc.integer({ min: 1, max: 3 }) })
  .chain(({ stages, variants }) =>
    fc.record({
      now: fc.integer({ min: 0, max: 2e8 }),
      takes: fc.constantFrom('in-order' as const, 'any' as const),
      goal: fc.constantFrom('firsts' as const, 'finished' as const),
      stages: fc.array(
        fc.oneof(
          fc.record({ kind: fc.constant('work' as const), resource: fc.constantFrom(null, 0) }),
          fc.record({
            kind: fc.constant('hold' as const),
            resource: fc.constantFrom(null, 1),
            cureMinutes: fc.integer({ min: 0, max: 2000 }),
          }),
        ),
        { minLength: stages, maxLength: stages },
      ),
      resources: fc
        .tuple(fc.integer({ min: 1, max: 2 }), fc.integer({ min: 3, max: 20 }))
        .map((capacities) => capacities.map((capacity, at) => ({ name: `resource ${at}`, capacity }))),
      people: fc
        .integer({ min: 1, max: 3 })
        .map((many) => Array.from({ length: many }, () => ({ hours: workWeeks(10) }))),
      variants: fc.array(
        fc.record({
          wanted: fc.integer({ min: 0, max: 20 }),
          finished: fc.integer({ min: 0, max: 5 }),
          due: fc.constantFrom(null, 1e8, 2e8),
          steps: fc.tuple(...Array.from({ length: stages }, (_, stage) => someStep(stage))),
        }),
        { minLength: variants, maxLength: variants },
      ),
      lots: fc.array(
        fc
          .record({
            pieces: fc.integer({ min: 1, max: 12 }),
            variant: fc.integer({ min: 0, max: variants - 1 }),
            step: fc.integer({ min: 0, max: stages - 1 }),
            seconds: fc.integer({ min: 0, max: 2 }),
            ready: fc.integer({ min: 0, max: 4e8 }),
            at: fc.constantFrom('waiting' as const, 'held' as const),
          })
          .map(({ pieces, ...lot }) => aLot(pieces, lot)),
        { maxLength: 8 },
      ),
      visitMinutes: fc.constantFrom(0, 20),
      pace: fc.record({
        median: fc.double({ min: 0.5, max: 2, noNaN: true }),
        logSd: fc.constantFrom(0, 0.2),
      }),
    }),
  )
  .map((plan) => ({
    ...plan,
    // Only what is at a hold is held.
    lots: plan.lots.map((lot) =>
      plan.stages[lot.step]?.kind === 'hold' ? lot : { ...lot, at: 'waiting' as const },
    ),
  }));

function someStep(stage: number): fc.Arbitrary<PlanStep> {
  return fc
    .record({
      minutes: fc.integer({ min: 0, max: 20 }),
      cv: fc.double({ min: 0, max: 1, noNaN: true }),
      lost: chance,
      lowered: chance,
      back: chanceOfBack,
      to: fc.integer({ min: 0, max: stage }),
    })
    .map(({ minutes, cv, to, ...chances }) => ({
      ...{ stage, minutes: takes(minutes, cv), loading: takes(minutes / 2, cv) },
      ...chances,
      backTo: [{ step: to, weight: 1 }],
    }));
}
