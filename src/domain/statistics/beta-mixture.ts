/** Mixtures of beta distributions: what is believed about the rate of one group. */
import type { PrecisionBelief } from './beta-hyperposterior.ts';
import { type Beta, betaOfMoments } from './beta-moments.ts';
import type { Count, Interval } from './counts.ts';
import { betaCdf, betaQuantile, logBeta } from './special-functions.ts';

/** The weights sum to 1. */
export type BetaMixture = readonly (Beta & { readonly weight: number })[];

/** The belief about a group's rate after its own k of n, for each precision the beta of the same mean and variance. */
export function betaHyperMixture({ k, n }: Count, beliefs: readonly PrecisionBelief[]): BetaMixture {
  return beliefs.flatMap(({ precision, weight, mean, variance }) => {
    const share = precision / (n + precision);
    const rate = (k + precision * mean) / (n + precision);
    const between = share ** 2 * variance;
    const within = (rate * (1 - rate) - between) / (n + precision + 1);
    const beta = betaOfMoments(rate, between + within);
    return beta ? [{ weight, ...beta }] : [];
  });
}

export const mixtureMean = (mixture: BetaMixture) =>
  mixture.reduce((sum, { weight, alpha, beta }) => sum + (weight * alpha) / (alpha + beta), 0);

export function mixtureVariance(mixture: BetaMixture, mean: number): number {
  return mixture.reduce((sum, { weight, alpha, beta }) => {
    const each = alpha / (alpha + beta);
    return sum + weight * ((each * (1 - each)) / (alpha + beta + 1) + (each - mean) ** 2);
  }, 0);
}

/** The equal-tailed interval that holds `level` of the mixture. */
export function mixtureInterval(mixture: BetaMixture, level: number): Interval {
  return [mixtureQuantile((1 - level) / 2, mixture), mixtureQuantile((1 + level) / 2, mixture)];
}

/** How near the sum must come to p: far below what a screen shows. */
const CLOSE = 1e-8;
const STEPS = 60;

/** The x with P(X ≤ x) = p, for p strictly between 0 and 1: Newton's method inside a bracket that only closes. */
function mixtureQuantile(p: number, mixture: BetaMixture): number {
  const mean = mixtureMean(mixture);
  const one = betaOfMoments(mean, mixtureVariance(mixture, mean));
  let x = one ? betaQuantile(p, one.alpha, one.beta) : mean;
  let low = 0;
  let high = 1;
  for (let step = 0; step < STEPS; step++) {
    const missing = p - mixtureCdf(x, mixture);
    if (Math.abs(missing) < CLOSE * Math.min(p, 1 - p)) return x;
    if (missing > 0) low = x;
    else high = x;
    const next = x + missing / mixtureDensity(x, mixture);
    x = next > low && next < high ? next : (low + high) / 2;
  }
  return x;
}

const mixtureCdf = (x: number, mixture: BetaMixture) =>
  mixture.reduce((sum, { weight, alpha, beta }) => sum + weight * betaCdf(x, alpha, beta), 0);

const mixtureDensity = (x: number, mixture: BetaMixture) =>
  mixture.reduce(
    (sum, { weight, alpha, beta }) =>
      sum + weight * Math.exp((alpha - 1) * Math.log(x) + (beta - 1) * Math.log1p(-x) - logBeta(alpha, beta)),
    0,
  );
