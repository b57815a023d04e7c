import { useMemo, useRef } from 'preact/hooks';
import type { StudyState } from '../../app/study.ts';
import type { ShopDay } from '../../domain/log/ids.ts';
import type { ForecastHistory } from '../../domain/plan/forecast/forecast-history.ts';
import { historyAsked } from '../../domain/plan/forecast/history-asked.ts';
import { shopToPlan } from '../../domain/plan/forecast/shop-to-plan.ts';
import type { PlanStudy } from '../../domain/plan/plan-study.ts';
import { batchTargets } from '../../domain/rollup/batch-targets.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import { useSession } from '../parts/app-context.ts';
import { latestOf } from '../parts/study-standing.tsx';
import { useStudy } from '../parts/use-study.ts';
import { type Counting, type ForecastPlan, forecastPlan } from './forecast-view.ts';
import { keepQuestions } from './keep-plan-view.ts';
import { type Goal, planQuestions } from './plan-question.ts';

export interface PlanChoice {
  readonly batch: string | undefined;
  readonly goal: Goal;
  readonly counting: Counting;
  readonly until: ShopDay | undefined;
}

export interface PlanToAsk {
  readonly study: {
    readonly state: StudyState<'plan'>;
    readonly again: () => void;
    readonly history: ForecastHistory | null;
    /** What is asked besides, of a batch that is planned alone. */
    readonly toKeep: Pick<PlanStudy, 'constraint' | 'reviews'> | null;
  };
  /** undefined while the log is read for the first time; while it is read again, that of before. */
  readonly toAsk: ForecastPlan | undefined;
}

/** Reads the log for a forecast of a batch, and of those that are due before it, and makes the plan that is to be asked. */
export function usePlanToAsk({ batch, goal, counting, until }: PlanChoice): PlanToAsk {
  const session = useSession();
  const view = session.view.value;
  // Other ones whenever the view is: the shop behind it changes in place.
  const { questions, shop, moment, batches } = useMemo(() => {
    const at = { now: session.now(), today: session.today(), zone: session.zone() };
    const chosen = planned(view.shop, batch);
    const half = shopToPlan(view.shop, { ...at, goal, batches: chosen });
    const model = { history: historyAsked(view.shop, at), shop: half, withStarts: counting === 'starts' };
    const base = planQuestions(view.shop.registers, { batches: chosen, goal });
    // Planned with others, hours and days are not those of one batch.
    const alone = chosen.length === 1 ? chosen[0] : undefined;
    const toKeep = alone && keepQuestions(view.shop, { batch: alone, starts: base.starts });
    return {
      questions: { ...base, ...toKeep, model },
      ...{ shop: half, moment: at, batches: chosen },
    };
  }, [view, batch, goal, counting, session]);
  const { state, again } = useStudy('plan', questions);
  const last = latestOf(state);
  // An answer to other questions is of another plan.
  const found = last?.questions === questions ? last.study.planned : null;
  const toAsk = useMemo(
    () =>
      found ? forecastPlan(view.shop, { ...moment, goal, until, batches, shop, planned: found }) : undefined,
    [found, view, moment, goal, until, batches, shop],
  );
  // What was made of the same choice stays while the log is read again: a page that empties at each tap loses its reader.
  const choice = JSON.stringify([batch, goal, counting, until]);
  const before = useRef<{ choice: string; toAsk: ForecastPlan }>(undefined);
  if (toAsk) before.current = { choice, toAsk };
  const stays = before.current?.choice === choice ? before.current.toAsk : undefined;
  const history = last?.study.planned?.history ?? null;
  const toKeep = last?.questions.reviews ? last.study : null;
  return { study: { state, again, history, toKeep }, toAsk: toAsk ?? stays };
}

/** The batch with those before it: they are in the order of their due days. */
function planned(shop: Shop, batch: string | undefined) {
  const all = batchTargets(shop);
  return all.slice(0, 1 + all.findIndex((each) => each.batch === batch));
}
