import type { StageId } from '../../domain/log/ids.ts';
import { heldAt, holds } from '../../domain/rollup/holds.ts';
import { liveStages } from '../../domain/route/live-stages.ts';
import type { StageFact } from '../../domain/set-up/facts.ts';
import { factOf } from '../../domain/shop/registers.ts';
import type { Shop } from '../../domain/shop/shop.ts';

/** One stage to choose: what waits there and what cures there. */
export interface StageTile {
  readonly stage: StageId;
  readonly fact: StageFact;
  readonly waiting: number;
  readonly held: number;
  /** Pieces whose cure is over at `now`. */
  readonly ready: number;
}

/** The stages of all batches in work, in route order. */
export function stageTiles(shop: Shop, now: number): readonly StageTile[] {
  const curing = holds(shop);
  return liveStages(shop.registers).flatMap((stage) => {
    const fact = factOf(shop.registers, { register: 'stage', id: stage });
    if (!fact) return [];
    const held = heldAt(shop.ledger, stage);
    const ready = curing
      .filter((hold) => hold.stage === stage && hold.ready <= now)
      .reduce((sum, hold) => sum + hold.pieces, 0);
    return [{ stage, fact, waiting: waitingAt(shop, stage), held, ready }];
  });
}

function waitingAt({ ledger }: Shop, stage: StageId): number {
  let sum = 0;
  for (const [key, pieces] of ledger.wip) {
    if (key.startsWith(`${stage}|`) && key.endsWith('|waiting')) sum += pieces;
  }
  return sum;
}
