import { mustBeNumbers } from './must-be-numbers.ts';

/**
 * Yields from counts and factors. None checks that good ≤ entered: where two tablets tapped the same last piece, the
 * counts disagree until a recount, and the figure has to show it. What is not yet known is absent, never NaN.
 */

/**
 * First-pass yield, a fraction: pieces good at their first visit ÷ pieces whose first visit ended; absent while none
 * has. Throws RangeError for numbers that are not finite.
 * Source: ISO 22400-2:2014, first pass yield (good parts without rework ÷ inspected parts).
 */
export function firstPassYield(good: number, entered: number): number | undefined {
  mustBeNumbers([good, entered]);
  return entered > 0 ? good / entered : undefined;
}

/**
 * Rolled throughput yield, a fraction: the product of the first-pass yields along the route, the chance that a piece
 * goes through all of it without a flaw; absent without a factor. Throws RangeError for factors that are not finite.
 * Source: Six Sigma body of knowledge.
 */
export function rolledThroughputYield(factors: readonly number[]): number | undefined {
  mustBeNumbers(factors);
  return factors.length === 0 ? undefined : factors.reduce((product, each) => product * each, 1);
}

/**
 * Normalised yield, a fraction: what each of `steps` steps would yield if all were alike, rty^(1/steps); absent
 * without a step or for a yield below 0. Throws RangeError for a yield that is not finite or steps not whole.
 * Source: Six Sigma body of knowledge.
 */
export function normalizedYield(rty: number, steps: number): number | undefined {
  mustBeNumbers([rty]);
  if (!(Number.isSafeInteger(steps) && steps >= 0)) throw new RangeError(`Steps are whole, not ${steps}`);
  return steps === 0 || rty < 0 ? undefined : rty ** (1 / steps);
}
