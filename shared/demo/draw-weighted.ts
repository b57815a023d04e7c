import type { Random } from '../../src/domain/chance/seeded-random.ts';

/** One of several, each as likely as its weight; undefined when all weights are 0. */
export function drawWeighted<Item>(
  items: readonly Item[],
  { weight, random }: { weight: (item: Item) => number; random: Random },
): Item | undefined {
  const whole = items.reduce((sum, item) => sum + weight(item), 0);
  let left = random() * whole;
  for (const item of items) {
    left -= weight(item);
    if (left < 0) return item;
  }
  return undefined;
}
