import type { BatchId, StageId } from '../log/ids.ts';
import { type PieceMinutes, pieceMinutes } from '../study/piece-minutes.ts';
import { pieceTimes, type StageTime } from '../study/piece-times.ts';
import { stageGaps } from '../study/stage-gaps.ts';
import type { StudyRoutes } from '../study/study-routes.ts';
import type { TapTable } from '../study/tap-table.ts';
import {
  type ConstraintQuestion,
  type ConstraintStudy,
  studyConstraint,
} from './constraint/constraint-study.ts';
import { type CostQuestion, type CostStudy, studyCosts } from './cost/cost-study.ts';
import { type ModelAsked, type PlannedModel, plannedModel } from './forecast/planned-model.ts';
import { type BatchReview, type ReviewQuestion, studyReviews } from './review/review-study.ts';
import { type HoursNeeded, hoursNeeded, type WorkAhead } from './starts/hours-needed.ts';
import { type StartAnswer, type StartAsked, studyStarts } from './starts/start-study.ts';

/** A variant of a batch. */
export interface PlanAsked extends StartAsked {
  readonly batch: BatchId;
}

/** What is asked of a log for plans. */
export interface PlanQuestions {
  readonly routes: StudyRoutes;
  readonly starts: readonly PlanAsked[];
  /** Stages that cure by themselves: hands have work there as far as loading was timed, and none otherwise. */
  readonly holds: readonly StageId[];
  /** Whether the times of each stage × wood are asked for. */
  readonly times?: boolean;
  /** Costs of a batch; left out where they are not asked for. */
  readonly costs?: CostQuestion;
  /** Loads, earnings and a mix of the variants that `starts` asks about; left out where they are not asked for. */
  readonly constraint?: ConstraintQuestion;
  /** What batches came to; left out where it is not asked for. */
  readonly reviews?: ReviewQuestion;
  /** A plan to be forecast; left out where that is not asked for. */
  readonly model?: ModelAsked;
}

export interface PlanStudy {
  /** In the order of the questions. */
  readonly starts: readonly StartAnswer[];
  /** Work ahead of each batch that was asked about, its further starts with it. */
  readonly hours: readonly ({ readonly batch: BatchId } & HoursNeeded)[];
  /** Empty where they were not asked for. */
  readonly times: readonly StageTime[];
  /** null where they were not asked for. */
  readonly costs: CostStudy | null;
  readonly constraint: ConstraintStudy | null;
  /** Empty where they were not asked for. */
  readonly reviews: readonly BatchReview[];
  /** null where it was not asked for. */
  readonly planned: PlannedModel | null;
  /** Pieces whose visit ended, in all: 0 is a shop without history. */
  readonly judged: number;
}

/** Answers what plans ask of a log. Throws RangeError for questions that cannot be asked; see `studyStarts`. */
export function planOf(
  table: TapTable,
  { routes, starts, holds, times = false, costs, constraint, reviews, model }: PlanQuestions,
): PlanStudy {
  const answers = studyStarts(table, { routes, asked: starts });
  const byBatch = new Map<BatchId, WorkAhead[]>();
  const furtherOf = new Map<string, number>();
  for (const [at, { key, batch, species, standing }] of starts.entries()) {
    const answer = answers[at];
    if (!answer) continue;
    const { beliefs, smallest } = answer;
    const further = smallest.kind === 'never-certain' ? 0 : smallest.point.starts;
    furtherOf.set(key, further);
    const work = { species, beliefs, standing, starts: further };
    byBatch.set(batch, [...(byBatch.get(batch) ?? []), work]);
  }
  const measured = pieceMinutes(stageGaps(table));
  const minutesOf: PieceMinutes = (stage, species) =>
    measured(stage, species) ?? (holds.includes(stage) ? 0 : undefined);
  return {
    starts: answers,
    hours: [...byBatch].map(([batch, work]) => ({ batch, ...hoursNeeded(work, minutesOf) })),
    times: times ? pieceTimes(table, {}) : [],
    costs: costs ? studyCosts(table, { ...costs, routes, minutesOf }) : null,
    constraint: constraint
      ? studyConstraint(table, { ...constraint, routes, minutesOf, starts: furtherOf })
      : null,
    reviews: reviews ? studyReviews(table, { ...reviews, routes, minutesOf }) : [],
    planned: model
      ? plannedModel(table, { routes, times: pieceTimes(table, {}), asked: model, starts: answers })
      : null,
    judged: judgedIn(table),
  };
}

function judgedIn({ kinds, columns, length }: TapTable): number {
  let judged = 0;
  for (let row = 0; row < length; row += 1) {
    const what = kinds[columns.kind[row] ?? -1];
    if (what?.kind === 'visit') judged += what.pieces;
  }
  return judged;
}
