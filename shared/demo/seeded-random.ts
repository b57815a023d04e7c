/** Uniform numbers from 0 (included) to 1 (not included), the same for the same seed. */
export type Random = () => number;

/** Mulberry32 by Tommy Ettinger, released to the public domain; constants from memory. */
export function seededRandom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

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
