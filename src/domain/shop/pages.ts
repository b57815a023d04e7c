import type { ReasonId, ShopDay, TrayId } from '../log/ids.ts';
import { addTo, type Counter } from './counter.ts';
import { type DaySheet, type Days, isBlank } from './days.ts';
import { type Places, placePieces } from './positions.ts';
import type { Shop } from './shop.ts';
import type { TrayRecord } from './trays.ts';

/**
 * A snapshot of the shop is kept in parts, so that a start reads what the bench needs and not ten years: the front has the
 * trays that are in work, the last days and all small sums; pages have the trays that are done with and all days. A page is
 * written anew only when something on it has changed.
 */
export type PageName = `trays ${number}` | `days ${string}`;

interface TrayOnPage {
  readonly places: Places | undefined;
  readonly record: TrayRecord | undefined;
  /** Flawed pieces of it by reason. */
  readonly flaws: Counter<ReasonId>;
}

export interface Page {
  readonly trays: Map<TrayId, TrayOnPage>;
  readonly days: Days;
}

/** Trays that are done with are spread over so many pages. */
const trayPages = 64;
/** The front has the last of the days that something was done on. */
const daysInFront = 2;

export function pageOfTray(tray: TrayId): PageName {
  let sum = 0;
  for (let at = 0; at < tray.length; at += 1) sum = (sum * 31 + tray.charCodeAt(at)) % 65_521;
  return `trays ${sum % trayPages}`;
}

/** Days stand on one page a month. */
export function pageOfDay(day: ShopDay): PageName {
  return `days ${day.slice(0, 7)}`;
}

const trayIn = (key: `${TrayId}|${ReasonId}`) => key.slice(0, key.indexOf('|')) as TrayId;

/** What a start needs at once. It shares its parts with the shop. */
export function frontOf(shop: Shop): Shop {
  const { working } = shop.positions;
  const last = [...shop.days.keys()].sort().slice(-daysInFront);
  return {
    ...shop,
    positions: { working, settled: new Map() },
    trays: only(shop.trays, (tray) => working.has(tray)),
    flaws: { ...shop.flaws, byTray: only(shop.flaws.byTray, (key) => working.has(trayIn(key))) },
    days: only(shop.days, (day) => last.includes(day)),
  };
}

function only<Key, Value>(map: ReadonlyMap<Key, Value>, isWanted: (key: Key) => boolean): Map<Key, Value> {
  return new Map([...map].filter(([key]) => isWanted(key)));
}

/** The pages of a shop that are wanted; one on which nothing stands is empty. */
export function pagesOf(shop: Shop, wanted: ReadonlySet<PageName> | 'all'): ReadonlyMap<PageName, Page> {
  const { working, settled } = shop.positions;
  const pages = new Map<PageName, Page>();
  if (wanted !== 'all') for (const name of wanted) pages.set(name, { trays: new Map(), days: new Map() });
  const pageOf = (name: PageName) => {
    if (wanted === 'all' && !pages.has(name)) pages.set(name, { trays: new Map(), days: new Map() });
    return pages.get(name);
  };
  for (const tray of new Set([...shop.trays.keys(), ...settled.keys()]))
    if (!working.has(tray))
      pageOf(pageOfTray(tray))?.trays.set(tray, {
        places: settled.get(tray),
        record: shop.trays.get(tray),
        flaws: new Map(),
      });
  for (const [key, pieces] of shop.flaws.byTray) {
    const tray = trayIn(key);
    const reason = key.slice(tray.length + 1) as ReasonId;
    pages.get(pageOfTray(tray))?.trays.get(tray)?.flaws.set(reason, pieces);
  }
  for (const [day, sheet] of shop.days) pageOf(pageOfDay(day))?.days.set(day, sheet);
  return pages;
}

/**
 * Adds a page to a shop that was opened with its front, and into which events may have come since. `complete` are the days
 * that the front had: they lack nothing.
 */
export function addPage(
  shop: Shop,
  { page, complete }: { page: Page; complete: ReadonlySet<ShopDay> },
): void {
  for (const [tray, { places, record, flaws }] of page.trays) {
    for (const standing of places?.values() ?? []) placePieces(shop.positions, { tray, ...standing });
    const known = shop.trays.get(tray);
    if (record) {
      const since = known ?? { events: 0, made: 0 };
      const events = record.events + since.events;
      if (events === 0) shop.trays.delete(tray);
      else shop.trays.set(tray, { ...record, events, made: record.made + since.made });
    }
    for (const [reason, by] of flaws) addTo(shop.flaws.byTray, { key: `${tray}|${reason}`, by });
  }
  for (const [day, sheet] of page.days) if (!complete.has(day)) addSheet(shop.days, { day, sheet });
}

function addSheet(days: Days, { day, sheet }: { day: ShopDay; sheet: DaySheet }): void {
  const known = days.get(day);
  if (!known) {
    days.set(day, sheet);
    return;
  }
  for (const name of Object.keys(sheet) as (keyof DaySheet)[]) {
    const counter = known[name] as Counter;
    for (const [key, by] of sheet[name] as Counter) addTo(counter, { key, by });
  }
  if (isBlank(known)) days.delete(day);
}
