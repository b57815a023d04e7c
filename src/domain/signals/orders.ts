import type { Random } from '../chance/seeded-random.ts';

/** So many orders as strange as the one found say how common they are within a quarter or so. */
const plainlyMany = 20;

/**
 * The share of random orders that are as strange as the one found, as a p value. The one found is counted with them, so it
 * is never too small by chance (B. Phipson and G. K. Smyth, Permutation p-values should never be zero, Statistical
 * Applications in Genetics and Molecular Biology 9 (2010); from memory). It ends early when the answer is plainly large
 * (J. Besag and P. Clifford, Sequential Monte Carlo p-values, Biometrika 78 (1991) 301-304; from memory).
 *
 * @param drawIsStrange draws an order, and says whether it is as strange as the one found
 * @param most orders to draw; no answer is smaller than 1 ÷ (most + 1)
 */
export function shareOfOrders(drawIsStrange: () => boolean, most: number): number {
  let asStrange = 0;
  for (let drawn = 1; drawn <= most; drawn += 1) {
    if (drawIsStrange()) asStrange += 1;
    if (asStrange === plainlyMany) return asStrange / drawn;
  }
  return (asStrange + 1) / (most + 1);
}

/** Every order as likely as any other (R. Durstenfeld, Algorithm 235, Communications of the ACM 7 (1964) 420). */
export function shuffle<Item>(items: Item[], random: Random): void {
  for (let last = items.length - 1; last > 0; last -= 1) {
    const other = Math.floor(random() * (last + 1));
    const a = items[last];
    const b = items[other];
    if (a === undefined || b === undefined) continue;
    items[last] = b;
    items[other] = a;
  }
}
