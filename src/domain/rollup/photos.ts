import type { ShopEvent } from '../log/event.ts';
import type { StageId, VariantId } from '../log/ids.ts';
import type { PhotoHash } from '../log/photo-facts.ts';
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

/** Photos that show nothing but flaws, were taken before a moment (ms UTC), and are not let go yet. */
export function oldFlawPhotos(
  events: readonly ShopEvent[],
  { before, voids }: { readonly before: number; readonly voids: Voids },
): ReadonlySet<PhotoHash> {
  const old = new Set<PhotoHash>();
  /** Of something else, too young, or let go already. */
  const others = new Set<PhotoHash>();
  for (const event of events) {
    if (event.kind === 'photo-let-go' && !isVoided(voids, event)) others.add(event.photo);
  }
  for (const shot of shotsAmong(events, voids)) {
    const showsFlaw = shot.kind === 'piece-photographed' && shot.reasons.length > 0;
    (showsFlaw && shot.stamp.wall < before ? old : others).add(shot.photo.hash);
  }
  return new Set([...old].filter((photo) => !others.has(photo)));
}

/** Those that show a variant as it is, among events about it and about trays of it: its own first, then of pieces without a flaw. */
export function shotsOfVariant(
  events: readonly ShopEvent[],
  { variant, voids }: { readonly variant: VariantId; readonly voids: Voids },
): readonly Shot[] {
  const all = shotsAmong(events, voids).toSorted((a, b) => b.stamp.wall - a.stamp.wall);
  const own = all.filter(
    (shot) => shot.kind === 'photo-taken' && shot.shows.kind === 'variant' && shot.shows.variant === variant,
  );
  const ofPieces = all.filter(
    (shot) => shot.kind === 'piece-photographed' && shot.of.variant === variant && shot.reasons.length === 0,
  );
  return [...own, ...ofPieces];
}
