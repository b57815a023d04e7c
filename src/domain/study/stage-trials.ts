import type { StageId } from '../log/ids.ts';
import type { SurvivalStep } from '../statistics/product-limit.ts';
import type { TapCount } from './tap-counts.ts';
import type { Visit } from './tap-kind.ts';

/** How pieces fared at one stage. */
export interface StageTrials {
  readonly stage: StageId;
  /** Pieces whose trial by the stage is decided, and those that were scrapped. */
  readonly finished: SurvivalStep;
  /** Pieces that were firsts when it was decided, and those that were scrapped or lowered to seconds. */
  readonly firsts: SurvivalStep;
  /** First visits that ended, and those of them that ended in a pass. */
  readonly firstPass: { readonly of: number; readonly out: number };
  /** Visits of pieces that came again. */
  readonly repeats: number;
}

interface Sums {
  readonly finished: { atRisk: number; lost: number };
  readonly firsts: { atRisk: number; lost: number };
  readonly firstPass: { of: number; out: number };
  repeats: number;
}

/** What taps come to at each of the stages, in the order given. */
export function trialsOf(counts: readonly TapCount[], stages: readonly StageId[]): readonly StageTrials[] {
  const sums = new Map(stages.map((stage) => [stage, noSums()]));
  for (const { what, taps } of counts) if (what.kind === 'visit') addVisit(sums, { visit: what, taps });
  return [...sums].map(([stage, each]) => ({ stage, ...each }));
}

const noSums = (): Sums => ({
  finished: { atRisk: 0, lost: 0 },
  firsts: { atRisk: 0, lost: 0 },
  firstPass: { of: 0, out: 0 },
  repeats: 0,
});

function addVisit(sums: Map<StageId, Sums>, { visit, taps }: { visit: Visit; taps: number }): void {
  const here = sums.get(visit.stage);
  if (here) {
    const first = taps * (visit.pieces - visit.again);
    here.firstPass.of += first;
    if (!visit.flaw) here.firstPass.out += first;
    here.repeats += taps * visit.again;
  }
  for (const { stage, pieces, grade, end, over } of visit.trials) {
    const of = sums.get(stage);
    if (!of) continue;
    const isLost = end === 'scrapped';
    if (over) addTrial(of.finished, { pieces: taps * pieces, isLost });
    // What is lowered on its way back has not come through yet, but no first will come of it.
    const isLostToFirsts = isLost || end === 'lowered';
    if (grade === 'first' && (over || isLostToFirsts))
      addTrial(of.firsts, { pieces: taps * pieces, isLost: isLostToFirsts });
  }
}

function addTrial(
  step: { atRisk: number; lost: number },
  { pieces, isLost }: { pieces: number; isLost: boolean },
): void {
  step.atRisk += pieces;
  if (isLost) step.lost += pieces;
}
