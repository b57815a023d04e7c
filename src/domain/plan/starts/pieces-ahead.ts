import type { StageId } from '../../log/ids.ts';
import type { StageBelief } from './stage-beliefs.ts';

/** Pieces at a stage. */
export interface StagePieces {
  readonly stage: StageId;
  readonly pieces: number;
}

/**
 * Pieces that each stage has yet to try, on average: those that stand there, and those that come through the stages before.
 *
 * @param beliefs along the route
 * @param ahead.standing pieces that a stage has yet to try; counts may be below zero where taps crossed
 * @param ahead.starts pieces to be started beside them
 */
export function piecesAhead(
  beliefs: readonly StageBelief[],
  { standing, starts }: { readonly standing: readonly StagePieces[]; readonly starts: number },
): readonly StagePieces[] {
  const waiting = new Map(standing.map(({ stage, pieces }) => [stage, pieces]));
  let coming = starts;
  return beliefs.map(({ stage, alpha, beta }) => {
    const pieces = Math.max(0, coming + (waiting.get(stage) ?? 0));
    coming = (pieces * alpha) / (alpha + beta);
    return { stage, pieces };
  });
}
