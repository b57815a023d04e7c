import { demandLevel } from './counts.ts';
import type { LearningLaw, LearningModel } from './learning-model.ts';
import { type Line, leastSquares, type Point, theilSen } from './straight-line.ts';

export interface LearningOptions {
  /** `unit` when left out. */
  readonly model?: LearningModel;
  /** Of the interval; 0.9 when left out. */
  readonly level?: number;
  /**
   * `leastSquares` (when left out) is exact where the times scatter evenly about the curve. `robust` is Theil-Sen: a
   * fit for times with forgotten pauses among them.
   */
  readonly fit?: 'leastSquares' | 'robust';
}

export interface LearningCurve extends LearningLaw {
  /** Share of its time that a piece still takes when the number made has doubled: 2^b. Above 1 it gets slower. */
  readonly rate: number;
  /** Of the rate; not yet known with fewer than three pieces. */
  readonly rateInterval: readonly [low: number, high: number] | undefined;
  /** Pieces that the curve was fitted to. */
  readonly pieces: number;
}

/** The time of a piece, or of several by their middle, and which one it was, from 1 on; it need not be whole. */
export interface NumberedTime {
  readonly number: number;
  /** Above 0, in any unit. */
  readonly time: number;
}

/** More pieces than this are thinned evenly before a robust fit: its pairs grow with the square. */
const mostForPairs = 1500;

/**
 * Wright's learning curve through times of pieces: a straight line of log time over log number (T. P. Wright, Factors
 * affecting the cost of airplanes, Journal of the Aeronautical Sciences 3 (1936) 122-128).
 *
 * The interval of the cumulative-average model is too narrow: each average holds the ones before it. Ask the unit
 * model whether somebody learns at all.
 *
 * @param unitTimes time of each piece from the first one made, in any unit. A piece whose time is not known or not
 *   above 0 (a tap at the same instant as the one before) still counts as made: hand in `undefined` or 0 for it. The
 *   cumulative-average model ends at the first of those, as nobody knows the average from there on.
 * @returns undefined with fewer than two times
 * @throws {RangeError} for a level that is not between 0 and 1
 * @example learningCurve([10, 8])?.rate.toFixed(3) // => '0.800'
 */
export function learningCurve(
  unitTimes: readonly (number | undefined)[],
  { model = 'unit', level = 0.9, fit = 'leastSquares' }: LearningOptions = {},
): LearningCurve | undefined {
  demandLevel(level);
  const points = model === 'unit' ? unitPoints(unitTimes) : averagePoints(unitTimes);
  return curveThrough(points, { model, level, fit });
}

/**
 * The same by the unit model through times of which each says which piece it is of: for long histories that were thinned.
 *
 * @returns undefined with fewer than two times
 * @throws {RangeError} for a level that is not between 0 and 1
 * @example learningCurveThrough([{ number: 1, time: 10 }, { number: 2, time: 8 }])?.rate.toFixed(3) // => '0.800'
 */
export function learningCurveThrough(
  times: readonly NumberedTime[],
  { level = 0.9, fit = 'leastSquares' }: Omit<LearningOptions, 'model'> = {},
): LearningCurve | undefined {
  demandLevel(level);
  const points = times.map(({ number, time }) => ({ x: Math.log(number), y: Math.log(time) }));
  return curveThrough(points, { model: 'unit', level, fit });
}

function curveThrough(
  points: readonly Point[],
  { model, level, fit }: Required<LearningOptions>,
): LearningCurve | undefined {
  const line = fit === 'robust' ? theilSen(thinned(points), level) : leastSquares(points, level);
  return line && curveOf(line, { model, pieces: points.length });
}

function curveOf(
  { slope, intercept, interval }: Line,
  { model, pieces }: { model: LearningModel; pieces: number },
): LearningCurve {
  return {
    model,
    exponent: slope,
    rate: 2 ** slope,
    firstUnit: Math.exp(intercept),
    rateInterval: interval && [2 ** interval[0], 2 ** interval[1]],
    pieces,
  };
}

function unitPoints(times: readonly (number | undefined)[]): Point[] {
  return times.flatMap((time, at) => (isTime(time) ? [{ x: Math.log(at + 1), y: Math.log(time) }] : []));
}

function averagePoints(times: readonly (number | undefined)[]): Point[] {
  const points: Point[] = [];
  let total = 0;
  for (const [at, time] of times.entries()) {
    if (!isTime(time)) break;
    total += time;
    points.push({ x: Math.log(at + 1), y: Math.log(total / (at + 1)) });
  }
  return points;
}

function isTime(time: number | undefined): time is number {
  return time !== undefined && time > 0 && time < Number.POSITIVE_INFINITY;
}

function thinned(points: readonly Point[]): readonly Point[] {
  const every = Math.ceil(points.length / mostForPairs);
  return every <= 1 ? points : points.filter((_, at) => at % every === 0);
}
