/**
 * The beta population of rates under which the counts of several groups are likeliest: alpha and beta by maximum
 * marginal likelihood of the beta-binomial. Each group has a rate of its own, drawn from the population.
 */
import { type Beta, betaMoments } from './beta-moments.ts';
import type { Count } from './counts.ts';
import { digamma, logBeta, trigamma } from './special-functions.ts';

/**
 * The greatest precision alpha + beta, in pieces: what stands for a population without spread. Groups of up to 10⁵
 * pieces are then pooled to within one part in a hundred.
 */
export const FULL_POOLING = 1e7;
/** The least: below it the groups are as good as all-or-nothing. */
const NO_POOLING = 1e-3;
/** Precisions that the search may begin at, beside that of the moments. */
const STARTS = [0.1, 1, 10, 100, 1e3, 1e4, 1e5];
const STEPS = 100;

/** ln of the marginal likelihood, up to what does not depend on the population. */
export function logMarginal(groups: readonly Count[], { alpha, beta }: Beta): number {
  const prior = logBeta(alpha, beta);
  return groups.reduce((sum, { k, n }) => sum + logBeta(k + alpha, n - k + beta) - prior, 0);
}

/**
 * Whether the rates differ more than chance alone lets them: the slope of the likelihood where the spread leaves 0.
 * Source: R. E. Tarone, Biometrika 66 (1979) 585-590 (from memory).
 */
function isSpread(groups: readonly Count[], mean: number): boolean {
  const surplus = groups.reduce(
    (sum, { k, n }) => sum + (k * (k - 1)) / mean + ((n - k) * (n - k - 1)) / (1 - mean) - n * (n - 1),
    0,
  );
  // What rounding leaves of a difference of squares is no spread.
  return surplus > 1e-9 * groups.reduce((sum, { n }) => sum + n * n, 0);
}

/**
 * The likeliest population of the rates of `groups` (0 ≤ k ≤ n).
 *
 * - Without a piece at all it is the flat Beta(1, 1).
 * - Where the rates do not differ more than chance lets them, or all pieces went the same way, there is no spread to
 *   estimate: the precision is FULL_POOLING about the pooled share, which is (k + ½) ÷ (n + 1) where it would be 0 or 1.
 * - The precision is kept between 0.001 and FULL_POOLING.
 */
export function likeliestPopulation(groups: readonly Count[]): Beta {
  const counted = groups.filter(({ n }) => n > 0);
  const k = counted.reduce((sum, group) => sum + group.k, 0);
  const n = counted.reduce((sum, group) => sum + group.n, 0);
  if (n === 0) return { alpha: 1, beta: 1 };
  const oneWay = k === 0 || k === n;
  const mean = oneWay ? (k + 0.5) / (n + 1) : k / n;
  if (oneWay || !isSpread(counted, mean)) return withPrecision(FULL_POOLING, mean);
  const moments = betaMoments(counted);
  const starts = STARTS.map((precision) => withPrecision(precision, mean));
  return climb(counted, likeliest(counted, moments ? [moments, ...starts] : starts));
}

const withPrecision = (precision: number, mean: number): Beta => ({
  alpha: precision * mean,
  beta: precision * (1 - mean),
});

function likeliest(groups: readonly Count[], candidates: readonly Beta[]): Beta {
  const ranked = candidates
    .map((beta) => ({ beta, height: logMarginal(groups, beta) }))
    .toSorted((a, b) => b.height - a.height);
  return ranked[0]?.beta ?? { alpha: 1, beta: 1 };
}

/** Newton's method in the logit of the mean and the ln of the precision, each step halved until it climbs. */
function climb(groups: readonly Count[], start: Beta): Beta {
  let at = start;
  for (let step = 0; step < STEPS; step++) {
    const way = newtonStep(groups, at);
    const next = climbed(groups, at, way);
    if (next === undefined) return at;
    at = next;
    if (Math.hypot(...way) < 1e-12) return at;
  }
  return at;
}

/** A step by the logit of the mean and by the ln of the precision. */
type Step = readonly [mean: number, precision: number];

/** The point a step away, or as much of it as climbs; absent where none does: that is the top. */
function climbed(groups: readonly Count[], at: Beta, step: Step): Beta | undefined {
  // So near the top heights no longer tell points apart, and a full step is what brings the slope to 0.
  if (Math.hypot(...step) < 1e-5) return moved(at, step, 1);
  const height = logMarginal(groups, at);
  for (let share = 1; share > 1e-6; share /= 2) {
    const next = moved(at, step, share);
    if (logMarginal(groups, next) > height) return next;
  }
  return undefined;
}

function moved({ alpha, beta }: Beta, [mean, precision]: Step, share: number): Beta {
  const odds = (alpha / beta) * Math.exp(share * mean);
  const whole = (alpha + beta) * Math.exp(share * precision);
  const bounded = Math.min(FULL_POOLING, Math.max(NO_POOLING, whole));
  return { alpha: (bounded * odds) / (1 + odds), beta: bounded / (1 + odds) };
}

/** Longest single step, in either: far from the top the curvature promises too much. */
const LONGEST = 2;

function newtonStep(groups: readonly Count[], { alpha, beta }: Beta): Step {
  const { a, b, aa, bb, ab } = slopes(groups, { alpha, beta });
  const mean = alpha / (alpha + beta);
  const width = alpha * (1 - mean);
  // By the chain rule: d alpha = width d logit + alpha d ln s, d beta = −width d logit + beta d ln s.
  const m = width * (a - b);
  const s = alpha * a + beta * b;
  const mm = width ** 2 * (aa - 2 * ab + bb) + (1 - 2 * mean) * m;
  const ss = alpha ** 2 * aa + 2 * alpha * beta * ab + beta ** 2 * bb + s;
  const ms = width * (alpha * (aa - ab) + beta * (ab - bb)) + m;
  const determinant = mm * ss - ms * ms;
  // Only at a place that is curved like a top does Newton's step lead up. Elsewhere each slope does, but not how far.
  const isTop = mm < 0 && determinant > 0;
  const step: Step = isTop
    ? [(ms * s - ss * m) / determinant, (ms * m - mm * s) / determinant]
    : [mm < 0 ? -m / mm : Math.sign(m), Math.sign(s)];
  const share = Math.min(1, LONGEST / Math.max(Math.abs(step[0]), Math.abs(step[1])));
  return [share * step[0], share * step[1]];
}

/** First and second derivatives of logMarginal by alpha and beta. */
function slopes(groups: readonly Count[], { alpha, beta }: Beta) {
  const sum = { a: 0, b: 0, aa: 0, bb: 0, ab: 0 };
  const whole = alpha + beta;
  for (const { k, n } of groups) {
    const lost = digamma(n + whole) - digamma(whole);
    const bent = trigamma(n + whole) - trigamma(whole);
    sum.a += digamma(k + alpha) - digamma(alpha) - lost;
    sum.b += digamma(n - k + beta) - digamma(beta) - lost;
    sum.aa += trigamma(k + alpha) - trigamma(alpha) - bent;
    sum.bb += trigamma(n - k + beta) - trigamma(beta) - bent;
    sum.ab -= bent;
  }
  return sum;
}
