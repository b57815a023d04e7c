import type { TrayId } from '../../src/domain/log/ids.ts';
import type { Grade } from '../../src/domain/log/place.ts';
import { aWorkshop, type TestShop } from './a-shop.ts';
import { clamps, routeStages } from './workshop.ts';

type RouteStage = (typeof routeStages)[number];

/** Takes pieces of a tray along the route, from its first stage or a later one. */
export function finish(
  shop: TestShop,
  tray: TrayId,
  { pieces, grade = 'first', from = 'bore' }: { pieces: number; grade?: Grade; from?: RouteStage },
): void {
  for (const name of routeStages.slice(routeStages.indexOf(from))) {
    if (name !== 'glue') shop.pass(tray, name, { pieces, grade });
    else
      for (let left = pieces; left > 0; left -= clamps) {
        const round = Math.min(left, clamps);
        shop.load(tray, 'glue', { pieces: round, grade });
        shop.later(24 * 60);
        shop.pass(tray, 'glue', { pieces: round, grade, held: true });
      }
  }
}

/** Ten firsts of ash and copper on the shelf. */
export function aFullShelf(): TestShop {
  const shop = aWorkshop();
  finish(shop, shop.tray('ash-copper', 10), { pieces: 10 });
  return shop;
}
