/**
 * The special functions that the statistics rest on, under the names of their field. The numerics are those of the
 * stdlib packages (ports of Boost.Math, FDLIBM and SLATEC); here they only get types, edges and refusals, so that no
 * caller ever meets NaN. An argument outside its stated range is a mistake of the caller and throws RangeError.
 */
import betainc from '@stdlib/math-base-special-betainc';
import betaincinv from '@stdlib/math-base-special-betaincinv';
import betaln from '@stdlib/math-base-special-betaln';
import psi from '@stdlib/math-base-special-digamma';
import erfc from '@stdlib/math-base-special-erfc';
import erfcinv from '@stdlib/math-base-special-erfcinv';
import gammaln from '@stdlib/math-base-special-gammaln';
import psi1 from '@stdlib/math-base-special-trigamma';

/** Throws RangeError unless `holds`: the text names the argument and its range. */
function demand(holds: boolean, text: string): void {
  if (!holds) throw new RangeError(text);
}

const isPositive = (value: number) => value > 0 && value < Number.POSITIVE_INFINITY;
const isShare = (value: number) => value >= 0 && value <= 1;
const isWhole = (value: number) => Number.isSafeInteger(value);

function demandShapes(a: number, b: number): void {
  demand(isPositive(a) && isPositive(b), `The shapes of a beta must be positive, not ${a} and ${b}`);
}

/** ln Γ(x), for x > 0. */
export function logGamma(x: number): number {
  demand(isPositive(x), `logGamma wants a positive number, not ${x}`);
  return gammaln(x);
}

/** ψ(x) = d ln Γ(x) / dx, for x > 0. */
export function digamma(x: number): number {
  demand(isPositive(x), `digamma wants a positive number, not ${x}`);
  return psi(x);
}

/** ψ′(x), the slope of digamma, for x > 0. */
export function trigamma(x: number): number {
  demand(isPositive(x), `trigamma wants a positive number, not ${x}`);
  return psi1(x);
}

/** ln B(a, b) = ln Γ(a) + ln Γ(b) − ln Γ(a + b) without its cancellation, for a, b > 0. */
export function logBeta(a: number, b: number): number {
  demandShapes(a, b);
  return betaln(a, b);
}

/** P(X ≤ x) of a Beta(a, b): the regularised incomplete beta function I_x(a, b). Outside [0, 1] it is 0 or 1. */
export function betaCdf(x: number, a: number, b: number): number {
  demand(!Number.isNaN(x), 'betaCdf wants a number');
  demandShapes(a, b);
  if (x <= 0) return 0;
  return x >= 1 ? 1 : betainc(x, a, b);
}

/** P(X > x) of a Beta(a, b), exact also where it is too small to be 1 − betaCdf. */
export function betaUpperTail(x: number, a: number, b: number): number {
  demand(!Number.isNaN(x), 'betaUpperTail wants a number');
  demandShapes(a, b);
  if (x <= 0) return 1;
  return x >= 1 ? 0 : betainc(x, a, b, true, true);
}

/** The x with P(X ≤ x) = p of a Beta(a, b), for p in [0, 1]. */
export function betaQuantile(p: number, a: number, b: number): number {
  demand(isShare(p), `A probability lies between 0 and 1, not at ${p}`);
  demandShapes(a, b);
  if (p === 0 || p === 1) return p;
  return betaincinv(p, a, b);
}

/** P(Z ≤ z) of the standard normal distribution. */
export function normalCdf(z: number): number {
  demand(!Number.isNaN(z), 'normalCdf wants a number');
  return erfc(-z / Math.SQRT2) / 2;
}

/** The z with P(Z ≤ z) = p of the standard normal distribution, for p strictly between 0 and 1. */
export function normalQuantile(p: number): number {
  demand(p > 0 && p < 1, `A normal quantile is finite only between 0 and 1, not at ${p}`);
  return -Math.SQRT2 * erfcinv(2 * p) + 0;
}

/**
 * The t with P(T ≤ t) = p of Student's distribution with `freedom` > 0 degrees of freedom, for p strictly between 0
 * and 1. By t² = freedom · (1 − x) / x, where x is Beta(freedom / 2, 1/2) (Abramowitz and Stegun 26.7.1).
 */
export function studentQuantile(p: number, freedom: number): number {
  demand(p > 0 && p < 1, `A quantile of Student's t is finite only between 0 and 1, not at ${p}`);
  demand(isPositive(freedom), `Degrees of freedom are positive, not ${freedom}`);
  const tail = Math.min(p, 1 - p);
  // Near the middle 1 − x cancels, far out x does: each half of the tail solves for the one that is small.
  const rest = tail > 0.25 ? betaQuantile(1 - 2 * tail, 0.5, freedom / 2) : undefined;
  const x = rest === undefined ? betaQuantile(2 * tail, freedom / 2, 0.5) : 1 - rest;
  const size = Math.sqrt((freedom * (rest ?? 1 - x)) / x);
  return p < 0.5 ? -size : size;
}

/** P(K ≤ k) of a binomial: k of n at chance p each; n whole and not negative, p in [0, 1]. */
export function binomialCdf(k: number, n: number, p: number): number {
  demand(isWhole(n) && n >= 0, `A number of pieces is whole and not negative, not ${n}`);
  demand(isShare(p), `A chance lies between 0 and 1, not at ${p}`);
  demand(!Number.isNaN(k), 'binomialCdf wants a number');
  const whole = Math.floor(k);
  if (whole < 0) return 0;
  return whole >= n ? 1 : betaUpperTail(p, whole + 1, n - whole);
}

/** P(K ≥ k) of a binomial, exact also where it is too small to be 1 − binomialCdf(k − 1). */
export function binomialUpperTail(k: number, n: number, p: number): number {
  demand(isWhole(n) && n >= 0, `A number of pieces is whole and not negative, not ${n}`);
  demand(isShare(p), `A chance lies between 0 and 1, not at ${p}`);
  demand(!Number.isNaN(k), 'binomialUpperTail wants a number');
  const whole = Math.ceil(k);
  if (whole <= 0) return 1;
  return whole > n ? 0 : betaCdf(p, whole, n - whole + 1);
}
