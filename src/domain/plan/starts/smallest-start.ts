import { goodByStarts, type StartsPoint, type StartsQuestion } from './good-by-starts.ts';

export type SmallestStart =
  /** The fewest starts that reach the confidence; also none, where what is in flight is enough. */
  | { readonly kind: 'starts'; readonly point: StartsPoint }
  /** Not even the most starts that were allowed reach it: `point` is what they come to. */
  | { readonly kind: 'out-of-reach'; readonly point: StartsPoint }
  /** Certainty was asked for, and no number of starts makes certain. */
  | { readonly kind: 'never-certain' };

/**
 * The most starts that are looked at where nobody says: five for each good one, and a hundred, so that a wish for a few is
 * met also with the first batch of a maker.
 */
export const mostStarts = (wanted: number): number => 100 + 5 * wanted;

/**
 * The reject allowance: the smallest number of pieces to start now so that the chance of at least the wanted number of
 * good ones reaches the confidence. Before a batch nothing stands at its stages. During it the answer is how many more to
 * start, from what is in flight.
 *
 * @param options.confidence a fraction from 0 to 1
 * @param options.most starts that are looked at; see `mostStarts`
 * @throws {RangeError} see `goodByStarts`; for a confidence outside 0 to 1
 * @example
 * const stages = [{ rate: { alpha: 1, beta: 1 }, standing: 0 }];
 * smallestStart({ wanted: 1, finished: 0, stages }, { confidence: 0.75 }).point.starts // => 3
 */
export function smallestStart(
  question: StartsQuestion,
  { confidence, most = mostStarts(question.wanted) }: { readonly confidence: number; readonly most?: number },
): SmallestStart {
  if (!(confidence >= 0 && confidence <= 1)) {
    throw new RangeError(`A confidence lies between 0 and 1, not at ${confidence}`);
  }
  const comesTo = goodByStarts(question);
  let point = comesTo(0);
  const isDone = question.finished >= question.wanted;
  if (isDone || confidence === 0) return { kind: 'starts', point };
  if (confidence === 1) return { kind: 'never-certain' };
  while (point.chance < confidence && point.starts < most) point = comesTo(point.starts + 1);
  return { kind: point.chance < confidence ? 'out-of-reach' : 'starts', point };
}
