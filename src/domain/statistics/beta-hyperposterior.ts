/**
 * What the counts of several groups say about the population that their rates are drawn from, with its own doubt:
 * weights over the precision s = alpha + beta, and for each the mean and variance of the population's mean m.
 *
 * Prior: m is uniform on (0, 1), and so is 10 ÷ (10 + s), the weight that a group of ten pieces gives to itself against
 * the population: p(s) = 10 ÷ (s + 10)² (a uniform shrinkage prior: M. J. Daniels, Canadian J. of Statistics 27 (1999)
 * 567-578, from memory), cut at s ≥ 1. Unlike p(alpha, beta) ∝ (alpha + beta)^(−5/2) (A. Gelman et al., Bayesian Data
 * Analysis, 3rd ed., section 5.3, from memory) it is proper also where all pieces of all groups went the same way, and in
 * simulated shops of 5 to 8 groups with 20 to 60 pieces it was nearer to the truth at the same coverage.
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
/** Size of the group of which the prior says that all its weights are alike. */
const PRIOR_PIECES = 10;
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
  // What lies beyond a hundred times the largest group is left out: it would change no group's share by a hundredth.
  const last = Math.log(100 * largest);
  const steps = Math.ceil(last / Math.min(WIDEST_STEP, 2 / Math.sqrt(1 + groups.length)));
  const beliefs = Array.from({ length: steps + 1 }, (_, step) =>
    beliefAt(Math.exp((last * step) / steps), groups, priorAt(step, steps, last)),
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

/** Share of the prior that a point of the trapezoid in ln s stands for, up to a constant. */
function priorAt(step: number, steps: number, last: number): number {
  const precision = Math.exp((last * step) / steps);
  const density = precision / (precision + PRIOR_PIECES) ** 2;
  return step === 0 || step === steps ? density / 2 : density;
}

/** Integrates the mean out at one precision. */
function beliefAt(precision: number, groups: readonly Count[], prior: number): Belief {
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
    logWeight: highest + Math.log(mass * (high - low)) + Math.log(prior),
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
