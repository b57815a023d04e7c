import { demandCount, demandLevel, type Interval } from './counts.ts';
import { clopperPearson } from './proportion-intervals.ts';
import { normalQuantile } from './special-functions.ts';

/** A step that pieces must survive: how many were tried, and how many of them were lost there. */
export interface SurvivalStep {
  readonly atRisk: number;
  readonly lost: number;
}

/** What is known after a step. All are fractions; what is not known is absent. */
export interface Survival {
  /** Share that survives this step and all before it; absent from the first step that nothing has tried. */
  readonly survival: number | undefined;
  /** Greenwood's variance; absent with the survival and where that is 0. */
  readonly variance: number | undefined;
  readonly standardError: number | undefined;
  /** survival ± z standard errors, cut to [0, 1]; absent where the survival is 0 or 1, where it has no width. */
  readonly greenwood: Interval | undefined;
  /** The same on the scale of ln(−ln S), which stays within [0, 1]; absent where the survival is 0 or 1. */
  readonly logLog: Interval | undefined;
  /**
   * The one to show: log-log; at survival 1, and 0, exact limits that do not depend on variance: see productLimit.
   * Absent with the survival.
   */
  readonly interval: Interval | undefined;
}

const UNKNOWN: Survival = {
  survival: undefined,
  variance: undefined,
  standardError: undefined,
  greenwood: undefined,
  logLog: undefined,
  interval: undefined,
};

/**
 * The product-limit estimate after each step: S = Π (1 − lost ÷ atRisk). A piece that is still in flight counts as at
 * risk in the steps that it has been through and in no later one, so it counts for what it has survived.
 *
 * - Variance: S² Σ lost ÷ (atRisk (atRisk − lost)) (Greenwood).
 * - While nothing is lost the variance is 0 though much is unknown. The interval is then that of a single step without
 *   loss by the fewest pieces: [(α/2)^(1/fewest), 1], the smallest product that such luck does not rule out (Lindström
 *   and Madden's limit for parts in series, from memory).
 * - Where all pieces of a step were lost the interval is [0, 1 − (α/2)^(1/atRisk)], the Clopper-Pearson limit of it.
 * - A step that nothing has tried leaves all from there on unknown, unless the survival is 0 already.
 *
 * Throws RangeError unless 0 ≤ lost ≤ atRisk are whole and 0 < level < 1.
 * Source: E. L. Kaplan, P. Meier, J. American Statistical Association 53 (1958) 457-481; M. Greenwood (1926); log-log
 * limits as R's survival package gives them with conf.type = 'log-log'.
 */
export function productLimit(steps: readonly SurvivalStep[], level = 0.95): Survival[] {
  demandLevel(level);
  for (const { atRisk, lost } of steps) demandCount({ k: lost, n: atRisk });
  const limits = limitsAt(level);
  let so: Sum = { survival: 1, hazard: 0, fewest: Number.POSITIVE_INFINITY };
  let known = true;
  return steps.map((step) => {
    known &&= step.atRisk > 0 || so.survival === 0;
    if (known && step.atRisk > 0 && so.survival > 0) so = after(so, step);
    return known ? limits(so) : UNKNOWN;
  });
}

/** What the steps amount to so far: survival, Greenwood's sum, and the fewest pieces that a step was tried by. */
interface Sum {
  readonly survival: number;
  readonly hazard: number;
  readonly fewest: number;
}

function after({ survival, hazard, fewest }: Sum, { atRisk, lost }: SurvivalStep): Sum {
  const left = atRisk - lost;
  if (left === 0) return { survival: 0, hazard, fewest: atRisk };
  return {
    survival: survival * (left / atRisk),
    hazard: hazard + lost / atRisk / left,
    fewest: Math.min(fewest, atRisk),
  };
}

function limitsAt(level: number): (so: Sum) => Survival {
  const z = normalQuantile((1 + level) / 2);
  return ({ survival, hazard, fewest }) => {
    if (survival === 0) return { ...UNKNOWN, survival, interval: clopperPearson(0, fewest, level) };
    const standardError = survival * Math.sqrt(hazard);
    const estimate = { ...UNKNOWN, survival, standardError, variance: standardError ** 2 };
    if (survival === 1) return { ...estimate, interval: clopperPearson(fewest, fewest, level) };
    const spread = Math.exp((z * Math.sqrt(hazard)) / -Math.log(survival));
    const logLog: Interval = [survival ** spread, survival ** (1 / spread)];
    const greenwood: Interval = [
      Math.max(0, survival - z * standardError),
      Math.min(1, survival + z * standardError),
    ];
    return { ...estimate, greenwood, logLog, interval: logLog };
  };
}
