import { useMemo } from 'preact/hooks';
import type { StudyState } from '../../app/study.ts';
import type { ShopDay } from '../../domain/log/ids.ts';
import type { ForecastHistory } from '../../domain/plan/forecast/forecast-history.ts';
import { historyAsked } from '../../domain/plan/forecast/history-asked.ts';
import { shopToPlan } from '../../domain/plan/forecast/shop-to-plan.ts';
import { batchTargets } from '../../domain/rollup/batch-targets.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import { useSession } from '../parts/app-context.ts';
import { latestOf } from '../parts/study-standing.tsx';
import { useStudy } from '../parts/use-study.ts';
import { type Counting, type ForecastPlan, forecastPlan } from './forecast-view.ts';
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
  };
  /** undefined while the log is read. */
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
    return {
      questions: { ...planQuestions(view.shop.registers, { batches: chosen, goal }), model },
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
  const history = last?.study.planned?.history ?? null;
  return { study: { state, again, history }, toAsk };
}

/** The batch with those before it: they are in the order of their due days. */
function planned(shop: Shop, batch: string | undefined) {
  const all = batchTargets(shop);
  return all.slice(0, 1 + all.findIndex((each) => each.batch === batch));
}
