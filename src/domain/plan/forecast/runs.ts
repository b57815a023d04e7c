import type { PlanModel } from './plan-model.ts';

/** What is to be worked out. The same order gives the same answer, on any tablet and in any parts. */
export interface ForecastOrder {
  readonly plan: PlanModel;
  /** Moments at which good ones are counted, ascending: the ends of the days to come. */
  readonly marks: readonly number[];
  /** A whole number; plans that are compared have the same one. */
  readonly seed: number;
  readonly replications: number;
}

/** What came of the replications from `from` on; tables have a row for each. Plain data, so that it can be handed over. */
export interface Runs {
  readonly from: number;
  readonly count: number;
  /** ms UTC: when the last piece was finished or scrapped, and when every variant had its good ones; Infinity for never. */
  readonly doneAt: Float64Array<ArrayBuffer>;
  readonly enoughAt: Float64Array<ArrayBuffer>;
  /** ms of hands in all, whole. */
  readonly handsMs: Float64Array<ArrayBuffer>;
  /** Good ones by then, with those that are finished now: variant × mark. */
  readonly good: Int32Array<ArrayBuffer>;
  /** By the end, of those that are in the plan: finished as seconds, and scrapped, by variant. */
  readonly seconds: Int32Array<ArrayBuffer>;
  readonly scrapped: Int32Array<ArrayBuffer>;
  /** Sums over the replications by stage: ms of hands, whole, and visits of pieces. */
  readonly workedMs: Float64Array<ArrayBuffer>;
  readonly pieceVisits: Float64Array<ArrayBuffer>;
}

/** Puts parts together in the order of their replications: however they were cut, they come to the same. */
export function joinedRuns(parts: readonly Runs[]): Runs {
  const sorted = inTurn(parts);
  return {
    ...joinedSums(sorted),
    good: joined(
      sorted.map(({ good }) => good),
      Int32Array,
    ),
  };
}

/** The same without the counts by mark, which are most of it. */
export function joinedSums(parts: readonly Runs[]): Omit<Runs, 'good'> {
  const sorted = inTurn(parts);
  const numbers = (of: (runs: Runs) => Float64Array<ArrayBuffer>) => joined(sorted.map(of), Float64Array);
  const integers = (of: (runs: Runs) => Int32Array<ArrayBuffer>) => joined(sorted.map(of), Int32Array);
  return {
    from: sorted[0]?.from ?? 0,
    count: sorted.reduce((sum, { count }) => sum + count, 0),
    doneAt: numbers(({ doneAt }) => doneAt),
    enoughAt: numbers(({ enoughAt }) => enoughAt),
    handsMs: numbers(({ handsMs }) => handsMs),
    seconds: integers(({ seconds }) => seconds),
    scrapped: integers(({ scrapped }) => scrapped),
    workedMs: summed(sorted.map(({ workedMs }) => workedMs)),
    pieceVisits: summed(sorted.map(({ pieceVisits }) => pieceVisits)),
  };
}

const inTurn = (parts: readonly Runs[]) => parts.toSorted((a, b) => a.from - b.from);

function joined<Column extends Float64Array | Int32Array>(
  columns: readonly Column[],
  make: new (length: number) => Column,
): Column {
  const all = new make(columns.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const column of columns) {
    all.set(column, at);
    at += column.length;
  }
  return all;
}

/** Whole numbers below 2⁵³: their sum does not depend on the order. */
function summed(columns: readonly Float64Array[]): Float64Array<ArrayBuffer> {
  const sums = new Float64Array(columns[0]?.length ?? 0);
  for (const column of columns)
    for (const [at, value] of column.entries()) sums[at] = (sums[at] ?? 0) + value;
  return sums;
}

/** The memory of some runs, to be handed over instead of copied. */
export const buffersOfRuns = (runs: Runs): readonly ArrayBuffer[] =>
  [
    runs.doneAt,
    runs.enoughAt,
    runs.handsMs,
    runs.good,
    runs.seconds,
    runs.scrapped,
    runs.workedMs,
    runs.pieceVisits,
  ].map(({ buffer }) => buffer);

/** A part of the replications of a question: all of them, or what a worker takes at a time. */
export interface Part {
  readonly from: number;
  readonly to: number;
}

/**
 * Cuts the replications for workers that take one part after another: a large one each, and then ever smaller ones for
 * whoever is done, so that nobody waits long for another. None is empty.
 */
export function partsFor(replications: number, workers: number): readonly Part[] {
  const rounds = workers === 1 ? [[1]] : [[3 / 4], [1 / 8], [1 / 16, 1 / 16]];
  const shares = rounds.flatMap((round) =>
    round.flatMap((share) => Array<number>(workers).fill(share / workers)),
  );
  let done = 0;
  const ends = shares.map((share) => {
    done += share;
    return Math.round(replications * done);
  });
  return ends.map((to, at) => ({ from: ends[at - 1] ?? 0, to })).filter(({ from, to }) => to > from);
}
