import type { VariantId } from '../log/ids.ts';
import { countOf } from '../shop/counter.ts';
import { factsOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import { shelfStock } from './shelf-stock.ts';

/** A variant that no photo shows, and how many pieces of it are finished. */
export interface Unpictured {
  readonly variant: VariantId;
  readonly finished: number;
}

/** Variants in use, or with finished pieces, of which there is no photo; those with finished pieces first, then by name. */
export function unpictured(shop: Shop): readonly Unpictured[] {
  const rows = shelfStock(shop);
  return factsOf(shop.registers, 'variant')
    .filter(({ id }) => countOf(shop.pictured, id) <= 0)
    .map(({ id, fact }) => ({
      variant: id,
      finished: rows.reduce((sum, row) => sum + (row.variant === id ? row.finished : 0), 0),
      retired: fact.retired,
    }))
    .filter(({ retired, finished }) => !retired || finished > 0)
    .map(({ variant, finished }) => ({ variant, finished }))
    .sort((a, b) => Number(b.finished > 0) - Number(a.finished > 0));
}
