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

/** Pieces of one tray that cure together; `ready` in ms UTC, `spare` as their place has it. */
export interface Hold {
  readonly tray: TrayRecord;
  readonly stage: StageId;
  readonly grade: Grade;
  readonly pieces: number;
  readonly ready: number;
  readonly spare?: number;
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

/** A tray whose pieces at one stage have cured, as far as they were loaded together; `ready` in ms UTC. */
export interface CureOver {
  readonly tray: TrayRecord;
  readonly stage: StageId;
  readonly pieces: number;
  readonly ready: number;
}

/** Pieces of a tray that were loaded one by one, but are ready within this time (ms) of one another, are one round. */
const oneRound = 15 * 60_000;

/** The rounds of which the last piece is cured later than `after` and by `until` (ms UTC), the soonest first. */
export function curesOver(
  shop: Shop,
  { after, until }: { after: number; until: number },
): readonly CureOver[] {
  const rounds: CureOver[] = [];
  const latest = new Map<string, number>();
  for (const { tray, stage, pieces, ready } of holds(shop)) {
    const key = `${tray.tray}|${stage}`;
    const place = latest.get(key);
    const before = place === undefined ? undefined : rounds[place];
    if (place !== undefined && before && ready - before.ready <= oneRound) {
      rounds[place] = { ...before, pieces: before.pieces + pieces, ready };
    } else {
      latest.set(key, rounds.push({ tray, stage, pieces, ready }) - 1);
    }
  }
  return rounds.filter(({ ready }) => ready > after && ready <= until).sort((a, b) => a.ready - b.ready);
}
