import { type ChartPoint, type ControlChart, d2, deviation, mean, meanMovingRange } from './control-chart.ts';
import { mustBeNumbers } from './must-be-numbers.ts';
import { runRules } from './run-rules.ts';

export interface EwmaOptions {
  /** Weight of the newest value, above 0 and at most 1; 0.2 when left out. */
  readonly lambda?: number;
  /** Where the average starts and should stay; the mean of the values when left out. */
  readonly target?: number;
  /** Standard deviation of one value; from the moving range when left out. */
  readonly sigma?: number;
  /** Half the distance between the limits, in standard deviations of the average; 3 when left out. */
  readonly k?: number;
  /** Limits that judge: `exact` are narrower at the start, as the average is; `asymptotic` are those of a long row. */
  readonly limits?: 'exact' | 'asymptotic';
}

export interface EwmaChart extends ControlChart {
  /** Limits that those of the points come near. */
  readonly asymptotic: { readonly low: number; readonly high: number } | undefined;
}

/**
 * Exponentially weighted moving average zᵢ = λxᵢ + (1 − λ)zᵢ₋₁ from the target on, with limits
 * target ± k σ √(λ ÷ (2 − λ) · (1 − (1 − λ)²ⁱ)), where the last factor is left out of the asymptotic ones
 * (NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4; exact limits from memory). Finds small lasting changes
 * earlier than single values do.
 *
 * @param values in any unit, oldest first; without `sigma` there must be two for a first point
 * @throws {RangeError} for a value that is no number, a `lambda` outside (0, 1] or a negative `sigma` or `k`
 * @example ewmaChart([52, 47], { lambda: 0.3, target: 50, sigma: 2 }).points.map((point) => point.value.toFixed(2)) // => ['50.60', '49.52']
 */
export function ewmaChart(
  values: readonly number[],
  { lambda = 0.2, target, sigma, k = 3, limits = 'exact' }: EwmaOptions = {},
): EwmaChart {
  mustBeNumbers([...values, target ?? 0, sigma ?? 0, k]);
  if (!(lambda > 0 && lambda <= 1)) throw new RangeError(`no weight of the newest value: ${lambda}`);
  if (k < 0 || (sigma ?? 0) < 0) throw new RangeError('limits cannot be turned round');
  const centre = target ?? mean(values);
  const range = meanMovingRange(values);
  const spread = sigma ?? (range === undefined ? undefined : range / d2);
  if (centre === undefined || spread === undefined)
    return { centre, points: [], signals: [], asymptotic: undefined };
  const long = spread * Math.sqrt(lambda / (2 - lambda));
  const widthAt = (index: number) =>
    limits === 'asymptotic' ? long : long * Math.sqrt(1 - (1 - lambda) ** (2 * (index + 1)));
  let average = centre;
  const points: ChartPoint[] = values.map((value, index) => {
    average = lambda * value + (1 - lambda) * average;
    const width = k * widthAt(index);
    return { index, value: average, low: centre - width, high: centre + width };
  });
  const deviations = points.map(({ value, index }) =>
    deviation(value, { centre, sigma: (k * widthAt(index)) / 3 }),
  );
  return {
    centre,
    points,
    signals: runRules(deviations, ['beyond-limits']),
    asymptotic: { low: centre - k * long, high: centre + k * long },
  };
}
