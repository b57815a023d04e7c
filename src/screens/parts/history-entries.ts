import type { ShopEvent } from '../../domain/log/event.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import { isVoidable, isVoided, type Voidable } from '../../domain/shop/voids.ts';

/** One entry of a history, the newest first. */
export interface HistoryEntry {
  readonly event: ShopEvent;
  readonly inForce: boolean;
  /** What can be taken back, or put back when it is itself an undo; null when nothing can. */
  readonly voidable: Voidable | null;
}

export function historyEntries({ voids }: Shop, events: readonly ShopEvent[]): readonly HistoryEntry[] {
  return events.toReversed().map((event) => {
    const inForce = !isVoided(voids, event);
    const voidable = inForce && isVoidable(event) ? event : null;
    return { event, inForce, voidable };
  });
}
