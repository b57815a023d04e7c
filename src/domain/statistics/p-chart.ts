import { type ChartOptions, type ControlChart, shewhartChart } from './control-chart.ts';
import { countedIn, pooledRate } from './counted.ts';
import { laneySigma } from './laney.ts';

export interface RateChartOptions extends ChartOptions {
  /** Widen (or narrow) the limits by what the points vary beyond chance: Laney's p′ or u′ chart. */
  readonly laney?: boolean;
}

/**
 * p chart: share of flawed pieces in samples of varying size, with limits p̄ ± 3 √(p̄(1 − p̄) ÷ n) cut to 0 and 1
 * (NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.3.2).
 *
 * @param counts flawed pieces in each sample, oldest first
 * @param sizes pieces in each sample; a sample of no pieces gives no point
 * @throws {RangeError} when more pieces are flawed than there are, or see `countedIn`
 * @example pChart([1, 0, 2], [20, 0, 20]).centre // => 0.075
 */
export function pChart(
  counts: readonly number[],
  sizes: readonly number[],
  options: RateChartOptions = {},
): ControlChart {
  const counted = countedIn(counts, sizes);
  if (counted.some(({ count, size }) => count > size)) throw new RangeError('more flawed than there are');
  const centre = options.centre ?? pooledRate(counted);
  const share = centre ?? 0;
  const measured = counted.map(({ index, count, size }) => ({
    index,
    value: count / size,
    sigma: Math.sqrt((share * (1 - share)) / size),
  }));
  return shewhartChart(options.laney ? laneySigma(measured, share) : measured, {
    ...options,
    ...(centre === undefined ? {} : { centre }),
    least: 0,
    most: 1,
  });
}
