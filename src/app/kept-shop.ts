import { type ReadonlySignal, signal } from '@preact/signals';
import type { ShopEvent } from '../domain/log/event.ts';
import { emptyShop, hasShopOutline, type Shop, shopFormat } from '../domain/shop/shop.ts';
import type { LogStore } from '../store/log-store.ts';
import { type Touched, takeNoting } from './touched.ts';

/** The sums of a shop, opened from a snapshot and kept in one. The object stays the same, whatever is read into it. */
export interface KeptShop {
  readonly shop: Shop;
  /** Whether the pages of the snapshot are read. Until then trays that are done with and earlier days are missing. */
  readonly isWhole: ReadonlySignal<boolean>;
  /** Reads the pages, once. Rejects when neither they nor the log can be read. */
  readonly whole: () => Promise<void>;
  /** Adds events; those that were new. */
  readonly take: (events: readonly ShopEvent[]) => readonly ShopEvent[];
  /** Saves a snapshot, of this shop or of one that was added up anew. Without one the next start replays more. */
  readonly keep: (rebuilt?: Shop) => Promise<void>;
}

/** Opens the shop as its snapshot has it, or empty; events that came since are not added yet. */
export async function openKeptShop(log: LogStore): Promise<KeptShop> {
  const snapshot = await log.loadSnapshot();
  const kept = snapshot?.format === shopFormat ? snapshot.shop : undefined;
  const opened = hasShopOutline(kept) ? { shop: kept, edition: snapshot?.edition ?? null } : undefined;
  const shop = opened?.shop ?? emptyShop();
  const touched: Touched = { trays: new Set(), days: new Set() };
  const complete = new Set(shop.days.keys());
  const isWhole = signal(!opened || snapshot?.pages === 0);
  let edition = opened?.edition ?? null;
  let reading: Promise<void> | undefined;
  let saving: Promise<void> = Promise.resolve();

  async function readRest(): Promise<void> {
    const { readWhole } = await import('./whole-shop.ts');
    edition = await readWhole(log, { shop, edition, complete, touched });
    isWhole.value = true;
  }

  async function save(rebuilt: Shop | undefined): Promise<void> {
    if (!rebuilt && !isWhole.value) return;
    const { saveWhole } = await import('./whole-shop.ts');
    edition = await saveWhole(
      log,
      rebuilt ? { shop: rebuilt, edition: null, touched } : { shop, edition, touched },
    );
  }

  return {
    shop,
    isWhole,
    async whole() {
      if (isWhole.value) return;
      reading ??= readRest().catch((error: unknown) => {
        reading = undefined;
        throw error;
      });
      await reading;
    },
    take: (events) => events.filter((event) => takeNoting(shop, { event, touched })),
    keep(rebuilt) {
      saving = saving.then(() => save(rebuilt)).catch(() => undefined);
      return saving;
    },
  };
}
