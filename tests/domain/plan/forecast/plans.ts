import type {
  Chance,
  PieceMinutesBelief,
  PlanLot,
  PlanModel,
  PlanStep,
} from '../../../../src/domain/plan/forecast/plan-model.ts';

export const minute = 60_000;
export const hour = 60 * minute;
export const day = 24 * hour;

/** Hours without an end that a test comes to. */
export const always = [{ from: 0, to: 10_000 * day }];

/** Monday to Friday from eight to twelve and one to five, from a Monday at moment 0 on. */
export const workWeeks = (weeks: number) =>
  Array.from({ length: weeks * 7 }, (_, at) => at)
    .filter((at) => at % 7 < 5)
    .flatMap((at) => [
      { from: at * day + 8 * hour, to: at * day + 12 * hour },
      { from: at * day + 13 * hour, to: at * day + 17 * hour },
    ]);

export const known = (chance: number): Chance => ({ kind: 'known', chance });

/** Minutes that are known, of pieces that spread about them with this coefficient of variation. */
export const takes = (minutes: number, cv = 0): PieceMinutesBelief => ({
  ...{ median: minutes, logSd: 0, shared: 0, cv },
});

/** A step of which nothing ever goes wrong. */
export function aStep(stage: number, minutes: number, more: Partial<PlanStep> = {}): PlanStep {
  return {
    ...{
      stage,
      minutes: takes(minutes),
      loading: takes(0),
      lost: known(0),
      lowered: known(0),
      back: known(0),
    },
    backTo: [],
    ...more,
  };
}

/** A waiting lot of the first variant at its first step. */
export function aLot(pieces: number, more: Partial<PlanLot> = {}): PlanLot {
  return { variant: 0, step: 0, firsts: pieces, seconds: 0, redo: null, at: 'waiting', ready: 0, ...more };
}

/** One person who is always there and one variant, whose stages have no limits, unless said otherwise. */
export function aPlan(steps: readonly PlanStep[], more: Partial<PlanModel> = {}): PlanModel {
  const stages = Math.max(...steps.map(({ stage }) => stage)) + 1;
  return {
    now: 0,
    goal: 'firsts',
    stages: Array.from({ length: stages }, () => ({ kind: 'work' as const, resource: null })),
    resources: [],
    people: [{ hours: always }],
    variants: [{ wanted: 0, finished: 0, due: null, steps }],
    lots: [],
    takes: 'in-order',
    pace: { median: 1, logSd: 0 },
    visitMinutes: 30,
    ...more,
  };
}
