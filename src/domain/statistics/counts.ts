/** A lower and an upper limit, low first. */
export type Interval = readonly [low: number, high: number];

/** `k` pieces of `n`. */
export interface Count {
  readonly k: number;
  readonly n: number;
}

/** Throws RangeError unless 0 ≤ k ≤ n, both whole. */
export function demandCount({ k, n }: Count): void {
  if (!(Number.isSafeInteger(k) && Number.isSafeInteger(n) && k >= 0 && k <= n)) {
    throw new RangeError(`A count is whole and 0 ≤ k ≤ n, not ${k} of ${n}`);
  }
}

/** Throws RangeError unless 0 ≤ k ≤ n, whole or not: what is worth a number of pieces may be a fraction of one. */
export function demandWorth({ k, n }: Count): void {
  if (!(k >= 0 && k <= n && n < Number.POSITIVE_INFINITY)) throw new RangeError(`Not a share: ${k} of ${n}`);
}

/** Throws RangeError unless the level of confidence lies strictly between 0 and 1. */
export function demandLevel(level: number): void {
  if (!(level > 0 && level < 1)) throw new RangeError(`A level lies between 0 and 1, not at ${level}`);
}
