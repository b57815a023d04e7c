/**
 * Two-sided intervals for the share behind `k` of `n` pieces, at `level` (0.9 for 90 %). All are fractions in [0, 1].
 * With n = 0 nothing is known and the answer is [0, 1]. Each throws RangeError unless 0 ≤ k ≤ n are whole and
 * 0 < level < 1.
 */
import { demandCount, demandLevel, type Interval } from './counts.ts';
import { betaQuantile, normalQuantile } from './special-functions.ts';

function demandAll(k: number, n: number, level: number): void {
  demandCount({ k, n });
  demandLevel(level);
}

/**
 * Wilson's score interval, without continuity correction: the shares p with |k/n − p| ≤ z √(p(1 − p)/n).
 * Source: E. B. Wilson, J. American Statistical Association 22 (1927) 209-212; method 3 of R. G. Newcombe,
 * Statistics in Medicine 17 (1998) 857-872.
 */
export function wilson(k: number, n: number, level: number): Interval {
  demandAll(k, n, level);
  if (n === 0) return [0, 1];
  const z = normalQuantile((1 + level) / 2);
  const sum = k + (z * z) / 2 + z * Math.sqrt((k * (n - k)) / n + (z * z) / 4);
  // The lower root by the product of both: the usual difference cancels when k is small.
  return [(k * k) / n / sum, k === n ? 1 : sum / (n + z * z)];
}

/**
 * Clopper and Pearson's exact interval: covers at least `level` whatever the true share, usually more.
 * Source: C. J. Clopper, E. S. Pearson, Biometrika 26 (1934) 404-413; by quantiles of the beta distribution.
 */
export function clopperPearson(k: number, n: number, level: number): Interval {
  demandAll(k, n, level);
  const low = k === 0 ? 0 : betaQuantile((1 - level) / 2, k, n - k + 1);
  const high = k === n ? 1 : betaQuantile((1 + level) / 2, k + 1, n - k);
  return [low, high];
}

/**
 * Jeffreys' interval: equal tails of Beta(k + ½, n − k + ½), with the lower limit 0 at k = 0 and the upper 1 at k = n.
 * Source: L. D. Brown, T. T. Cai, A. DasGupta, Statistical Science 16 (2001) 101-133, section 3.1.3.
 */
export function jeffreys(k: number, n: number, level: number): Interval {
  demandAll(k, n, level);
  const low = k === 0 ? 0 : betaQuantile((1 - level) / 2, k + 0.5, n - k + 0.5);
  const high = k === n ? 1 : betaQuantile((1 + level) / 2, k + 0.5, n - k + 0.5);
  return [low, high];
}
