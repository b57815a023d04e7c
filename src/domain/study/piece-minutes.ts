import type { SpeciesId, StageId } from '../log/ids.ts';
import { tapGroups } from '../statistics/tap-groups.ts';
import { workTime } from '../statistics/work-time.ts';
import type { StageGaps } from './stage-gaps.ts';

/** Minutes that a piece of a wood takes at a stage, or undefined while that is not known. */
export type PieceMinutes = (stage: StageId, species: SpeciesId) => number | undefined;

/**
 * The mean minutes per piece of each stage × wood, by the robust estimate that `minutesPerPiece` gives too: what many pieces
 * took together is their number times that. Loading is added to the stage that cures. A wood without a time at a stage
 * takes the mean of the woods that have one there.
 */
export function pieceMinutes(gaps: readonly StageGaps[]): PieceMinutes {
  const byCell = new Map<string, number>();
  const byStage = new Map<string, number[]>();
  for (const { stage, species, of, gaps: taps } of gaps) {
    const time = workTime(tapGroups(taps));
    if (!time) continue;
    byCell.set(`${stage}|${species}|${of}`, time.mean);
    byStage.set(`${stage}|${of}`, [...(byStage.get(`${stage}|${of}`) ?? []), time.mean]);
  }
  const at = (stage: StageId, species: SpeciesId, of: StageGaps['of']) =>
    byCell.get(`${stage}|${species}|${of}`) ?? mean(byStage.get(`${stage}|${of}`));
  return (stage, species) => {
    const [work, loading] = [at(stage, species, 'work'), at(stage, species, 'loading')];
    return work === undefined ? loading : work + (loading ?? 0);
  };
}

function mean(values: readonly number[] | undefined): number | undefined {
  return values && values.reduce((sum, value) => sum + value, 0) / values.length;
}
