import type { ShopDay } from '../../domain/log/ids.ts';
import type { Forecast } from '../../domain/plan/forecast/forecast.ts';
import type { PlanModel } from '../../domain/plan/forecast/plan-model.ts';
import type { PlanQuestions, PlanStudy } from '../../domain/plan/plan-study.ts';
import { planToKeep, type VariantToKeep } from '../../domain/plan/review/plan-to-keep.ts';
import type { BatchTargets, VariantTarget } from '../../domain/rollup/batch-targets.ts';
import type { BatchPlan } from '../../domain/set-up/batch-facts.ts';
import { factOf } from '../../domain/shop/registers.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import { demandsIn } from './constraint-view.ts';
import { costQuestion } from './cost-view.ts';
import { dayOf } from './forecast-view.ts';
import { keyOf } from './plan-question.ts';

/** What the log is asked for beside a forecast, so that it can be kept as the plan of its batch. */
export function keepQuestions(
  shop: Shop,
  { batch, starts }: { readonly batch: BatchTargets; readonly starts: PlanQuestions['starts'] },
): Pick<PlanQuestions, 'constraint' | 'reviews'> {
  const asked = new Set(starts.map(({ key }) => key));
  const costs = costQuestion(shop, batch);
  const { unitCosts, hourlyRate } = costs;
  return {
    reviews: { batches: [costs], unitCosts, hourlyRate },
    constraint: {
      variants: demandsIn(shop, batch).filter(({ key }) => asked.has(key)),
      ...{ holds: [], unitCosts, mix: null, until: { stretch: null, keys: [] } },
    },
  };
}

export interface ToKeep {
  readonly batch: BatchTargets;
  readonly forecast: Extract<Forecast, { kind: 'forecast' }>;
  readonly plan: PlanModel;
  /** Variants in the order of the plan. */
  readonly keys: readonly string[];
  readonly study: Pick<PlanStudy, 'constraint' | 'reviews'>;
  readonly today: ShopDay;
  readonly zone: string;
}

/** The plan of a batch that is forecast by itself. */
export function planOfForecast(shop: Shop, { batch, forecast, plan, today, zone, ...of }: ToKeep): BatchPlan {
  const { done, each } = forecast;
  const hands = each.handsMs.reduce((sum, ms) => sum + ms, 0) / Math.max(1, each.handsMs.length);
  return planToKeep({
    day: today,
    done: done.at85 === null ? null : dayOf(shop, done.at85, zone),
    minutes: {
      soFar: of.study.reviews.find((review) => review.batch === batch.batch)?.minutes ?? 0,
      // As the actual ones are counted: without what goes into no piece.
      ahead: hands / 60_000 / plan.pace.median,
    },
    variants: batch.variants.map((target) =>
      variantToKeep(shop, { target, key: keyOf(batch, target), forecast, plan, ...of }),
    ),
  });
}

function variantToKeep(
  shop: Shop,
  {
    target: { variant, finished, scrapped },
    key,
    keys,
    plan,
    forecast,
    study: { constraint },
  }: Pick<ToKeep, 'forecast' | 'plan' | 'keys' | 'study'> & {
    readonly target: VariantTarget;
    readonly key: string;
  },
): VariantToKeep {
  const at = keys.indexOf(key);
  const ends = forecast.ends[at];
  const fact = factOf(shop.registers, { register: 'variant', id: variant });
  const rate = factOf(shop.registers, { register: 'shop', id: 'shop' })?.hourCost ?? null;
  const parts = constraint?.demands.find((demand) => demand.key === key)?.parts;
  const minutes = constraint?.uses.find((use) => use.key === key)?.of.get('hands');
  const isKnown = parts?.kind === 'known' && minutes !== undefined && rate !== null;
  const { firstPrice = null, secondPrice = null } = fact ?? {};
  return {
    ...{ finished, scrapped },
    ahead: plan.lots.reduce(
      (sum, { variant: of, firsts, seconds }) => sum + (of === at ? firsts + seconds : 0),
      0,
    ),
    ...{ seconds: ends?.seconds ?? 0, lost: ends?.scrapped ?? 0 },
    costEach: isKnown ? parts.money + (minutes / 60) * rate : null,
    markdown: firstPrice === null || secondPrice === null ? null : firstPrice - secondPrice,
  };
}
