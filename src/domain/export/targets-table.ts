import { batchTargets } from '../rollup/batch-targets.ts';
import type { Shop } from '../shop/shop.ts';
import { type Naming, type Table, tableOf } from './table.ts';

const columns = ['batch', 'variant', 'good', 'due', 'chance'] as const;
export type TargetsColumn = (typeof columns)[number];

/**
 * What open batches want, a line for each variant: the table that `judgeTargets` reads back. The due day and the chance, in
 * whole per cent, are of the batch and stand in each of its lines.
 */
export function targetsTable(shop: Shop, nameOf: Naming): Table<TargetsColumn> {
  return tableOf(
    columns,
    batchTargets(shop).flatMap(({ name, due, chance, variants }) =>
      variants.map(({ variant, wanted }) => ({
        batch: name,
        variant: nameOf({ register: 'variant', id: variant }),
        good: wanted,
        due,
        chance,
      })),
    ),
  );
}
