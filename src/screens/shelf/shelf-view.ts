import type { VariantId } from '../../domain/log/ids.ts';
import type { Grade } from '../../domain/log/place.ts';
import { type ShelfPlace, shelfPlaces } from '../../domain/log/shelf-facts.ts';
import { type ShelfRow, shelfRow, shelfStock } from '../../domain/rollup/shelf-stock.ts';
import type { VariantFact } from '../../domain/set-up/facts.ts';
import { factOf } from '../../domain/shop/registers.ts';
import type { Shop } from '../../domain/shop/shop.ts';

/** A variant with finished pieces: a row for each grade that has any. */
export interface ShelfCard {
  readonly variant: VariantId;
  readonly fact: VariantFact;
  readonly rows: readonly ShelfRow[];
}

/** What was finished of each variant, in the order of their names. */
export function shelfCards(shop: Shop): readonly ShelfCard[] {
  const cards = new Map<VariantId, ShelfRow[]>();
  for (const row of shelfStock(shop)) cards.set(row.variant, [...(cards.get(row.variant) ?? []), row]);
  return [...cards].flatMap(([variant, rows]) => {
    const fact = factOf(shop.registers, { register: 'variant', id: variant });
    return fact ? [{ variant, fact, rows }] : [];
  });
}

const grades: readonly Grade[] = ['first', 'second'];

/** Both grades of one variant, with or without pieces. */
export function rowsOf(shop: Shop, variant: VariantId): readonly ShelfRow[] {
  return grades.map((grade) => shelfRow(shop, { variant, grade }));
}

/** Pieces at each place and all that were finished, over some rows. */
export function totals(rows: readonly ShelfRow[]): Pick<ShelfRow, 'finished' | 'at'> {
  const sum = (of: (row: ShelfRow) => number) => rows.reduce((all, row) => all + of(row), 0);
  const at = Object.fromEntries(shelfPlaces.map((place) => [place, sum((row) => row.at[place])]));
  return { finished: sum(({ finished }) => finished), at: at as Record<ShelfPlace, number> };
}

/** Places of which more went than came: somebody has to count. */
export function belowZero({ at }: Pick<ShelfRow, 'at'>): readonly ShelfPlace[] {
  return shelfPlaces.filter((place) => at[place] < 0);
}
