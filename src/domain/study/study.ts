import { seededRandom } from '../chance/seeded-random.ts';
import type { ShopDay, SpeciesId, VariantId } from '../log/ids.ts';
import { type ComparedCell, type Comparison, compare } from './comparison.ts';
import { flawHeat, type HeatCell } from './flaw-heat.ts';
import { type FlawPareto, flawPareto } from './flaw-pareto.ts';
import { type FlowByDay, flowByDay } from './flow-by-day.ts';
import { type PieceMinutes, pieceMinutes } from './piece-minutes.ts';
import { pieceTimes, type StageTime } from './piece-times.ts';
import { type AnsweredSignal, type SeriesName, type SignalSeries, seriesNamed } from './signal-series.ts';
import { stageGaps } from './stage-gaps.ts';
import { type StageLearning, stageLearning } from './stage-learning.ts';
import type { StudyRoutes } from './study-routes.ts';
import { type StudySignals, studySignals } from './study-signals.ts';
import { type GroupSurvival, survivalBySpecies, survivalByVariant } from './survival.ts';
import { type TapFilter, tapFilter } from './tap-filter.ts';
import type { TapTable } from './tap-table.ts';
import {
  type ScrappedTime,
  scrappedTime,
  type WorkedTime,
  workedByDay,
  workedByWeek,
} from './worked-time.ts';

/** What is asked of a log. */
export interface StudyQuestions {
  readonly routes: StudyRoutes;
  /** Of everything but the comparison, which has filters of its own, and signals and learning, which are of the whole log. */
  readonly filter: TapFilter;
  readonly comparison: Comparison | null;
  /** Signals that a person has answered. */
  readonly answered: readonly AnsweredSignal[];
  /** The series that is to be shown whole, from its first piece on. */
  readonly charted: SeriesName | null;
  /** Of all intervals; 0.9 when left out. */
  readonly level?: number;
}

/** What a log tells: small, and nothing but plain data, whatever the length of the log. */
export interface Study {
  readonly reach: Reach;
  readonly species: readonly GroupSurvival<SpeciesId>[];
  readonly variants: readonly GroupSurvival<VariantId>[];
  readonly comparison: readonly ComparedCell[] | null;
  readonly flow: FlowByDay;
  readonly flaws: FlawPareto;
  readonly heat: readonly HeatCell[];
  readonly signals: StudySignals;
  /** null where none was asked for, and where the log has none of that name. */
  readonly charted: SignalSeries | null;
  readonly times: readonly StageTime[];
  readonly learning: readonly StageLearning[];
  readonly worked: { readonly days: readonly WorkedTime[]; readonly weeks: readonly WorkedTime[] };
  readonly scrappedTime: ScrappedTime;
}

/** What the answers rest on. */
interface Reach {
  /** Pieces whose visit ended, repeats among them. */
  readonly judged: number;
  /** Those of them that were tapped while a tablet's clock was in doubt: their day may be another. */
  readonly doubtful: number;
  /** The first and the last day with a visit; null without one. */
  readonly days: { readonly first: ShopDay; readonly last: ShopDay } | null;
}

/** What is of the whole shop, whatever is filtered, and takes most of the time: another only when the log has grown. */
export interface WholeStudy {
  readonly signals: StudySignals;
  readonly learning: readonly StageLearning[];
  /** The usual time of a piece is a matter of the shop, not of the few days that may be looked at. */
  readonly pieceMinutes: PieceMinutes;
}

export function wholeStudyOf(
  table: TapTable,
  { answered, level }: Pick<StudyQuestions, 'answered' | 'level'>,
): WholeStudy {
  const minutes = pieceMinutes(stageGaps(table));
  return {
    signals: studySignals(table, { answered, random: seededRandom(sameEverywhere) }),
    learning: stageLearning(table, { pieceMinutes: minutes, level }),
    pieceMinutes: minutes,
  };
}

/** Answers every question on a table. Throws RangeError for a level that is not between 0 and 1. */
export function studyOf(
  table: TapTable,
  questions: StudyQuestions,
  whole: WholeStudy = wholeStudyOf(table, questions),
): Study {
  const { routes, filter, comparison, charted, level } = questions;
  const usual = { routes, pieceMinutes: whole.pieceMinutes };
  const days = workedByDay(table, filter);
  return {
    reach: reachOf(table, filter),
    species: survivalBySpecies(table, { routes, filter, level }),
    variants: survivalByVariant(table, { routes, filter, level }),
    comparison: comparison && compare(table, { ...comparison, level }),
    flow: flowByDay(table, { routes, filter }),
    flaws: flawPareto(table, { ...usual, filter }),
    heat: flawHeat(table, { filter }),
    signals: whole.signals,
    charted: charted && seriesNamed(table, charted),
    times: pieceTimes(table, { filter, level }),
    learning: whole.learning,
    worked: { days: newestDays(days), weeks: workedByWeek(days) },
    scrappedTime: scrappedTime(table, { ...usual, filter }),
  };
}

/** A seed: every tablet with the same log has the same list of signals. */
const sameEverywhere = 20_260_301;

/** Two months of days are as many as a screen has room for; weeks go further back. */
const mostDays = 62;

function newestDays(worked: readonly WorkedTime[]): readonly WorkedTime[] {
  const days = [...new Set(worked.map(({ day }) => day))];
  const first = days.at(-mostDays) ?? days[0];
  return worked.filter(({ day }) => first !== undefined && day >= first);
}

function reachOf(table: TapTable, filter: TapFilter): Reach {
  const isWanted = tapFilter(table, filter);
  const days = new Set<number>();
  let judged = 0;
  let doubtful = 0;
  for (let row = 0; row < table.length; row += 1) {
    const what = table.kinds[table.columns.kind[row] ?? -1];
    if (what?.kind !== 'visit' || !isWanted(row)) continue;
    judged += what.pieces;
    if (what.doubtful) doubtful += what.pieces;
    days.add(table.columns.day[row] ?? -1);
  }
  const inOrder = table.days.filter((_, index) => days.has(index)).sort();
  const [first, last] = [inOrder[0], inOrder.at(-1)];
  return { judged, doubtful, days: first === undefined || last === undefined ? null : { first, last } };
}
