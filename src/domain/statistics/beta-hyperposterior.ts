/**
 * What the counts of several groups say about the population that their rates are drawn from, with its own doubt:
 * weights over the precision s = alpha + beta, and for each the mean and variance of the population's mean m.
 *
 * Prior: m is uniform on (0, 1), where the caller states no other beta, and so is 10 ÷ (10 + s), the weight that a group
 * of ten pieces gives to itself against the population: p(s) = 10 ÷ (s + 10)² (a uniform shrinkage prior: M. J. Daniels, Canadian J. of Statistics 27 (1999)
 * 567-578, from memory), cut at s ≥ 1. Unlike p(alpha, beta) ∝ (alpha + beta)^(−5/2) (A. Gelman et al., Bayesian Data
 * Analysis, 3rd ed., section 5.3, from memory) it is proper also where all pieces of all groups went the same way, and in
 * simulated shops of 5 to 8 groups with 20 to 60 pieces it was nearer to the truth at the same coverage.
 */
import type { Beta } from './beta-moments.ts';
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
/** No wider apart than this, where a prior of less than a piece fades slowly. */
const WIDEST_GAP = 1.5;
/** Beyond it the odds, or one over them, are no longer numbers. */
const FARTHEST_LOGIT = 700;
/** What is believed of the mean before anything was seen. */
const UNIFORM: Beta = { alpha: 1, beta: 1 };
/** Size of the group of which the prior says that all its weights are alike. */
const PRIOR_PIECES = 10;
/** Step of the trapezoid over ln s: at most this, and less with many groups, whose belief is narrower. */
const WIDEST_STEP = 0.8;
/** Beliefs of less weight than this share do not move a limit that is read in per cent. */
const FORGOTTEN = 1e-5;

interface Belief extends Omit<PrecisionBelief, 'weight'> {
  readonly logWeight: number;
}

/** The belief about the population, from groups with n > 0; `ofMean` is the prior of its mean. The weights sum to 1. */
export function hyperposterior(groups: readonly Count[], ofMean = UNIFORM): PrecisionBelief[] {
  const largest = groups.reduce((most, { n }) => Math.max(most, n), 1);
  // What lies beyond a hundred times the largest group is left out: it would change no group's share by a hundredth.
  const last = Math.log(100 * largest);
  const steps = Math.ceil(last / Math.min(WIDEST_STEP, 2 / Math.sqrt(1 + groups.length)));
  const beliefs = Array.from({ length: steps + 1 }, (_, step) =>
    beliefAt(Math.exp((last * step) / steps), groups, { ofMean, weight: priorAt(step, steps, last) }),
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
function beliefAt(
  precision: number,
  groups: readonly Count[],
  prior: { readonly ofMean: Beta; readonly weight: number },
): Belief {
  const { ofMean } = prior;
  const [low, high] = logitRange(precision, groups, ofMean);
  const count = Math.max(MEAN_POINTS, Math.ceil((high - low) / WIDEST_GAP));
  const points = Array.from({ length: count }, (_, index) => {
    const odds = Math.exp(low + ((high - low) * index) / (count - 1));
    const mean = odds / (1 + odds);
    const rest = 1 / (1 + odds);
    const height =
      logMarginal(groups, { alpha: precision * mean, beta: precision * rest }) +
      ofMean.alpha * Math.log(mean) +
      ofMean.beta * Math.log(rest);
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
    logWeight: highest + Math.log((mass * (high - low)) / (count - 1)) + Math.log(prior.weight),
  };
}

/**
 * The range of ln(m ÷ (1 − m)) that holds the belief about the mean. n pieces of one group tell as much about m as
 * n (s + 1) ÷ (n + s) of a population without spread; m is then about the prior with those added.
 */
function logitRange(
  precision: number,
  groups: readonly Count[],
  { alpha, beta }: Beta,
): readonly [number, number] {
  let good = alpha;
  let bad = beta;
  for (const { k, n } of groups) {
    const worth = (precision + 1) / (n + precision);
    good += k * worth;
    bad += (n - k) * worth;
  }
  const centre = Math.log(good / bad);
  // Like a bell where the count is large, and falling off as slowly as m^good where it is small.
  const reach = (count: number) => 6 / Math.sqrt(count) + 14 / count;
  return [Math.max(-FARTHEST_LOGIT, centre - reach(good)), Math.min(FARTHEST_LOGIT, centre + reach(bad))];
}
