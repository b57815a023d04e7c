import type { ShopEvent } from '../domain/log/event.ts';
import type { ShopDay, TrayId } from '../domain/log/ids.ts';
import { addEvent, type Shop } from '../domain/shop/shop.ts';

/** What has changed in a shop since its snapshot was saved: trays that are or were done with, and days. */
export interface Touched {
  readonly trays: Set<TrayId>;
  readonly days: Set<ShopDay>;
}

/** Adds an event and notes what it touches. Whether it was new. */
export function takeNoting(
  shop: Shop,
  { event, touched }: { readonly event: ShopEvent; readonly touched: Touched },
): boolean {
  note(shop, { event, touched });
  const isNew = addEvent(shop, event);
  if (isNew) note(shop, { event, touched });
  return isNew;
}

function note({ positions }: Shop, { event, touched }: { event: ShopEvent; touched: Touched }): void {
  let inner = event;
  while (inner.kind === 'voided') inner = inner.event;
  touched.days.add(inner.day);
  if (!('of' in inner)) return;
  const trays = [
    inner.of.tray,
    ...('into' in inner ? [inner.into.tray] : []),
    ...inner.moves.map(({ tray }) => tray),
  ];
  for (const tray of trays) if (!positions.working.has(tray)) touched.trays.add(tray);
}
