import type { SpeciesId, StageId } from '../../log/ids.ts';
import type { PieceMinutes } from '../../study/piece-minutes.ts';
import { piecesAhead } from './pieces-ahead.ts';
import type { BeliefBehind } from './start-study.ts';

export interface WorkAhead {
  readonly species: SpeciesId;
  /** Along the route. */
  readonly beliefs: readonly BeliefBehind[];
  /** Pieces that a stage has yet to try, by stage. */
  readonly standing: readonly { readonly stage: StageId; readonly pieces: number }[];
  /** Pieces to be started beside them. */
  readonly starts: number;
}

export interface HoursNeeded {
  /** Minutes of work at stages whose time is known. */
  readonly minutes: number;
  /** The same by stage, in no order. */
  readonly stages: readonly { readonly stage: StageId; readonly minutes: number }[];
  /** Stages that have pieces ahead of them, and whose time per piece nobody has measured. */
  readonly unknown: readonly StageId[];
}

/**
 * Minutes of work that is expected on what is in flight and on what is to be started: at each stage the pieces that reach
 * it, on average, times its minutes per piece. Sending back is not counted, since a stage's belief does not say how often.
 */
export function hoursNeeded(work: readonly WorkAhead[], minutesOf: PieceMinutes): HoursNeeded {
  const unknown = new Set<StageId>();
  const byStage = new Map<StageId, number>();
  for (const { species, beliefs, standing, starts } of work) {
    for (const { stage, pieces } of piecesAhead(beliefs, { standing, starts })) {
      const each = minutesOf(stage, species);
      if (pieces > 0 && each === undefined) unknown.add(stage);
      byStage.set(stage, (byStage.get(stage) ?? 0) + pieces * (each ?? 0));
    }
  }
  const stages = [...byStage].map(([stage, minutes]) => ({ stage, minutes }));
  const minutes = stages.reduce((sum, each) => sum + each.minutes, 0);
  return { minutes, stages, unknown: [...unknown] };
}
