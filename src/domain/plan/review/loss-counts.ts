import type { ReasonId, StageId } from '../../log/ids.ts';
import type { TapCount } from '../../study/tap-counts.ts';

/** Pieces that were scrapped, lowered or sent back at a stage for a reason; null where none was given. */
export interface LossCount {
  readonly stage: StageId;
  readonly reason: ReasonId | null;
  readonly pieces: number;
}

/** Losses by stage and reason, the most pieces first; a piece with two reasons stands under both. Mended ones are no loss. */
export function lossCounts(counts: readonly TapCount[]): readonly LossCount[] {
  const cells = new Map<string, { stage: StageId; reason: ReasonId | null; pieces: number }>();
  for (const { what, taps } of counts) {
    if (what.kind !== 'visit' || !what.flaw || what.flaw.outcome === 'mended') continue;
    const { stage, pieces, flaw } = what;
    const named: readonly (ReasonId | null)[] = flaw.reasons.length > 0 ? flaw.reasons : [null];
    for (const reason of named) {
      const key = `${stage}|${reason ?? ''}`;
      const cell = cells.get(key) ?? { stage, reason, pieces: 0 };
      cells.set(key, cell);
      cell.pieces += taps * pieces;
    }
  }
  return [...cells.values()].sort((a, b) => b.pieces - a.pieces);
}
