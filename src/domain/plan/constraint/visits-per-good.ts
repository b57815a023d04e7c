import type { Beta } from '../../statistics/beta-moments.ts';

/**
 * Pieces that each stage has to try for one good piece in the end, along the route: those that are lost later are worked
 * on too. Times the minutes of a visit it is what a good piece takes of a stage. Of means: pieces that reach the stage ÷
 * pieces that come through all. Visits again of what is sent back are not in it: multiply by visits ÷ pieces tried.
 *
 * @param rates what is believed of each stage (`stageBeliefs`)
 * @example visitsPerGood([{ alpha: 1, beta: 1 }, { alpha: 4, beta: 1 }]) // => [2.5, 1.25]
 */
export function visitsPerGood(rates: readonly Beta[]): readonly number[] {
  const visits: number[] = [];
  let each = 1;
  for (const { alpha, beta } of rates.toReversed()) {
    each /= alpha / (alpha + beta);
    visits.push(each);
  }
  return visits.toReversed();
}
