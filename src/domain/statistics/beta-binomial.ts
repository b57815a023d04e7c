/**
 * The beta-binomial distribution: how many of `n` pieces come out when the chance of each is the same but known only
 * as Beta(alpha, beta). Source: N. L. Johnson, A. W. Kemp, S. Kotz, Univariate Discrete Distributions, 3rd ed.,
 * section 6.9.2 (from memory).
 *
 * `n` is a whole number from 0 (sound to 10⁶ and beyond), alpha and beta are positive. Anything else throws RangeError.
 */
import { logBeta } from './special-functions.ts';

interface Shape {
  readonly n: number;
  readonly alpha: number;
  readonly beta: number;
}

/** A term below this share of the sum cannot change it any more, nor can those beyond it on a falling slope. */
const NEGLIGIBLE = 1e-18;
/** How far p may lie above a sum and still count as reached: both carry rounding. */
const ROUNDING = 1e-12;

function demandShape({ n, alpha, beta }: Shape): void {
  if (!(Number.isSafeInteger(n) && n >= 0)) throw new RangeError(`A number of pieces is whole, not ${n}`);
  // logBeta is never asked when k is out of range, so the shapes are checked here.
  if (!(alpha > 0 && beta > 0 && alpha + beta < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`The shapes of a beta must be positive, not ${alpha} and ${beta}`);
  }
}

function mass(k: number, { n, alpha, beta }: Shape): number {
  return Math.exp(
    logBeta(k + alpha, n - k + beta) - logBeta(alpha, beta) - logBeta(k + 1, n - k + 1) - Math.log(n + 1),
  );
}

/** P(k + 1) ÷ P(k). */
const rise = (k: number, { n, alpha, beta }: Shape) =>
  ((n - k) / (k + 1)) * ((k + alpha) / (n - k - 1 + beta));

/** P(0) + … + P(k), summed from k down, where it is the shorter tail. */
function lowerTail(k: number, shape: Shape): number {
  let term = mass(k, shape);
  let sum = term;
  if (term === 0) return 0;
  for (let j = k; j > 0; j--) {
    const next = term / rise(j - 1, shape);
    if (next < term && next * j < NEGLIGIBLE * sum) break;
    term = next;
    sum += term;
  }
  return sum;
}

/** P(K ≤ k), for a whole k from 0 to n − 1, from the tail that does not hold the mean. */
function sumTo(k: number, shape: Shape): number {
  const { n, alpha, beta } = shape;
  if (k * (alpha + beta) < n * alpha) return Math.min(1, lowerTail(k, shape));
  return Math.max(0, 1 - lowerTail(n - k - 1, { n, alpha: beta, beta: alpha }));
}

function pmf(k: number, n: number, alpha: number, beta: number): number {
  const shape = { n, alpha, beta };
  demandShape(shape);
  return Number.isInteger(k) && k >= 0 && k <= n ? mass(k, shape) : 0;
}

function cdf(k: number, n: number, alpha: number, beta: number): number {
  const shape = { n, alpha, beta };
  demandShape(shape);
  if (Number.isNaN(k)) throw new RangeError('cdf wants a number of pieces');
  const whole = Math.floor(k);
  if (whole < 0) return 0;
  return whole >= n ? 1 : sumTo(whole, shape);
}

function quantile(p: number, n: number, alpha: number, beta: number): number {
  const shape = { n, alpha, beta };
  demandShape(shape);
  if (!(p >= 0 && p <= 1)) throw new RangeError(`A probability lies between 0 and 1, not at ${p}`);
  const reached = p * (1 - ROUNDING);
  let low = 0;
  let high = n;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (sumTo(middle, shape) >= reached) high = middle;
    else low = middle + 1;
  }
  return low;
}

export const betaBinomial = {
  /** P(K = k); 0 where k is no whole number from 0 to n. */
  pmf,
  /** P(K ≤ k). */
  cdf,
  /** The smallest whole k with P(K ≤ k) ≥ p, for p in [0, 1]; p may lie above the sum by rounding (one part in 10¹²). */
  quantile,
} as const;
