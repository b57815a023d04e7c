export interface BernoulliCusumOptions {
  /** Share of flawed pieces that is usual, and the larger one that must be found: 0 < p0 < p1 < 1. */
  readonly p0: number;
  readonly p1: number;
  /** Sum at which there is a signal, in weights of one good piece: see `bernoulliCusumThreshold`. */
  readonly threshold: number;
}

export interface BernoulliCusum {
  /** Sum after each piece, in weights of one good piece; 0 while nothing speaks for the larger share. */
  readonly sums: readonly number[];
  /** The first piece at which the sum has reached the threshold, and the likely first piece after the change. */
  readonly signal: { readonly index: number; readonly since: number } | undefined;
}

/**
 * What a flawed piece adds when a good one takes 1 away: the ratio of their log-likelihood ratios
 * ln(p1 ÷ p0) and ln((1 − p0) ÷ (1 − p1)), rounded to a whole number, so that the run length can be reckoned exactly.
 *
 * M. R. Reynolds and Z. G. Stoumbos, A CUSUM chart for monitoring a proportion when inspecting continuously, Journal
 * of Quality Technology 31 (1999) 87-108 (from memory: they choose p1 so that 1 ÷ γ is whole, which is the same).
 *
 * @throws {RangeError} unless 0 < p0 < p1 < 1
 */
export function flawWeight({ p0, p1 }: { readonly p0: number; readonly p1: number }): number {
  if (!(p0 > 0 && p0 < p1 && p1 < 1)) throw new RangeError(`no two shares to tell apart: ${p0} and ${p1}`);
  const flawed = Math.log(p1 / p0);
  const good = Math.log1p(-p0) - Math.log1p(-p1);
  return Math.max(1, Math.round(flawed / good));
}

/**
 * Cumulative sum over single pieces for rare flaws: sum = max(0, sum + weight) for a flawed piece, max(0, sum − 1) for
 * a good one (see `flawWeight`). Looks at every piece, so it need not wait until a tray is full.
 *
 * @param flawed whether each piece was flawed, in the order of the work
 * @throws {RangeError} see `flawWeight`
 * @example bernoulliCusum([false, true, true], { p0: 0.05, p1: 0.1, threshold: 20 }).sums // => [0, 13, 26]
 */
export function bernoulliCusum(
  flawed: readonly boolean[],
  { p0, p1, threshold }: BernoulliCusumOptions,
): BernoulliCusum {
  const weight = flawWeight({ p0, p1 });
  let sum = 0;
  let since = 0;
  let signal: BernoulliCusum['signal'];
  const sums = flawed.map((isFlawed, index) => {
    if (sum === 0) since = index;
    sum = Math.max(0, sum + (isFlawed ? weight : -1));
    if (sum >= threshold && sum > 0) signal ??= { index, since };
    return sum;
  });
  return { sums, signal };
}
