import type { PartId } from '../log/ids.ts';
import { countOf } from '../shop/counter.ts';
import { factOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';

/**
 * What one piece of a part costs, in minor units and not rounded: all that was paid for it over all pieces whose price is
 * known, else what Set-up says; null where neither is known. A part that comes back is worth what it was.
 */
export function partCost(
  { stores, registers }: Pick<Shop, 'stores' | 'registers'>,
  part: PartId,
): number | null {
  const priced = countOf(stores, `priced|${part}`);
  if (priced > 0) return countOf(stores, `paid|${part}`) / priced;
  const cost = factOf(registers, { register: 'part', id: part })?.cost ?? null;
  return cost === null ? null : cost / 100;
}
