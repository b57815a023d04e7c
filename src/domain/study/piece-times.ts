import { minutesPerPiece, type PieceTime } from '../statistics/minutes-per-piece.ts';
import { type StageGaps, stageGaps } from './stage-gaps.ts';
import type { TapFilter } from './tap-filter.ts';
import type { TapTable } from './tap-table.ts';

/** How long a piece of a wood takes at a stage, or to be put to its cure there. */
export interface StageTime extends Pick<StageGaps, 'stage' | 'species' | 'of'> {
  readonly time: PieceTime;
}

/**
 * Minutes per piece of every stage × wood with a known time, by the robust estimate of `minutesPerPiece` from the newest
 * taps. Throws RangeError for a level that is not between 0 and 1.
 */
export function pieceTimes(
  table: TapTable,
  { filter, level = 0.9 }: { readonly filter?: TapFilter | undefined; readonly level?: number | undefined },
): readonly StageTime[] {
  return stageGaps(table, { filter }).flatMap(({ stage, species, of, gaps }) => {
    const time = minutesPerPiece(gaps, { level });
    return time ? [{ stage, species, of, time }] : [];
  });
}
