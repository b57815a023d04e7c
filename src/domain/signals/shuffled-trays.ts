import { logFactorials } from './drawn-without-return.ts';
import { gatesAt } from './strange-counts.ts';
import type { Run } from './tally.ts';

/** Uniform numbers from 0 (included) to 1 (not included). */
export type Random = () => number;

/**
 * How often trays in random order hold a split with a tail as small as `tail`, as a p value: what is left of a change
 * when trays differ by nature, because each is of one plank, and only their order tells of a change. An order drawn is
 * counted with the one that was found, so the p value is never too small by chance (B. Phipson and G. K. Smyth,
 * Permutation p-values should never be zero, Statistical Applications in Genetics and Molecular Biology 9 (2010); from
 * memory). It ends early when the answer is plainly large (J. Besag and P. Clifford, Sequential Monte Carlo p-values,
 * Biometrika 78 (1991) 301-304; from memory).
 *
 * Exact when the order of the sizes tells nothing, as with trays of one size.
 */
export function chanceOfShuffled(
  run: Run,
  { tail, random, most }: { readonly tail: number; readonly random: Random; readonly most: number },
): number {
  const gateAt = gatesAt(run, { tail, logs: logFactorials(run.pieces) });
  const trays = run.groups.map(({ flawed, pieces }, at) => ({
    flawed: flawed - (run.groups[at - 1]?.flawed ?? 0),
    pieces: pieces - (run.groups[at - 1]?.pieces ?? 0),
  }));
  let asStrange = 0;
  for (let drawn = 1; drawn <= most; drawn += 1) {
    shuffle(trays, random);
    let flawed = 0;
    let pieces = 0;
    const isStrange = trays.some((tray) => {
      flawed += tray.flawed;
      pieces += tray.pieces;
      if (pieces === run.pieces) return false;
      const { low, high } = gateAt(pieces);
      return flawed <= low || flawed >= high;
    });
    if (isStrange) asStrange += 1;
    if (asStrange === plainlyMany) return asStrange / drawn;
  }
  return (asStrange + 1) / (most + 1);
}

/** So many orders as strange as the one found say how common they are within a quarter or so. */
const plainlyMany = 20;

/** Every order as likely as any other (R. Durstenfeld, Algorithm 235, Communications of the ACM 7 (1964) 420). */
function shuffle<Item>(items: Item[], random: Random): void {
  for (let last = items.length - 1; last > 0; last -= 1) {
    const other = Math.floor(random() * (last + 1));
    const [a, b] = [items[last], items[other]];
    if (a === undefined || b === undefined) continue;
    items[last] = b;
    items[other] = a;
  }
}
