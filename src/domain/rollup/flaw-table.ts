import type { OutcomeKind } from '../log/event.ts';
import type { ReasonId, SpeciesId, StageId } from '../log/ids.ts';
import type { Shop } from '../shop/shop.ts';

/** Flawed pieces of one wood at one stage for one reason with one outcome. */
export interface FlawCell {
  readonly stage: StageId;
  readonly species: SpeciesId;
  readonly reason: ReasonId;
  readonly outcome: OutcomeKind;
  readonly pieces: number;
}

/** All flaws by reason; a piece with two reasons stands under both. */
export function flawTable({ flaws }: Shop): readonly FlawCell[] {
  return [...flaws.byReason].map(([key, pieces]) => {
    const [stage, species, reason, outcome] = key.split('|') as [StageId, SpeciesId, ReasonId, OutcomeKind];
    return { stage, species, reason, outcome, pieces };
  });
}

/** Outcomes of a reason at a stage, the most frequent so far first; unknown history keeps the order given. */
export function likeliestOutcomes(
  shop: Shop,
  { stage, reason, usual }: { stage: StageId; reason: ReasonId; usual: readonly OutcomeKind[] },
): readonly OutcomeKind[] {
  const counts = new Map<OutcomeKind, number>();
  for (const cell of flawTable(shop)) {
    if (cell.stage === stage && cell.reason === reason) {
      counts.set(cell.outcome, (counts.get(cell.outcome) ?? 0) + cell.pieces);
    }
  }
  return usual.toSorted((a, b) => (counts.get(b) ?? 0) - (counts.get(a) ?? 0));
}
