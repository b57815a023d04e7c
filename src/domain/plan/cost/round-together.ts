/** Parts in whole minor units, and their sum: no cent is lost or made by rounding. */
export interface RoundedTogether {
  readonly whole: number;
  readonly parts: readonly number[];
}

/**
 * Rounds the sum of some parts, and then the parts so that they add up to it: each is rounded down, and what is left goes,
 * one each, to those with the largest remainders; of two alike the earlier (the method of Hamilton and Hare).
 *
 * No part is off by a whole unit. Parts may be below 0.
 *
 * @throws {RangeError} for parts that are no numbers
 * @example roundTogether([1.4, 1.4, 1.4]) // => { whole: 4, parts: [2, 1, 1] }
 */
export function roundTogether(parts: readonly number[]): RoundedTogether {
  const sum = parts.reduce((so, part) => so + part, 0);
  if (!Number.isFinite(sum)) throw new RangeError(`Not amounts of money: ${parts.join(', ')}`);
  const whole = Math.round(sum) + 0;
  const floors = parts.map(Math.floor);
  const left = whole - floors.reduce((so, floor) => so + floor, 0);
  const order = parts
    .map((part, at) => ({ at, remainder: part - Math.floor(part) }))
    .sort((a, b) => b.remainder - a.remainder || a.at - b.at);
  const raised = new Set(order.slice(0, left).map(({ at }) => at));
  return { whole, parts: floors.map((floor, at) => (raised.has(at) ? floor + 1 : floor + 0)) };
}
