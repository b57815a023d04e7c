import type { Chance, PlanModel } from '../../../src/domain/plan/forecast/plan-model.ts';

const [hour, day] = [3_600_000, 86_400_000];

/** The days that a forecast counts good ones at. */
export const marks = Array.from({ length: 60 }, (_, at) => (at + 1) * day);

const chance = (rate: number): Chance => ({
  kind: 'beta',
  alpha: 40 * rate,
  beta: 40 * (1 - rate),
  shared: 0.3,
});
const minutes = (median: number) => ({ median, logSd: 0.1, shared: 0.5, cv: 0.4 });

/**
 * A shop like that of the demo: two people, fourteen stages, three of them holds on clamps and a rack, six variants, 360
 * pieces in trays of nine anywhere along the route.
 */
export function benchShop(): PlanModel {
  const cures = new Map([
    [3, { resource: 0, cureMinutes: 24 * 60 }],
    [8, { resource: 1, cureMinutes: 8 * 60 }],
    [11, { resource: 1, cureMinutes: 8 * 60 }],
  ]);
  const stages = Array.from({ length: 14 }, (_, stage) => {
    const cure = cures.get(stage);
    return cure ? { kind: 'hold' as const, ...cure } : { kind: 'work' as const, resource: null };
  });
  const hours = Array.from({ length: 200 }, (_, at) => at)
    .filter((at) => at % 7 < 5)
    .flatMap((at) => [
      { from: at * day + 8 * hour, to: at * day + 12 * hour },
      { from: at * day + 13 * hour, to: at * day + 17 * hour },
    ]);
  const steps = stages.map((_, stage) => ({
    stage,
    minutes: minutes(cures.has(stage) ? 0.3 : 3),
    loading: minutes(0.8),
    lost: chance(0.01 + 0.001 * stage),
    lowered: chance(0.005),
    back: stage === 9 ? chance(0.03) : { kind: 'known' as const, chance: 0 },
    backTo: stage === 9 ? [{ step: 7, weight: 1 }] : [],
  }));
  return {
    ...{ now: 9 * hour, goal: 'firsts', takes: 'any', stages, pace: { median: 1.2, logSd: 0.05 } },
    visitMinutes: 20,
    resources: [
      { name: 'clamps', capacity: 24 },
      { name: 'rack', capacity: 60 },
    ],
    people: [{ hours }, { hours }],
    variants: Array.from({ length: 6 }, () => ({ wanted: 50, finished: 0, due: null, steps })),
    lots: Array.from({ length: 40 }, (_, at) => ({
      ...{ variant: at % 6, step: (at * 5) % 14, firsts: 9, seconds: 0, redo: null },
      ...{ at: 'waiting' as const, ready: 0 },
    })),
  };
}
