import { goodByStarts, type StartsPoint, type StartsQuestion } from './good-by-starts.ts';
import { mostStarts } from './smallest-start.ts';

/** Money in one unit throughout, such as cents; fractions are allowed. */
export interface StartCosts {
  /** Of a piece that is started: its wood, parts and work, whether it comes out good or not. From 0. */
  readonly perStart: number;
  /** Of each good one that is missing: the sale that is lost, a customer let down. From 0. */
  readonly perShort: number;
  /** Of each good one left over, beside what its start cost; below 0 where it still brings something in. */
  readonly perOver: number;
  /** Once, of being short at all: a further set-up, a penalty. From 0; 0 when left out. */
  readonly whenShort?: number;
}

export type CheapestStart =
  /** The fewest starts of the least expected cost. */
  | { readonly kind: 'starts'; readonly point: StartsPoint; readonly cost: number }
  /** The cheapest as far as was looked; beyond the most starts that were allowed there may be a cheaper one. */
  | { readonly kind: 'best-so-far'; readonly point: StartsPoint; readonly cost: number }
  /** A start, or one left over, costs nothing or brings money in: the more the better, and the sums have no least cost. */
  | { readonly kind: 'the-more-the-better' };

/**
 * The number of starts of the least expected cost in a single run: a start costs `perStart`, what comes out short or over
 * costs too. All numbers are tried until no further one can be cheaper, since with `whenShort` the cost may fall twice.
 *
 * With one known rate p and `whenShort` 0 it is the smallest number whose chance reaches the critical ratio of the
 * newsvendor, (perShort − perStart ÷ p) ÷ (perShort + perOver).
 * Source: C. A. Yano, H. L. Lee, Lot sizing with random yields, Operations Research 43 (1995) 311-334 (the problem);
 * R. E. Levitan, The optimum reject allowance problem, Management Science 6 (1960) 172-186; both from memory.
 *
 * @throws {RangeError} see `goodByStarts`; for costs that are no numbers, or below 0 where they may not be
 * @example
 * const stages = [{ rate: { alpha: 1, beta: 1 }, standing: 0 }];
 * cheapestStart({ wanted: 1, finished: 0, stages }, { perStart: 1, perShort: 10, perOver: 0 }) // 2 starts: 2 + 10 ÷ 3
 */
export function cheapestStart(
  question: StartsQuestion,
  costs: StartCosts,
  { most = mostStarts(question.wanted) }: { readonly most?: number } = {},
): CheapestStart {
  demandCosts(costs);
  const { perStart, perShort, perOver, whenShort = 0 } = costs;
  const share = question.stages.reduce((all, { rate }) => (all * rate.alpha) / (rate.alpha + rate.beta), 1);
  // What a further start costs at the least, once none are missing.
  if (!(perStart + perOver * share > 0)) return { kind: 'the-more-the-better' };
  const comesTo = goodByStarts(question);
  const costOf = ({ starts, chance, short, over }: StartsPoint) =>
    perStart * starts + perShort * short + perOver * over + whenShort * (1 - chance);
  // Rises with every start, and no cost is below it.
  const leastOf = ({ starts, over }: StartsPoint) => perStart * starts + perOver * over;
  let best = comesTo(0);
  let point = best;
  while (point.starts < most && leastOf(point) < costOf(best)) {
    point = comesTo(point.starts + 1);
    if (costOf(point) < costOf(best)) best = point;
  }
  const isOpen = leastOf(point) < costOf(best);
  return { kind: isOpen ? 'best-so-far' : 'starts', point: best, cost: costOf(best) };
}

function demandCosts({ perStart, perShort, perOver, whenShort = 0 }: StartCosts): void {
  const isRight = [perStart, perShort, whenShort].every(
    (cost) => cost >= 0 && cost < Number.POSITIVE_INFINITY,
  );
  if (!(isRight && Number.isFinite(perOver))) {
    throw new RangeError(`Not costs of starts: ${perStart}, ${perShort}, ${perOver}, ${whenShort}`);
  }
}
