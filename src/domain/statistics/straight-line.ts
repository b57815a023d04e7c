import { normalQuantile, studentQuantile } from './special-functions.ts';

/** A straight line y = intercept + slope · x. */
export interface Line {
  readonly slope: number;
  readonly intercept: number;
  /** Of the slope; not yet known where the points leave it open. */
  readonly interval: readonly [low: number, high: number] | undefined;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * Least squares, with the t interval of the slope (any textbook of regression; from memory). Undefined unless two
 * points differ in x; the interval wants a third.
 */
export function leastSquares(points: readonly Point[], level: number): Line | undefined {
  const n = points.length;
  const meanX = points.reduce((sum, { x }) => sum + x, 0) / n;
  const meanY = points.reduce((sum, { y }) => sum + y, 0) / n;
  const spread = points.reduce((sum, { x }) => sum + (x - meanX) ** 2, 0);
  if (!(spread > 0)) return undefined;
  const slope = points.reduce((sum, { x, y }) => sum + (x - meanX) * (y - meanY), 0) / spread;
  const intercept = meanY - slope * meanX;
  if (n < 3) return { slope, intercept, interval: undefined };
  const left = points.reduce((sum, { x, y }) => sum + (y - meanY - slope * (x - meanX)) ** 2, 0);
  const half = studentQuantile((1 + level) / 2, n - 2) * Math.sqrt(left / (n - 2) / spread);
  return { slope, intercept, interval: [slope - half, slope + half] };
}

/**
 * Theil-Sen: the median of the slopes between all pairs of points; the intercept is the median of y less the slope
 * times the median of x. The interval cuts as many of the slopes off at each end as Kendall's tau would by chance
 * (P. K. Sen, Estimates of the regression coefficient based on Kendall's tau, Journal of the American Statistical
 * Association 63 (1968) 1379-1389, in the form of scipy.stats.theilslopes, with its correction for equal y; from
 * memory). It stands up to more than a quarter of wild points and has nothing to tune, no scale to guess and no start.
 *
 * Undefined unless two points differ in x. The pairs grow with the square of the points: hand in some thousands at most.
 */
export function theilSen(points: readonly Point[], level: number): Line | undefined {
  const slopes = new Float64Array((points.length * (points.length - 1)) / 2);
  let known = 0;
  for (const [at, from] of points.entries()) {
    for (let to = at + 1; to < points.length; to += 1) {
      const { x, y } = points[to] ?? from;
      if (x === from.x) continue;
      slopes[known] = (y - from.y) / (x - from.x);
      known += 1;
    }
  }
  const sorted = slopes.subarray(0, known).sort();
  const slope = medianOfSorted(sorted);
  const middleX = median(points.map(({ x }) => x));
  const middleY = median(points.map(({ y }) => y));
  if (slope === undefined || middleX === undefined || middleY === undefined) return undefined;
  const sigma = Math.sqrt(kendallVariance(points));
  const half = normalQuantile((1 + level) / 2) * sigma;
  const upper = Math.min(Math.round((sorted.length + half) / 2), sorted.length - 1);
  const lower = Math.max(Math.round((sorted.length - half) / 2) - 1, 0);
  const low = sorted[lower];
  const high = sorted[upper];
  return {
    slope,
    intercept: middleY - slope * middleX,
    interval: low === undefined || high === undefined || points.length < 3 ? undefined : [low, high],
  };
}

/** The middle value, or the mean of the two in the middle; not yet known of none. */
export function median(values: readonly number[]): number | undefined {
  return medianOfSorted(Float64Array.from(values).sort());
}

function medianOfSorted(sorted: Float64Array): number | undefined {
  const upper = sorted[Math.floor(sorted.length / 2)];
  const lower = sorted[Math.ceil(sorted.length / 2) - 1];
  return upper === undefined || lower === undefined ? undefined : (lower + upper) / 2;
}

/** Variance of Kendall's score: n(n − 1)(2n + 5) ÷ 18, less the same of each set of points that share an x or a y. */
function kendallVariance(points: readonly Point[]): number {
  const of = (n: number) => (n * (n - 1) * (2 * n + 5)) / 18;
  const ties = (values: readonly number[]) => {
    const times = new Map<number, number>();
    for (const value of values) times.set(value, (times.get(value) ?? 0) + 1);
    return [...times.values()].reduce((sum, n) => sum + of(n), 0);
  };
  return Math.max(0, of(points.length) - ties(points.map(({ x }) => x)) - ties(points.map(({ y }) => y)));
}
