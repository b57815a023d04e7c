import type { ShopEvent, TrayFacts } from '../../src/domain/log/event.ts';
import type { TrayId } from '../../src/domain/log/ids.ts';
import type { Shop } from '../../src/domain/shop/shop.ts';
import { allPlaces } from './all-places.ts';

/** What each tray is, from any event about it: a tray whose making was taken back still has pieces somewhere. */
function kindsOfTrays(log: readonly ShopEvent[]): ReadonlyMap<TrayId, TrayFacts> {
  const known = log.flatMap((event) =>
    'of' in event ? [event.of, ...('into' in event ? [event.into] : [])] : [],
  );
  return new Map(known.map((of) => [of.tray, of]));
}

/** All standings with what their tray is. */
export function standingsOf(shop: Shop, log: readonly ShopEvent[]) {
  const kinds = kindsOfTrays(log);
  return [...allPlaces(shop)].flatMap(([tray, places]) => {
    const of = kinds.get(tray);
    if (!of) throw new Error(`nothing tells of ${tray}`);
    return [...places.values()].map(({ place, pieces }) => ({ of, place, pieces }));
  });
}
