import type { Likely } from './payback.ts';

/**
 * How large a batch fits the hours that the maker wants to work: good pieces, whole.
 *
 * @param options.minutesEach of hands for a good piece, work on lost ones in it
 * @param options.hoursAWeek that shall go into it
 * @throws {RangeError} for minutes that are not above 0, or hours or weeks below 0
 * @example batchThatFits({ minutesEach: { low: 18, likely: 20, high: 24 }, hoursAWeek: 30, weeks: 4 })
 * // { low: 300, likely: 360, high: 400 }
 */
export function batchThatFits({
  minutesEach,
  hoursAWeek,
  weeks,
}: {
  readonly minutesEach: Likely;
  readonly hoursAWeek: number;
  readonly weeks: number;
}): Likely {
  if (!(minutesEach.low > 0 && hoursAWeek >= 0 && weeks >= 0)) {
    throw new RangeError(`Not minutes, hours and weeks: ${minutesEach.low}, ${hoursAWeek}, ${weeks}`);
  }
  const piecesAt = (each: number) => Math.floor((60 * hoursAWeek * weeks) / each);
  return {
    low: piecesAt(minutesEach.high),
    likely: piecesAt(minutesEach.likely),
    high: piecesAt(minutesEach.low),
  };
}
