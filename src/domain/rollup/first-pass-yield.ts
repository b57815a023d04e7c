import * as statistics from '../statistics/yields.ts';

/** A share with what it was made from, so that a screen can always show both numbers. */
export interface Share {
  readonly of: number;
  readonly out: number;
}

/** A share as a number, or null while nothing has been counted: not yet known is not zero. */
export function shareValue({ of, out }: Share): number | null {
  return of > 0 ? out / of : null;
}

/** First-pass yield of what was judged at its first visit, or null while nothing was. */
export function firstPassYield({ good, judged }: { good: number; judged: number }): number | null {
  return statistics.firstPassYield(good, judged) ?? null;
}

/** Rolled throughput yield of the stages along the route, or null when no stage has a yield yet. */
export function rolledThroughputYield(yields: readonly number[]): number | null {
  return statistics.rolledThroughputYield(yields) ?? null;
}

/** Normalised yield of the stages: their geometric mean, or null when no stage has a yield yet. */
export function normalizedYield(yields: readonly number[]): number | null {
  const rolled = rolledThroughputYield(yields);
  return rolled === null ? null : (statistics.normalizedYield(rolled, yields.length) ?? null);
}
