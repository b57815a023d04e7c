import { goodByStarts, type StartsPoint, type StartsQuestion } from './good-by-starts.ts';

/**
 * Chance, good ones, missing ones and left-over against the number of starts, for a chart: from `from` to `to` starts with
 * both, at most `points` of them at even distances.
 *
 * @param options.points 200 when left out
 * @throws {RangeError} see `goodByStarts`; unless 0 ≤ from ≤ to and points ≥ 2
 * @example
 * const stages = [{ rate: { alpha: 1, beta: 1 }, standing: 0 }];
 * startsCurve({ wanted: 1, finished: 0, stages }, { from: 0, to: 3 }).map(({ chance }) => chance.toFixed(2))
 * // => ['0.00', '0.50', '0.67', '0.75']
 */
export function startsCurve(
  question: StartsQuestion,
  { from, to, points = 200 }: { readonly from: number; readonly to: number; readonly points?: number },
): readonly StartsPoint[] {
  if (!(from <= to && points >= 2))
    throw new RangeError(`No curve from ${from} to ${to} in ${points} points`);
  const comesTo = goodByStarts(question);
  const steps = Math.min(points - 1, to - from);
  // From the far end, so that all is summed once.
  comesTo(to);
  return Array.from({ length: steps + 1 }, (_, step) =>
    comesTo(steps === 0 ? from : from + Math.round(((to - from) * step) / steps)),
  );
}
