/**
 * What the counts of several groups say about the population that their rates are drawn from, with its own doubt:
 * weights over the precision s = alpha + beta, and for each the mean and variance of the population's mean m.
 *
 * Prior: m and s^(−½) uniform on (0, 1), which is p(alpha, beta) ∝ (alpha + beta)^(−5/2) (A. Gelman et al., Bayesian
 * Data Analysis, 3rd ed., section 5.3, from memory), cut at s ≥ 1 so that it is proper also where all pieces of all
 * groups went the same way.
 */
import { logMarginal } from './beta-population.ts';
import type { Count } from './counts.ts';

/** One value of the precision, with its share of the belief. */
export interface PrecisionBelief {
  readonly precision: number;
  readonly weight: number;
  /** Of the population's mean, given the precision. */
  readonly mean: number;
  readonly variance: number;
}

/** Points of the trapezoid over the mean; the integrand is smooth and fades at both ends, so few are many. */
const MEAN_POINTS = 32;
/** Step of the trapezoid over ln s: at most this, and less with many groups, whose belief is narrower. */
const WIDEST_STEP = 0.8;
/** Beliefs of less weight than this share do not move a limit that is read in per cent. */
const FORGOTTEN = 1e-5;

interface Belief extends Omit<PrecisionBelief, 'weight'> {
  readonly logWeight: number;
}

/** The belief about the population, from groups with n > 0; the weights sum to 1. */
export function hyperposterior(groups: readonly Count[]): PrecisionBelief[] {
  const largest = groups.reduce((most, { n }) => Math.max(most, n), 1);
  // Beyond a hundred times the largest group more precision changes no group's share by more than one part in a hundred.
  const last = Math.log(100 * largest);
  const steps = Math.ceil(last / Math.min(WIDEST_STEP, 2 / Math.sqrt(1 + groups.length)));
  const beliefs = Array.from({ length: steps + 1 }, (_, step) =>
    beliefAt(Math.exp((last * step) / steps), groups, endWeight(step, steps, last)),
  );
  const highest = beliefs.reduce(
    (most, { logWeight }) => Math.max(most, logWeight),
    Number.NEGATIVE_INFINITY,
  );
  const weighed = beliefs
    .map(({ logWeight, ...belief }) => ({ ...belief, weight: Math.exp(logWeight - highest) }))
    .filter(({ weight }) => weight > FORGOTTEN);
  const total = weighed.reduce((sum, { weight }) => sum + weight, 0);
  return weighed.map((belief) => ({ ...belief, weight: belief.weight / total }));
}

/**
 * Weight of a point of the trapezoid in ln s. The prior falls as s^(−½), so all that lies beyond the last point adds
 * up to 2 of the last density, and is counted there.
 */
function endWeight(step: number, steps: number, last: number): number {
  const width = last / steps;
  if (step === 0) return width / 2;
  return step === steps ? width / 2 + 2 : width;
}

/** Integrates the mean out at one precision. */
function beliefAt(precision: number, groups: readonly Count[], width: number): Belief {
  const [low, high] = logitRange(precision, groups);
  const points = Array.from({ length: MEAN_POINTS }, (_, index) => {
    const odds = Math.exp(low + ((high - low) * index) / (MEAN_POINTS - 1));
    const mean = odds / (1 + odds);
    const rest = 1 / (1 + odds);
    const height =
      logMarginal(groups, { alpha: precision * mean, beta: precision * rest }) + Math.log(mean * rest);
    return { mean, height };
  });
  const highest = points.reduce((most, { height }) => Math.max(most, height), Number.NEGATIVE_INFINITY);
  let mass = 0;
  let first = 0;
  for (const { mean, height } of points) {
    mass += Math.exp(height - highest);
    first += mean * Math.exp(height - highest);
  }
  const mean = first / mass;
  const second = points.reduce(
    (sum, point) => sum + (point.mean - mean) ** 2 * Math.exp(point.height - highest),
    0,
  );
  return {
    precision,
    mean,
    variance: second / mass,
    logWeight: highest + Math.log(mass * (high - low)) + Math.log(width) - Math.log(precision) / 2,
  };
}

/**
 * The range of ln(m ÷ (1 − m)) that holds the belief about the mean. n pieces of one group tell as much about m as
 * n (s + 1) ÷ (n + s) of a population without spread; m is then about Beta(1 + good, 1 + bad) of those.
 */
function logitRange(precision: number, groups: readonly Count[]): readonly [number, number] {
  let good = 1;
  let bad = 1;
  for (const { k, n } of groups) {
    const worth = (precision + 1) / (n + precision);
    good += k * worth;
    bad += (n - k) * worth;
  }
  const centre = Math.log(good / bad);
  // Like a bell where the count is large, and falling off as slowly as m^good where it is small.
  const reach = (count: number) => 6 / Math.sqrt(count) + 14 / count;
  return [centre - reach(good), centre + reach(bad)];
}
