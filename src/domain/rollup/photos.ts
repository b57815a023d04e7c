import type { ShopEvent } from '../log/event.ts';
import type { StageId } from '../log/ids.ts';
import { isVoided, type Voids } from '../shop/voids.ts';

export type PieceShot = Extract<ShopEvent, { kind: 'piece-photographed' }>;
export type Shot = PieceShot | Extract<ShopEvent, { kind: 'photo-taken' }>;

/** The photos among events that were not taken back, the newest first. */
export function shotsAmong(events: readonly ShopEvent[], voids: Voids): readonly Shot[] {
  return events
    .filter((event): event is Shot => event.kind === 'piece-photographed' || event.kind === 'photo-taken')
    .filter((event) => !isVoided(voids, event))
    .reverse();
}

/** Those of flaws at a stage, in no order. */
export function flawShotsAt(
  events: readonly ShopEvent[],
  { stage, voids }: { readonly stage: StageId; readonly voids: Voids },
): readonly PieceShot[] {
  return shotsAmong(events, voids).filter(
    (shot): shot is PieceShot =>
      shot.kind === 'piece-photographed' && shot.stage === stage && shot.reasons.length > 0,
  );
}
