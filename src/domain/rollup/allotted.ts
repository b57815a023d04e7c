import type { PartId } from '../log/ids.ts';
import { atStage } from '../log/place.ts';
import { routeOfBatch } from '../route/route.ts';
import { addTo, type Counter } from '../shop/counter.ts';
import { factOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';

/**
 * Parts that the pieces in work will still take along the rest of their route, from where they stand: a part is taken when a
 * piece leaves the stage that fits it. By the bill and the route as they are now. A count below zero takes away what the
 * same piece, counted twice further on, needs too much.
 */
export function allotted({ positions, trays, registers }: Shop): Counter<PartId> {
  const needed: Counter<PartId> = new Map();
  for (const [tray, places] of positions.working) {
    const record = trays.get(tray);
    const bill = record && factOf(registers, { register: 'variant', id: record.variant })?.bill;
    const route = record && routeOfBatch(registers, record.batch);
    if (!bill || !route) continue;
    for (const { place, pieces } of places.values()) {
      if (!atStage(place)) continue;
      const from = route.indexOf(place.stage);
      // A piece on a stage that the route has not goes nowhere until it is moved.
      if (from < 0) continue;
      for (const { part, each, stage } of bill)
        if (route.indexOf(stage) >= from) addTo(needed, { key: part, by: each * pieces });
    }
  }
  return needed;
}
