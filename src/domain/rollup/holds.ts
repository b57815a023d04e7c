import type { StageId } from '../log/ids.ts';
import type { Grade } from '../log/place.ts';
import type { Ledger } from '../shop/ledger.ts';
import type { Shop } from '../shop/shop.ts';
import type { TrayRecord } from '../shop/trays.ts';

/** Pieces that clamps or racks hold at a stage. */
export function heldAt({ wip }: Ledger, stage: StageId): number {
  let sum = 0;
  for (const [key, pieces] of wip) {
    if (key.startsWith(`${stage}|`) && key.endsWith('|held')) sum += pieces;
  }
  return sum;
}

/** Pieces of one tray that cure together; `ready` in ms UTC. */
export interface Hold {
  readonly tray: TrayRecord;
  readonly stage: StageId;
  readonly grade: Grade;
  readonly pieces: number;
  readonly ready: number;
}

/** All that cures, the soonest ready first. */
export function holds(shop: Shop): readonly Hold[] {
  const found: Hold[] = [];
  for (const [id, places] of shop.positions.working) {
    const tray = shop.trays.get(id);
    if (!tray) continue;
    for (const { place, pieces } of places.values()) {
      if (place.at === 'held' && pieces > 0) found.push({ tray, ...place, pieces });
    }
  }
  return found.sort((a, b) => a.ready - b.ready);
}
