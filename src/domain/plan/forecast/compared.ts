import type { Forecast } from './forecast.ts';

/** What a difference is in the middle, and in nine of ten replications; below 0 is less, or sooner. */
interface Difference {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

export interface Compared {
  /** ms; null where one of the plans does not come to an end in one replication of twenty or more. */
  readonly done: Difference | null;
  /** Hours of hands. */
  readonly hours: Difference;
}

type Told = Pick<Extract<Forecast, { kind: 'forecast' }>, 'each'>;

/**
 * What one plan has over another, replication by replication: both met the same luck in each, so that what they have in
 * common is no part of the difference.
 *
 * @throws {RangeError} for forecasts of other numbers of replications
 */
export function compared(before: Told, after: Told): Compared {
  if (before.each.doneAt.length !== after.each.doneAt.length)
    throw new RangeError('Plans are compared luck by luck');
  const done = differences(before.each.doneAt, after.each.doneAt).filter(Number.isFinite);
  return {
    done: done.length > 0.95 * before.each.doneAt.length ? spreadOf(done) : null,
    hours: spreadOf(differences(before.each.handsMs, after.each.handsMs).map((ms) => ms / 3_600_000)),
  };
}

const differences = (before: Float64Array, after: Float64Array) =>
  after.map((value, at) => value - (before[at] ?? Number.NaN));

function spreadOf(values: Float64Array): Difference {
  const sorted = values.toSorted();
  const by = (share: number) => sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? 0;
  return { low: by(0.05), middle: by(0.5), high: by(0.95) };
}
