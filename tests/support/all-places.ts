import type { TrayId } from '../../src/domain/log/ids.ts';
import type { Places } from '../../src/domain/shop/positions.ts';
import type { Shop } from '../../src/domain/shop/shop.ts';

/** Where the pieces of every tray are, of those in work and of those that are done. */
export function allPlaces({ positions: { working, settled } }: Shop): ReadonlyMap<TrayId, Places> {
  return new Map([...working, ...settled]);
}
