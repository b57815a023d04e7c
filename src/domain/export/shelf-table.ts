import { salesOf, shelfStock, usualPrice } from '../rollup/shelf-stock.ts';
import { countOf } from '../shop/counter.ts';
import { factOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import { type Cell, majorUnits, type Naming, type Table, tableOf } from './table.ts';

const columns = [
  'variant',
  'species',
  'grade',
  'finished',
  'on-shelf',
  'listed',
  'sold',
  'given',
  'kept',
  'usual-price',
  'priced',
  'takings',
  'photos',
] as const;
export type ShelfColumn = (typeof columns)[number];

/**
 * Finished pieces of each variant and grade: finished = on the shelf + listed + sold + given + kept. Money is in major units;
 * takings are those of the pieces whose price is known. Photos are those of the variant, whatever its grade.
 */
export function shelfTable(shop: Shop, nameOf: Naming): Table<ShelfColumn> {
  return tableOf(
    columns,
    shelfStock(shop).map((row): Record<ShelfColumn, Cell> => {
      const { variant, grade, finished, at } = row;
      const { priced, takings } = salesOf(shop, [row]);
      const species = factOf(shop.registers, { register: 'variant', id: variant })?.species;
      return {
        variant: nameOf({ register: 'variant', id: variant }),
        species: species ? nameOf({ register: 'species', id: species }) : null,
        grade,
        finished,
        'on-shelf': at.shelf,
        listed: at.listed,
        sold: at.sold,
        given: at.given,
        kept: at.kept,
        'usual-price': majorUnits(usualPrice(shop, { variant, grade })),
        priced,
        takings: majorUnits(takings),
        photos: countOf(shop.pictured, variant),
      };
    }),
  );
}
