/**
 * What a learning curve T₁ · n^b is the time of. `unit` (Crawford): of the n-th piece. `cumulativeAverage` (Wright): of
 * the average of the first n. At one rate they tell different totals, so whoever forecasts must say which is meant.
 */
export type LearningModel = 'unit' | 'cumulativeAverage';

/** A curve to reckon with: time of the first piece, in any unit, and the exponent b = log₂(rate), negative when learning. */
export interface LearningLaw {
  readonly firstUnit: number;
  readonly exponent: number;
  readonly model: LearningModel;
}

/**
 * The exponent b of a learning rate: each doubling of the pieces made brings the time to `rate` of what it was
 * (T. P. Wright, Factors affecting the cost of airplanes, Journal of the Aeronautical Sciences 3 (1936) 122-128).
 *
 * @throws {RangeError} for a rate that is not above 0
 * @example learningExponent(0.5) // => -1
 */
export function learningExponent(rate: number): number {
  if (!(rate > 0 && rate < Number.POSITIVE_INFINITY)) throw new RangeError(`no learning rate: ${rate}`);
  return Math.log2(rate);
}

/**
 * Time of the n-th piece, in the unit of `firstUnit`.
 *
 * @throws {RangeError} for a piece number that is not whole and above 0
 * @example predictUnit(4, { firstUnit: 10, exponent: -1, model: 'unit' }) // => 2.5
 */
export function predictUnit(n: number, law: LearningLaw): number {
  mustBePiece(n);
  if (law.model === 'unit') return law.firstUnit * n ** law.exponent;
  return n === 1 ? law.firstUnit : cumulativeTotal(n, law) - cumulativeTotal(n - 1, law);
}

/**
 * Time of the first n pieces together, in the unit of `firstUnit`. Of the unit model piece by piece: there is no
 * closed form, and the usual integral is off by a tenth for small batches.
 *
 * @throws {RangeError} for a number of pieces that is not whole and above 0
 * @example cumulativeTotal(2, { firstUnit: 10, exponent: -1, model: 'unit' }) // => 15
 */
export function cumulativeTotal(n: number, law: LearningLaw): number {
  mustBePiece(n);
  if (law.model === 'cumulativeAverage') return law.firstUnit * n ** (law.exponent + 1);
  let total = 0;
  for (let piece = 1; piece <= n; piece += 1) total += law.firstUnit * piece ** law.exponent;
  return total;
}

/**
 * The number, not yet rounded up, at which the time of the model (of the piece, or of the average) comes down to
 * `time`: 1 when the first piece is as quick already, and undefined when nothing is learnt.
 *
 * @throws {RangeError} for a time that is not above 0
 * @example unitsToReach(2.5, { firstUnit: 10, exponent: -1, model: 'unit' }) // => 4
 */
export function unitsToReach(time: number, { firstUnit, exponent }: LearningLaw): number | undefined {
  if (!(time > 0)) throw new RangeError(`no time of a piece: ${time}`);
  if (time >= firstUnit) return 1;
  return exponent < 0 ? Math.exp(Math.log(time / firstUnit) / exponent) : undefined;
}

function mustBePiece(n: number): void {
  if (!(Number.isSafeInteger(n) && n > 0)) throw new RangeError(`no number of a piece: ${n}`);
}
