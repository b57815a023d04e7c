import type { PersonId, StageId } from '../log/ids.ts';
import { type LearningCurve, learningCurveThrough } from '../statistics/learning-curve.ts';
import { median } from '../statistics/straight-line.ts';
import { learnersIn, type TimedPieces } from './learners.ts';
import type { PieceMinutes } from './piece-minutes.ts';
import type { TapTable } from './tap-table.ts';

/** How quick the hands of one person have become at a stage, over every piece that they did there, repeats among them. */
export interface StageLearning {
  readonly stage: StageId;
  /** null for nobody in particular. */
  readonly person: PersonId | null;
  /** Pieces done there. */
  readonly made: number;
  /** Those of them whose time is known. */
  readonly timed: number;
  /** Minutes of the n-th piece. Its `pieces` are observations: what was tapped together is one. */
  readonly curve: LearningCurve;
  /** For a chart, in the order of their numbers: 24 at most. */
  readonly points: readonly LearningPoint[];
}

/** What the pieces around the n-th took. */
interface LearningPoint {
  /** n: the middle of their numbers on a log scale, so not whole. */
  readonly number: number;
  /** Half of these pieces took less. */
  readonly minutes: number;
  /** Of how many pieces. */
  readonly pieces: number;
}

/** Fewer observations than this tell no curve from chance. */
const fewestTimes = 10;
const mostPoints = 24;

/**
 * Learning curves of every stage × person with enough known times, by the robust fit of Wright's curve. Numbers count from
 * the first piece of the log, whatever wood it is of. Of a long history the times are thinned (see `learnersIn`), which
 * takes some precision from the curve and nothing else. Throws RangeError for a level that is not between 0 and 1.
 */
export function stageLearning(
  table: TapTable,
  { pieceMinutes, level = 0.9 }: { readonly pieceMinutes: PieceMinutes; readonly level?: number | undefined },
): readonly StageLearning[] {
  return learnersIn(table, pieceMinutes)
    .flatMap(({ kept, ...learner }) => {
      if (kept.length < fewestTimes) return [];
      const times = kept.map(({ number, minutes }) => ({ number, time: minutes }));
      const curve = learningCurveThrough(times, { level, fit: 'robust' });
      return curve ? [{ ...learner, curve, points: pointsOf(kept) }] : [];
    })
    .sort((a, b) => (nameOf(a) < nameOf(b) ? -1 : 1));
}

/** Medians over parts of the numbers that are equally long on a log scale; a part without a time has no point. */
function pointsOf(kept: readonly TimedPieces[]): readonly LearningPoint[] {
  const [least, most] = [Math.log(kept[0]?.number ?? 1), Math.log(kept.at(-1)?.number ?? 1)];
  const parts = new Map<number, TimedPieces[]>();
  for (const each of kept) {
    const part = Math.floor((mostPoints * (Math.log(each.number) - least)) / (most - least));
    const at = Math.min(part, mostPoints - 1);
    parts.set(at, [...(parts.get(at) ?? []), each]);
  }
  return [...parts.values()].map((part) => {
    const each = part.flatMap(({ minutes, pieces }) => new Array<number>(pieces).fill(minutes));
    const logs = part.reduce((sum, { number }) => sum + Math.log(number), 0);
    return { number: Math.exp(logs / part.length), minutes: median(each) ?? 0, pieces: each.length };
  });
}

function nameOf({ stage, person }: Pick<StageLearning, 'stage' | 'person'>): string {
  return `${stage}|${person ?? ''}`;
}
