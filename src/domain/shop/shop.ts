import type { ShopEvent } from '../log/event.ts';
import { hasSeen, markSeen, type VersionVector } from '../log/version-vector.ts';
import { allDays, days } from './days.ts';
import { flaws } from './flaws.ts';
import { ledger } from './ledger.ts';
import { partsUsed } from './parts-used.ts';
import { pictured } from './pictured.ts';
import { positions } from './positions.ts';
import type { Projection, SummedEvent } from './projection.ts';
import { type Registers, setRegister } from './registers.ts';
import { shelf } from './shelf.ts';
import { stores } from './stores.ts';
import { trays } from './trays.ts';
import { visits } from './visits.ts';
import { enforce, isVoided, type Voids } from './voids.ts';

/** Every sum that the shop keeps. To add one, write its file, its line here and in `post`, and raise `shopFormat`. */
const projections = {
  positions,
  trays,
  ledger,
  visits,
  flaws,
  days,
  allDays,
  partsUsed,
  stores,
  pictured,
  shelf,
};
type Projections = typeof projections;

export type Sums = {
  readonly [Name in keyof Projections]: Projections[Name] extends Projection<infer State> ? State : never;
};

/** What a log amounts to. Plain data (maps, sets, numbers, text), so that it can be kept as a snapshot. */
export interface Shop extends Sums {
  readonly seen: VersionVector;
  readonly voids: Voids;
  readonly registers: Registers;
}

/** Raised when the shape or meaning of a sum changes: an older snapshot is then dropped and the log replayed. */
export const shopFormat = 14;

const names = Object.keys(projections) as (keyof Projections)[];

export function emptyShop(): Shop {
  const sums = Object.fromEntries(names.map((name) => [name, projections[name].empty()]));
  return { seen: new Map(), voids: new Map(), registers: new Map(), ...(sums as unknown as Sums) };
}

/**
 * Adds one event to the shop, in place. Any order and any repetition of the same events gives the same shop.
 * Returns false when the event was there already.
 */
export function addEvent(shop: Shop, event: ShopEvent): boolean {
  if (hasSeen(shop.seen, event)) return false;
  markSeen(shop.seen, event);
  if (event.kind === 'set-up') setRegister(shop.registers, event);
  else if (event.kind === 'spell-begun' || event.kind === 'spell-ended') post(shop, { event, times: 1 });
  else if (isVoided(shop.voids, event)) return true;
  else if (event.kind === 'voided') enforce(booksOf(shop), { event, sign: 1 });
  else post(shop, { event, times: 1 });
  return true;
}

function booksOf(shop: Shop): Parameters<typeof enforce>[0] {
  const { seen, voids } = shop;
  return { seen, voids, post: (event, times) => post(shop, { event, times }) };
}

function post(shop: Shop, entry: { event: SummedEvent; times: number }): void {
  days.add(shop.days, entry);
  allDays.add(shop.allDays, entry);
  stores.add(shop.stores, entry);
  pictured.add(shop.pictured, entry);
  shelf.add(shop.shelf, entry);
  if (!('of' in entry.event)) return;
  positions.add(shop.positions, entry);
  trays.add(shop.trays, entry);
  ledger.add(shop.ledger, entry);
  visits.add(shop.visits, entry);
  flaws.add(shop.flaws, entry);
  partsUsed.add(shop.partsUsed, entry);
}

/**
 * Whether a value has the outline of a shop of this format: the same maps under the same names. What stands in
 * them is not judged: only a snapshot that this version wrote is ever asked about.
 */
export function hasShopOutline(value: unknown): value is Shop {
  return hasOutlineOf(emptyShop(), value);
}

function hasOutlineOf(model: unknown, value: unknown): boolean {
  if (model instanceof Map) return value instanceof Map;
  if (typeof model !== 'object' || model === null) return typeof value === typeof model;
  if (typeof value !== 'object' || value === null || value instanceof Map) return false;
  const found = new Map(Object.entries(value));
  return Object.entries(model).every(([name, part]) => hasOutlineOf(part, found.get(name)));
}

/** The shop of a whole log. */
export function shopOf(events: Iterable<ShopEvent>): Shop {
  const shop = emptyShop();
  for (const event of events) addEvent(shop, event);
  return shop;
}
