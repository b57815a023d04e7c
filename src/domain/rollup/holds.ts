import type { StageId } from '../log/ids.ts';
import { type Grade, leastOf } from '../log/place.ts';
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

/** Pieces of a tray at one stage that were loaded together. */
export interface CureRound {
  readonly tray: TrayRecord;
  readonly stage: StageId;
  readonly pieces: number;
  readonly grades: Readonly<Record<Grade, number>>;
  /** When its first piece is ready, which no later load into it changes; ms UTC. */
  readonly soonest: number;
  /** When the last piece of it is ready, and from when on all of it may come out without being asked about; ms UTC. */
  readonly ready: number;
  readonly least: number;
}

/** Pieces of a tray that were loaded one by one, but are ready within this time (ms) of one another, are one round. */
const oneRound = 15 * 60_000;

/** The rounds that cure or wait to be taken out, the soonest ready first. */
export function cureRounds(shop: Shop): readonly CureRound[] {
  const rounds: CureRound[] = [];
  const latest = new Map<string, number>();
  for (const hold of holds(shop)) {
    const { tray, stage, grade, pieces, ready } = hold;
    const key = `${tray.tray}|${stage}`;
    const place = latest.get(key);
    const before = place === undefined ? undefined : rounds[place];
    if (place !== undefined && before && ready - before.ready <= oneRound) {
      const grades = { ...before.grades, [grade]: before.grades[grade] + pieces };
      const least = Math.max(before.least, leastOf(hold));
      rounds[place] = { ...before, pieces: before.pieces + pieces, grades, ready, least };
    } else {
      const grades = { first: 0, second: 0, [grade]: pieces };
      latest.set(
        key,
        rounds.push({ tray, stage, pieces, grades, soonest: ready, ready, least: leastOf(hold) }) - 1,
      );
    }
  }
  return rounds.sort((a, b) => a.ready - b.ready);
}

/** The rounds of which the last piece is cured later than `after` and by `until` (ms UTC), the soonest first. */
export function curesOver(
  shop: Shop,
  { after, until }: { after: number; until: number },
): readonly CureRound[] {
  return cureRounds(shop).filter(({ ready }) => ready > after && ready <= until);
}
