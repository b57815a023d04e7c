/** A share with what it was made from, so that a screen can always show both numbers. */
export interface Share {
  readonly of: number;
  readonly out: number;
}

/** A share as a number, or null while nothing has been counted: not yet known is not zero. */
export function shareValue({ of, out }: Share): number | null {
  return of > 0 ? out / of : null;
}

/**
 * First-pass yield: pieces that left a stage good at their first visit ÷ pieces whose first visit ended
 * (ISO 22400-2:2014, first pass yield: good parts without rework ÷ inspected parts).
 */
export function firstPassYield({ good, judged }: { good: number; judged: number }): number | null {
  return shareValue({ of: judged, out: good });
}

/**
 * Rolled throughput yield: the product of the first-pass yields along the route, the chance that a piece goes
 * through all of it without a flaw (Six Sigma body of knowledge). Null when no stage has a yield yet.
 */
export function rolledThroughputYield(yields: readonly number[]): number | null {
  return yields.length === 0 ? null : yields.reduce((product, each) => product * each, 1);
}

/** Normalised yield: the geometric mean of the stages, RTY^(1/stages) (Six Sigma body of knowledge). */
export function normalizedYield(yields: readonly number[]): number | null {
  const rolled = rolledThroughputYield(yields);
  return rolled === null ? null : rolled ** (1 / yields.length);
}
