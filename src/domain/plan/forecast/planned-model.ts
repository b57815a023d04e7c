import type { StageTime } from '../../study/piece-times.ts';
import type { StudyRoutes } from '../../study/study-routes.ts';
import type { TapTable } from '../../study/tap-table.ts';
import type { StartAnswer } from '../starts/start-study.ts';
import { type ForecastHistory, forecastHistory, type HistoryAsked } from './forecast-history.ts';
import { type ModelOfShop, modelOfShop } from './model-of-shop.ts';
import type { PlannedShop } from './shop-to-plan.ts';

/** What a log is asked for a plan: the half of the plan that the shop knows goes with the question. */
export interface ModelAsked {
  readonly history: HistoryAsked;
  readonly shop: PlannedShop;
  /** Whether what is advised to be started is planned too. */
  readonly withStarts: boolean;
}

export interface PlannedModel {
  readonly model: ModelOfShop;
  readonly history: ForecastHistory;
  /** Pieces that are planned and not started yet. */
  readonly started: number;
}

/** The plan of a shop by its log: made where the log is read, since what is believed takes a while to work out. */
export function plannedModel(
  table: TapTable,
  {
    asked,
    starts,
    ...known
  }: {
    readonly routes: StudyRoutes;
    readonly times: readonly StageTime[];
    readonly asked: ModelAsked;
    readonly starts: readonly StartAnswer[];
  },
): PlannedModel {
  const history = forecastHistory(table, { ...known, asked: asked.history });
  return withHistory(asked, { history, starts });
}

/** The two halves of a plan together. */
export function withHistory(
  { shop, withStarts, history: { each } }: ModelAsked,
  { history, starts }: { readonly history: ForecastHistory; readonly starts: readonly StartAnswer[] },
): PlannedModel {
  const further = starts.flatMap(({ key, smallest }) =>
    !withStarts || smallest.kind === 'never-certain' || smallest.point.starts === 0
      ? []
      : [{ variant: key, pieces: smallest.point.starts, each, at: shop.now }],
  );
  return {
    model: modelOfShop({ ...shop, ...history, starts: further }),
    history,
    started: further.reduce((sum, { pieces }) => sum + pieces, 0),
  };
}
