import { type PlanProblem, planProblem } from './plan-model.ts';
import { type ForecastOrder, joinedSums, type Runs } from './runs.ts';
import { sortedGood } from './sorted-good.ts';

/** A date by which something happens, in the stated share of the replications; null when it does not in so many. */
interface FinishDates {
  /** ms UTC. */
  readonly at50: number | null;
  readonly at85: number | null;
  readonly at95: number | null;
  /** Share of the replications in which it happens at all. */
  readonly share: number;
}

/** Pieces at a mark: 5, 15, 50, 85 and 95 % of the replications have no more. */
type Fan = readonly [low: number, lower: number, middle: number, higher: number, high: number];

/**
 * Good ones at a mark. `safe` is what can be promised: so many there are with the wanted confidence; `chance` is the share of
 * the replications with as many, which is more, as pieces come by the tray.
 */
interface GoodOnes {
  readonly fan: Fan;
  readonly safe: number;
  readonly chance: number;
}

interface MarkForecast {
  readonly at: number;
  /** All variants together. */
  readonly all: GoodOnes;
  /** In the order of the plan. */
  readonly variants: readonly GoodOnes[];
}

export type Forecast =
  | {
      readonly kind: 'forecast';
      readonly replications: number;
      /** When nothing is in work any more. */
      readonly done: FinishDates;
      /** When every variant has its good ones. */
      readonly enough: FinishDates;
      readonly marks: readonly MarkForecast[];
      /** Of what is in the plan, on average: by variant. */
      readonly ends: readonly { readonly seconds: number; readonly scrapped: number }[];
      /** By stage, on average: hours of hands, and visits of pieces. */
      readonly work: readonly { readonly hours: number; readonly visits: number }[];
      /** By replication, so that plans can be compared luck by luck. */
      readonly each: Pick<Runs, 'doneAt' | 'handsMs'>;
    }
  /** Something that pieces need is never there, or pieces come back for ever: not one replication came to an end. */
  | { readonly kind: 'never-done' }
  | PlanProblem;

export interface ForecastQuestion extends ForecastOrder {
  /** Of a promise: a fraction from 0 to 1. */
  readonly confidence: number;
}

const fanLevels = [0.05, 0.15, 0.5, 0.85, 0.95] as const;

/**
 * What the replications say. Each promise holds for itself: that all hold at once is less likely.
 *
 * @param parts runs of all replications, cut and ordered in any way
 * @throws {RangeError} for a confidence outside 0 to 1
 */
export function forecastOf(question: ForecastQuestion, parts: readonly Runs[]): Forecast {
  const { plan, marks, confidence } = question;
  if (!(confidence >= 0 && confidence <= 1))
    throw new RangeError(`A confidence lies between 0 and 1: ${confidence}`);
  const problem = planProblem(plan);
  if (problem) return problem;
  const runs = joinedSums(parts);
  const done = finishDates(runs.doneAt);
  if (done.share === 0) return { kind: 'never-done' };
  const sorted = sortedGood(parts, { variants: plan.variants.length, marks: marks.length });
  const each = (sums: Int32Array, of: number) => {
    let sum = 0;
    for (let at = of; at < sums.length; at += plan.variants.length) sum += sums[at] ?? 0;
    return sum / runs.count;
  };
  return {
    kind: 'forecast',
    replications: runs.count,
    done,
    enough: finishDates(runs.enoughAt),
    marks: marks.map((at, mark) => ({
      at,
      all: goodOnes(sorted(plan.variants.length, mark), confidence),
      variants: plan.variants.map((_, variant) => goodOnes(sorted(variant, mark), confidence)),
    })),
    ends: plan.variants.map((_, at) => ({
      seconds: each(runs.seconds, at),
      scrapped: each(runs.scrapped, at),
    })),
    work: plan.stages.map((_, at) => ({
      hours: (runs.workedMs[at] ?? 0) / runs.count / 3_600_000,
      visits: (runs.pieceVisits[at] ?? 0) / runs.count,
    })),
    each: { doneAt: runs.doneAt, handsMs: runs.handsMs },
  };
}

function finishDates(moments: Float64Array): FinishDates {
  const sorted = moments.toSorted();
  const by = (share: number) => {
    const at = sorted[Math.ceil(share * sorted.length) - 1] ?? Number.POSITIVE_INFINITY;
    return at === Number.POSITIVE_INFINITY ? null : at;
  };
  const never = sorted.indexOf(Number.POSITIVE_INFINITY);
  const share = never < 0 ? 1 : never / sorted.length;
  return { at50: by(0.5), at85: by(0.85), at95: by(0.95), share };
}

function goodOnes(sorted: Int32Array, confidence: number): GoodOnes {
  const safe = safeToPromise(sorted, confidence);
  const fewer = sorted.findIndex((pieces) => pieces >= safe);
  return { fan: fanOf(sorted), safe, chance: fewer < 0 ? 0 : 1 - fewer / sorted.length };
}

const fanOf = (sorted: Int32Array): Fan => {
  const [low, lower, middle, higher, high] = fanLevels.map(
    (level) => sorted[Math.max(0, Math.ceil(level * sorted.length) - 1)] ?? 0,
  );
  return [low ?? 0, lower ?? 0, middle ?? 0, higher ?? 0, high ?? 0];
};

/**
 * The most good ones that there are in at least this share of the replications: safe to promise with that confidence.
 *
 * @param sorted good ones of each replication, ascending
 * @example safeToPromise(Int32Array.of(4, 6, 7, 7, 9), 0.8) // => 6
 */
export function safeToPromise(sorted: Int32Array, confidence: number): number {
  // Of 2000 × (1 − 0.9) rounding makes a little less than 200.
  const fewer = Math.floor((1 - confidence) * sorted.length + 1e-9);
  return Math.max(0, sorted[Math.min(fewer, sorted.length - 1)] ?? 0);
}
