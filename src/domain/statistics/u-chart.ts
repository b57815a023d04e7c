import { type ControlChart, shewhartChart } from './control-chart.ts';
import { countedIn, pooledRate } from './counted.ts';
import { laneySigma } from './laney.ts';
import type { RateChartOptions } from './p-chart.ts';

/**
 * u chart: flaws per piece in samples of varying size, where a piece may have several; limits ū ± 3 √(ū ÷ n), cut at
 * 0 (D. C. Montgomery, Introduction to Statistical Quality Control, 1991, pp. 181-182).
 *
 * @param counts flaws in each sample, oldest first
 * @param sizes pieces in each sample; a sample of no pieces gives no point
 * @throws {RangeError} see `countedIn`
 * @example uChart([2, 4], [1, 2]).centre // => 2
 */
export function uChart(
  counts: readonly number[],
  sizes: readonly number[],
  options: RateChartOptions = {},
): ControlChart {
  const counted = countedIn(counts, sizes);
  const centre = options.centre ?? pooledRate(counted);
  const rate = centre ?? 0;
  const measured = counted.map(({ index, count, size }) => ({
    index,
    value: count / size,
    sigma: Math.sqrt(rate / size),
  }));
  return shewhartChart(options.laney ? laneySigma(measured, rate) : measured, {
    ...options,
    ...(centre === undefined ? {} : { centre }),
    least: 0,
  });
}
