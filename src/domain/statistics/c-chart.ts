import { type ChartOptions, type ControlChart, mean, shewhartChart } from './control-chart.ts';
import { countedIn } from './counted.ts';

/**
 * c chart: flaws in samples of one and the same size, limits c̄ ± 3 √c̄, cut at 0 (NIST/SEMATECH e-Handbook of
 * Statistical Methods, 6.3.3.1).
 *
 * @param counts flaws in each sample, oldest first
 * @throws {RangeError} for a count that is negative or no number
 * @example cChart([4, 6, 5]).centre // => 5
 */
export function cChart(counts: readonly number[], options: ChartOptions = {}): ControlChart {
  const counted = countedIn(
    counts,
    counts.map(() => 1),
  );
  const centre = options.centre ?? mean(counts);
  const sigma = Math.sqrt(centre ?? 0);
  return shewhartChart(
    counted.map(({ index, count }) => ({ index, value: count, sigma })),
    { ...options, ...(centre === undefined ? {} : { centre }), least: 0 },
  );
}
