import { allotted } from '../rollup/allotted.ts';
import { partCost } from '../rollup/part-cost.ts';
import { isTold, partsOnHand, partsToClean } from '../rollup/parts-on-hand.ts';
import { toOrder } from '../rollup/to-order.ts';
import { countOf } from '../shop/counter.ts';
import { factsOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import { type Cell, type Table, tableOf } from './table.ts';

const columns = [
  'part',
  'sort',
  'told',
  'on-hand',
  'allotted',
  'free',
  'low-mark',
  'to-clean',
  'received',
  'counted',
  'cleaned',
  'lost-parts',
  'used',
  'piece-cost',
  'worth',
  'to-order',
] as const;
export type StoresColumn = (typeof columns)[number];

/**
 * Every part of the stores, those put away among them: on hand = received + counted + cleaned − used. Money is in major
 * units (a cost of 84 cents is 0.84), and worth is that of what is on hand.
 */
export function storesTable(shop: Shop): Table<StoresColumn> {
  const { stores, partsUsed, registers } = shop;
  const taken = allotted(shop);
  const orders = new Map(toOrder(shop).map(({ part, order }) => [part, order]));
  return tableOf(
    columns,
    factsOf(registers, 'part').map(({ id, fact }): Record<StoresColumn, Cell> => {
      const onHand = partsOnHand(shop, id);
      const cost = partCost(shop, id);
      return {
        part: fact.name,
        sort: fact.sort,
        told: isTold(shop, id) ? 'yes' : 'no',
        'on-hand': onHand,
        allotted: countOf(taken, id),
        free: onHand - countOf(taken, id),
        'low-mark': fact.lowMark ?? null,
        'to-clean': partsToClean(shop, id),
        received: countOf(stores, `received|${id}`),
        counted: countOf(stores, `corrected|${id}`),
        cleaned: countOf(stores, `cleaned|${id}`),
        'lost-parts': countOf(stores, `lost|${id}`),
        used: -countOf(partsUsed, id),
        'piece-cost': cost === null ? null : rounded(cost / 100, 4),
        worth: cost === null ? null : rounded((cost * onHand) / 100, 2),
        'to-order': orders.get(id) ?? 0,
      };
    }),
  );
}

function rounded(value: number, places: number): number {
  return Math.round(value * 10 ** places) / 10 ** places;
}
