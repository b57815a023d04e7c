import type { Random } from '../chance/seeded-random.ts';
import { logFactorials } from './drawn-without-return.ts';
import { shareOfOrders, shuffle } from './orders.ts';
import { gatesAt } from './strange-counts.ts';
import { type Run, traysOf } from './tally.ts';

/**
 * How often trays in random order hold a split with a tail as small as `tail`, as a p value: what is left of a change
 * when trays differ by nature, because each is of one plank, and only their order tells of a change. Exact when the
 * order of the sizes tells nothing, as with trays of one size.
 *
 * @param options.most orders to draw: see `shareOfOrders`
 */
export function chanceOfShuffled(
  run: Run,
  { tail, random, most }: { readonly tail: number; readonly random: Random; readonly most: number },
): number {
  const gateAt = gatesAt(run, { tail, logs: logFactorials(run.pieces) });
  const trays = traysOf(run);
  return shareOfOrders(() => {
    shuffle(trays, random);
    let flawed = 0;
    let pieces = 0;
    return trays.some((tray) => {
      flawed += tray.flawed;
      pieces += tray.pieces;
      if (pieces === run.pieces) return false;
      const { low, high } = gateAt(pieces);
      return flawed <= low || flawed >= high;
    });
  }, most);
}
