import { betaOfMoments } from './beta-moments.ts';
import { demandCount, demandLevel, type Interval } from './counts.ts';
import type { SurvivalStep } from './product-limit.ts';
import { betaQuantile } from './special-functions.ts';

/** What is believed about the share that survives a whole route. */
export interface SurvivalPosterior {
  /** Posterior mean, a fraction. */
  readonly mean: number;
  /** Equal-tailed posterior interval. */
  readonly interval: Interval;
  /**
   * The whole route's pieces that would tell as much: k of n came through. Fractions of a piece are meant; they can be
   * pooled with those of other woods by `empiricalBayes`.
   */
  readonly worth: { readonly k: number; readonly n: number };
}

/**
 * The Bayesian counterpart of `productLimit`, for the end of the route: also where nothing is lost yet, all is lost, or
 * the last stages have not been tried, there is an answer, and stages that few pieces have tried widen it.
 *
 * The chance to pass stage j of J has the prior Beta(1 + (J − j)/J, 1/J): together they make the survival of the route
 * uniform on (0, 1). Each stage's posterior is then a beta, their product is replaced by the beta of the same mean and
 * variance, and that is exact where no piece is in flight: Beta(1 + came through, 1 + lost).
 *
 * Without a stage the survival is 1. Throws RangeError unless 0 ≤ lost ≤ atRisk are whole and 0 < level < 1.
 * Source: N. L. Hjort, Annals of Statistics 18 (1990) 1259-1294 (beta processes), from memory.
 */
export function survivalPosterior(steps: readonly SurvivalStep[], level = 0.9): SurvivalPosterior {
  demandLevel(level);
  const last = steps.length;
  let mean = 1;
  // Of the squared coefficient of variation, by logarithms: with many pieces it is a small difference of like numbers.
  let spread = 0;
  for (const [index, { atRisk, lost }] of steps.entries()) {
    demandCount({ k: lost, n: atRisk });
    const passed = atRisk - lost + 1 + (last - index - 1) / last;
    const whole = atRisk + 1 + (last - index) / last;
    mean *= passed / whole;
    spread += Math.log1p((whole - passed) / (passed * (whole + 1)));
  }
  const beta = betaOfMoments(mean, mean * mean * Math.expm1(spread));
  if (beta === undefined) return { mean, interval: [mean, mean], worth: { k: 0, n: 0 } };
  return {
    mean,
    interval: [
      betaQuantile((1 - level) / 2, beta.alpha, beta.beta),
      betaQuantile((1 + level) / 2, beta.alpha, beta.beta),
    ],
    worth: worthOf(beta.alpha - 1, beta.beta - 1),
  };
}

/** What was seen beside the uniform prior; rounding may leave a trace below nothing. */
function worthOf(passed: number, lost: number): SurvivalPosterior['worth'] {
  const k = Math.max(0, passed);
  return { k, n: k + Math.max(0, lost) };
}
