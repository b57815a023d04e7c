import { d2, mean, meanMovingRange } from './control-chart.ts';
import { mustBeNumbers } from './must-be-numbers.ts';

export interface CusumOptions {
  /** Where the values should lie; their mean when left out. */
  readonly target?: number;
  /** Standard deviation of one value, in its unit; from the moving range when left out. */
  readonly sigma?: number;
  /** Slack in standard deviations: half of the shift that matters; 0.5 when left out. */
  readonly k?: number;
  /** Sum in standard deviations beyond which there is a signal; 5 when left out. */
  readonly h?: number;
}

interface CusumSignal {
  readonly index: number;
  readonly side: 'high' | 'low';
  /** Where the sum last rose from 0: the likely first value after the change. */
  readonly since: number;
}

export interface Cusum {
  readonly centre: number | undefined;
  /** Sums after each value, in standard deviations: how far the values have drifted up and down. */
  readonly sums: readonly { readonly index: number; readonly high: number; readonly low: number }[];
  /** Every value at which a sum is beyond `h`; a sum that is equal to it is not. */
  readonly signals: readonly CusumSignal[];
}

/**
 * Tabular two-sided cumulative sum: high = max(0, high + z − k), low = max(0, low − z − k), with z the deviation from
 * the target in standard deviations (E. S. Page, Continuous inspection schemes, Biometrika 41 (1954) 100-115, in the
 * form of Montgomery, Introduction to Statistical Quality Control; from memory).
 *
 * @param values in any unit, oldest first; without `sigma` there must be two of them
 * @throws {RangeError} for a value that is no number, a negative slack or `h`, or a `sigma` that is not above 0
 * @example cusum([1, 1, 1], { target: 0, sigma: 1 }).sums.map((sum) => sum.high) // => [0.5, 1, 1.5]
 */
export function cusum(
  values: readonly number[],
  { target, sigma, k = 0.5, h = 5 }: CusumOptions = {},
): Cusum {
  mustBeNumbers([...values, target ?? 0, k, h]);
  if (k < 0 || h < 0 || (sigma !== undefined && !(sigma > 0)))
    throw new RangeError('slack, limit and sigma of a CUSUM cannot be negative');
  const centre = target ?? mean(values);
  const spread = sigma ?? (meanMovingRange(values) ?? 0) / d2;
  // Values that never differ from each other have no standard deviation to measure a drift in.
  if (centre === undefined || spread === 0) return { centre, sums: [], signals: [] };
  const signals: CusumSignal[] = [];
  const sides = { high: { sum: 0, since: 0 }, low: { sum: 0, since: 0 } };
  const sums = values.map((value, index) => {
    const z = (value - centre) / spread;
    for (const side of ['high', 'low'] as const) {
      const { sum, since } = sides[side];
      const next = Math.max(0, sum + (side === 'high' ? z : -z) - k);
      sides[side] = { sum: next, since: sum === 0 ? index : since };
      if (next > h) signals.push({ index, side, since: sides[side].since });
    }
    return { index, high: sides.high.sum, low: sides.low.sum };
  });
  return { centre, sums, signals };
}
