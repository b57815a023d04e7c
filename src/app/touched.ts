import type { ShopEvent, TrayEvent } from '../domain/log/event.ts';
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
  let inner = event;
  while (inner.kind === 'voided') inner = inner.event;
  touched.days.add(inner.day);
  if (!('of' in inner)) return addEvent(shop, event);
  noteSettled(shop, { event: inner, touched });
  const isNew = addEvent(shop, event);
  noteSettled(shop, { event: inner, touched });
  return isNew;
}

/** Notes the trays of an event that are not in work. */
function noteSettled(
  { positions: { working } }: Shop,
  { event, touched }: { readonly event: TrayEvent; readonly touched: Touched },
): void {
  const note = (tray: TrayId) => {
    if (!working.has(tray)) touched.trays.add(tray);
  };
  note(event.of.tray);
  if ('into' in event) note(event.into.tray);
  for (const { tray } of event.moves) note(tray);
}
