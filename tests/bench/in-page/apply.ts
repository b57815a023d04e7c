/** Applies events to a live shop as a session does, and makes the same additions in flat counters. */
import { takeNoting } from '../../../src/app/touched.ts';
import type { ShopEvent } from '../../../src/domain/log/event.ts';
import type { ShopDay, TrayId } from '../../../src/domain/log/ids.ts';
import { addEvent, emptyShop } from '../../../src/domain/shop/shop.ts';
import { longLog } from '../../support/long-log.ts';
import { flatShop } from './flat-shop.ts';
import { tablesIn } from './flat-table.ts';
import { mustSayTheSame } from './same-sums.ts';

interface Sizes {
  /** Events that the shop has when it is measured, and those that it is given then. */
  readonly before: number;
  readonly events: number;
  readonly until: number;
  readonly rounds: number;
}

/** Microseconds an event, round by round. Throws when shop and counters do not come to the same. */
export async function applyInTurns({ before, events, until, rounds }: Sizes) {
  // As they come from a store: each a plain object of its own.
  const log = Array.from(
    longLog({ events: before + events, until }),
    (event) => JSON.parse(JSON.stringify(event)) as ShopEvent,
  );
  const [old, fresh] = [log.slice(0, before), log.slice(before)];
  const flat = flatShop();
  const figures = { ours: [] as number[], limit: [] as number[] };
  // The first round warms up, and numbers the words.
  for (let round = -1; round < rounds; round += 1) {
    const shop = emptyShop();
    for (const [, { cells }] of tablesIn(flat.sums)) cells.fill(0);
    for (const event of old) {
      addEvent(shop, event);
      flat.add(event);
    }
    const touched = { trays: new Set<TrayId>(), days: new Set<ShopDay>() };
    const ours = timed(() => {
      for (const event of fresh) takeNoting(shop, { event, touched });
    });
    const limit = timed(() => {
      for (const event of fresh) flat.add(event);
    });
    mustSayTheSame(shop, flat);
    if (round < 0) continue;
    figures.ours.push((ours / events) * 1000);
    figures.limit.push((limit / events) * 1000);
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  return figures;
}

function timed(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}
