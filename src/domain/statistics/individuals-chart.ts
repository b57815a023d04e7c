import {
  type ChartOptions,
  type ControlChart,
  d2,
  mean,
  movingRanges,
  shewhartChart,
} from './control-chart.ts';
import { mustBeNumbers } from './must-be-numbers.ts';

export interface IndividualsChart extends ControlChart {
  /** Difference of each value from the one before, in the unit of the values: one fewer than there are values. */
  readonly movingRanges: readonly number[];
  readonly meanRange: number | undefined;
  /** Upper limit of the moving ranges: D4 = 3.267 times their mean. */
  readonly rangeHigh: number | undefined;
}

/** D4 for n = 2, as tables print it. */
const d4 = 3.267;

/**
 * Chart of single values, with the standard deviation from the mean moving range ÷ 1.128 (NIST/SEMATECH e-Handbook of
 * Statistical Methods, 6.3.2.2). One value alone has no limits and gives no point.
 *
 * @param values in any unit, oldest first
 * @throws {RangeError} for a value that is no number
 * @example individualsChart([5, 7, 6]).movingRanges // => [2, 1]
 */
export function individualsChart(values: readonly number[], options: ChartOptions = {}): IndividualsChart {
  mustBeNumbers(values);
  const ranges = movingRanges(values);
  const meanRange = mean(ranges);
  const centre = options.centre ?? mean(values);
  const sigma = (meanRange ?? 0) / d2;
  const measured = meanRange === undefined ? [] : values.map((value, index) => ({ index, value, sigma }));
  return {
    ...shewhartChart(measured, { ...options, ...(centre === undefined ? {} : { centre }) }),
    movingRanges: ranges,
    meanRange,
    rangeHigh: meanRange === undefined ? undefined : d4 * meanRange,
  };
}
