import type { ShopDay, TrayId } from '../domain/log/ids.ts';
import {
  addPage,
  frontOf,
  type Page,
  type PageName,
  pageOfDay,
  pageOfTray,
  pagesOf,
} from '../domain/shop/pages.ts';
import { emptyShop, hasShopOutline, type Shop, shopFormat } from '../domain/shop/shop.ts';
import type { LogStore } from '../store/log-store.ts';
import { type Touched, takeNoting } from './touched.ts';

interface Kept {
  readonly shop: Shop;
  /** Of the snapshot that it was opened from or saved in last; null when there is none. */
  readonly edition: number | null;
  readonly touched: Touched;
}

/** Another window may save between a front and its pages; one that always does is broken. */
const mostReadings = 3;

/** A shop that was opened with its front. */
interface FrontOnly extends Kept {
  /** The days that the front had: they lack nothing, whatever has come to other days since. */
  readonly complete: ReadonlySet<ShopDay>;
}

/** Reads the pages that belong to a shop's front into it; the edition that it is of then. */
export async function readWhole(
  log: LogStore,
  { shop, edition, complete, touched }: FrontOnly,
): Promise<number | null> {
  if (edition !== null && (await readPages(log, { shop, edition, complete }))) return edition;
  // Pages of another edition may have the same taps as this front has got since: all is read anew.
  const anew = await readAnew(log);
  const { events } = await log.since(anew.shop.seen);
  for (const event of events) takeNoting(anew.shop, { event, touched });
  Object.assign(shop, anew.shop);
  return anew.edition;
}

async function readAnew(log: LogStore): Promise<Pick<Kept, 'shop' | 'edition'>> {
  for (let readings = 1; readings <= mostReadings; readings += 1) {
    const snapshot = await log.loadSnapshot();
    const { shop } = snapshot ?? {};
    if (snapshot?.format !== shopFormat || !hasShopOutline(shop)) break;
    const { edition } = snapshot;
    const complete = new Set(shop.days.keys());
    if (await readPages(log, { shop, edition, complete })) return { shop, edition };
  }
  return { shop: emptyShop(), edition: null };
}

async function readPages(
  log: LogStore,
  { shop, edition, complete }: Pick<FrontOnly, 'shop' | 'complete'> & { readonly edition: number },
): Promise<boolean> {
  try {
    return await log.loadPages(edition, (raw) => addPage(shop, { page: asPage(raw), complete }));
  } catch {
    return false;
  }
}

function asPage(raw: unknown): Page {
  const { trays, days } = raw as Partial<Page>;
  if (!(trays instanceof Map && days instanceof Map)) throw new Error('this is no page of a shop');
  return { trays, days };
}

/** Saves a shop as a snapshot, only those of its pages that have changed where that will do; its new edition. */
export async function saveWhole(log: LogStore, { shop, edition, touched }: Kept): Promise<number | null> {
  const trays = new Set<TrayId>();
  const days = new Set<ShopDay>();
  const make = (over: number | null) => () => {
    for (const tray of touched.trays) trays.add(tray);
    for (const day of touched.days) days.add(day);
    touched.trays.clear();
    touched.days.clear();
    const names = new Set<PageName>([...[...trays].map(pageOfTray), ...[...days].map(pageOfDay)]);
    return { format: shopFormat, shop: frontOf(shop), pages: pagesOf(shop, over === null ? 'all' : names) };
  };
  try {
    return (
      (await log.saveSnapshot({ over: edition, make: make(edition) })) ??
      (await log.saveSnapshot({ over: null, make: make(null) })) ??
      null
    );
  } catch (error) {
    for (const tray of trays) touched.trays.add(tray);
    for (const day of days) touched.days.add(day);
    throw error;
  }
}
