import { type Count, demandWorth } from './counts.ts';

/** The beta distribution of a rate, by its two shapes; alpha ÷ (alpha + beta) is its mean. */
export interface Beta {
  readonly alpha: number;
  readonly beta: number;
}

/** A beta and the mean and standard deviation (n − 1) of the raw rates that it was made from. */
export interface BetaMoments extends Beta {
  readonly mean: number;
  readonly sd: number;
}

/**
 * The beta with this mean and variance; absent where none has them (the variance must lie strictly between 0 and
 * mean (1 − mean)).
 */
export function betaOfMoments(mean: number, variance: number): Beta | undefined {
  const precision = (mean * (1 - mean)) / variance - 1;
  if (!(variance > 0 && precision > 0)) return undefined;
  return { alpha: mean * precision, beta: (1 - mean) * precision };
}

/**
 * A beta population from the raw rates of groups, by the mean and variance of those rates. It takes the spread of
 * small numbers for a spread of rates, so it pools less than `empiricalBayes`; it serves as a start and as a check.
 * Groups with n = 0 are left out; absent with fewer than two others or where no beta has these moments. Throws
 * RangeError unless 0 ≤ k ≤ n.
 * Source: A. Gelman et al., Bayesian Data Analysis, 3rd ed., section 5.1.
 */
export function betaMoments(groups: readonly Count[]): BetaMoments | undefined {
  groups.forEach(demandWorth);
  const rates = groups.filter(({ n }) => n > 0).map(({ k, n }) => k / n);
  if (rates.length < 2) return undefined;
  const mean = rates.reduce((sum, rate) => sum + rate, 0) / rates.length;
  const variance = rates.reduce((sum, rate) => sum + (rate - mean) ** 2, 0) / (rates.length - 1);
  const beta = betaOfMoments(mean, variance);
  return beta && { mean, sd: Math.sqrt(variance), ...beta };
}
