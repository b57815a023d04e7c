import { readId, type ShopDay, type StageId, shopDayText } from '../../domain/log/ids.ts';
import { dayAfter, shopDay } from '../../domain/log/zone.ts';
import type { Forecast, ForecastQuestion } from '../../domain/plan/forecast/forecast.ts';
import type { ForecastHistory } from '../../domain/plan/forecast/forecast-history.ts';
import { meanOf } from '../../domain/plan/forecast/minutes-of-good.ts';
import type { PlanNote } from '../../domain/plan/forecast/model-of-shop.ts';
import type { PlanModel } from '../../domain/plan/forecast/plan-model.ts';
import type { PlannedModel } from '../../domain/plan/forecast/planned-model.ts';
import { endOfDay, type PlannedShop, planKey } from '../../domain/plan/forecast/shop-to-plan.ts';
import { mostWanted } from '../../domain/plan/starts/most-wanted.ts';
import type { BatchTargets, VariantTarget } from '../../domain/rollup/batch-targets.ts';
import { factOf } from '../../domain/shop/registers.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import type { Goal } from './plan-question.ts';
import type { Moment } from './today-view.ts';

/** The same luck on every tablet, and for every plan that is compared with another. */
const seed = 1;
const [fewestReplications, mostReplications] = [200, 2000];
/** Visits of pieces that are worked off in one forecast, about: with more pieces there are fewer replications. */
const mostWork = 12_000_000;
/** Days ahead whose ends are each a mark; beyond them each week is one. */
const [dailyMarks, lastMark] = [92, 366];

/** A day that good ones can be counted at; undefined for what is none, is over, or lies too far ahead. */
export function dayTyped(text: string, today: ShopDay): ShopDay | undefined {
  const day = readId(shopDayText, text);
  return day !== null && day >= today && day <= dayAfter(today, lastMark) ? day : undefined;
}

/** Whether a forecast counts on pieces that have yet to be started. */
export type Counting = 'starts' | 'in-work';

export interface ForecastAsked extends Moment {
  /** Planned together, the batch that is asked about last. */
  readonly batches: readonly BatchTargets[];
  readonly goal: Goal;
  /** What the log was asked, and what it made of that. */
  readonly shop: PlannedShop;
  readonly planned: PlannedModel;
  /** A day that is asked about besides the usual ones. */
  readonly until: ShopDay | undefined;
}

/** What the forecast is asked, or why it cannot be. */
export type ForecastPlan =
  | { readonly kind: 'ask'; readonly question: ForecastQuestion; readonly about: PlanAbout }
  | { readonly kind: 'cannot'; readonly why: 'no-history' | 'nothing' };

/** What is to be told beside a forecast. */
export interface PlanAbout {
  readonly notes: readonly PlanNote[];
  /** Variants that are planned, in the order of the plan. */
  readonly keys: readonly string[];
  /** Stages, in the order of the plan. */
  readonly stages: readonly StageId[];
  /** Pieces that are counted on and not started yet. */
  readonly starts: number;
  /** Variants that are left out, since nobody has said their wood, or their batch has no route. */
  readonly unplanned: readonly VariantTarget[];
  /** Variants that want more than is reckoned: what is to be started of them is not known. */
  readonly tooMany: readonly VariantTarget[];
}

export function forecastPlan(shop: Shop, asked: ForecastAsked): ForecastPlan {
  const { batches, goal, planned } = asked;
  if (planned.model.kind === 'no-history') return { kind: 'cannot', why: 'no-history' };
  const { plan, notes } = planned.model;
  if (plan.lots.length === 0) return { kind: 'cannot', why: 'nothing' };
  const targets = batches.flatMap(({ route, variants }) =>
    variants.map((target) => ({ target, isPlanned: target.species !== undefined && route.length > 0 })),
  );
  const last = batches.at(-1);
  return {
    kind: 'ask',
    question: {
      ...{ plan, seed, replications: replicationsFor(plan), marks: marksOf(shop, asked) },
      confidence: (last?.chance ?? 90) / 100,
    },
    about: {
      ...{ notes, keys: asked.shop.variants.map(({ id }) => id) },
      stages: asked.shop.stages.map(({ id }) => id),
      starts: planned.started,
      unplanned: targets.flatMap(({ target, isPlanned }) => (isPlanned ? [] : [target])),
      tooMany: targets.flatMap(({ target }) =>
        target.wanted > mostWanted && missingOf(target, goal) > 0 ? [target] : [],
      ),
    },
  };
}

const missingOf = ({ wanted, finished }: VariantTarget, goal: Goal) =>
  wanted - finished.first - (goal === 'firsts' ? 0 : finished.second);

/** The more pieces, the fewer times the plan is worked off: many pieces are their own average. */
function replicationsFor({ lots, variants }: PlanModel): number {
  const work = lots.reduce(
    (sum, { variant, step, firsts, seconds }) =>
      sum + (firsts + seconds) * ((variants[variant]?.steps.length ?? 0) - step),
    0,
  );
  const fits = Math.floor(mostWork / Math.max(1, work) / 100) * 100;
  return Math.min(mostReplications, Math.max(fewestReplications, fits));
}

const dayStartOf = ({ registers }: Shop) =>
  factOf(registers, { register: 'shop', id: 'shop' })?.dayStartHour ?? 0;

/** The ends of the days to come, of the day that is asked about, and of the day that a batch is due. */
function marksOf(shop: Shop, { today, zone, now, until, batches }: ForecastAsked): readonly number[] {
  const startHour = dayStartOf(shop);
  const days = Array.from({ length: lastMark + 1 }, (_, ahead) => ahead)
    .filter((ahead) => ahead <= dailyMarks || (ahead - dailyMarks) % 7 === 0)
    .map((ahead) => dayAfter(today, ahead));
  const asked = [until, ...batches.map(({ due }) => due)].filter(
    (day) => day != null && day >= today && day <= dayAfter(today, lastMark),
  );
  const ends = new Set([...days, ...asked].map((day) => day && endOfDay(day, { zone, startHour })));
  return [...ends]
    .filter((at) => at != null)
    .filter((at) => at > now)
    .sort((a, b) => a - b);
}

/** The shop day on which a moment lies; a shift that ends at the very end of a day is of that day. */
export const dayOf = (shop: Shop, at: number, zone: string): ShopDay =>
  shopDay(at - 1, { zone, startHour: dayStartOf(shop) });

/** What a forecast says of one variant by the end of a day. */
export interface PromiseRow {
  readonly target: VariantTarget;
  readonly safe: number;
  readonly chance: number;
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

type Forecasted = Extract<Forecast, { kind: 'forecast' }>;

/** Good ones of each planned variant of a batch by the end of a day, and of all that is planned; undefined past the last mark. */
export function promisesBy(
  shop: Shop,
  {
    forecast: { marks },
    keys,
    batch,
    day,
    zone,
  }: {
    readonly forecast: Forecasted;
    readonly keys: readonly string[];
    readonly batch: BatchTargets;
    readonly day: ShopDay;
    readonly zone: string;
  },
): { readonly rows: readonly PromiseRow[]; readonly all: Omit<PromiseRow, 'target'> } | undefined {
  const end = endOfDay(day, { zone, startHour: dayStartOf(shop) });
  const mark = marks.find(({ at }) => at === end);
  if (!mark) return undefined;
  const said = ({ fan: [low, , middle, , high], safe, chance }: (typeof mark)['all']) => ({
    ...{ safe, chance, low, middle, high },
  });
  return {
    rows: batch.variants.flatMap((target) => {
      const good = mark.variants[keys.indexOf(planKey(batch.batch, target.variant))];
      return good ? [{ target, ...said(good) }] : [];
    }),
    all: said(mark.all),
  };
}

/** How a day lies to the finishing dates. */
type Likeliness = 'before' | 'at50' | 'at85' | 'at95' | 'after';

/** A day of the calendar, or a week where there are too many days. */
interface StripCell {
  readonly from: ShopDay;
  readonly likeliness: Likeliness;
  /** What falls on it. */
  readonly marks: readonly ('today' | 'due' | 'at50' | 'at85' | 'at95')[];
}

export interface Strip {
  readonly each: 'day' | 'week';
  readonly cells: readonly StripCell[];
}

/** Days that are drawn singly, in whole weeks. */
const mostDays = 70;
const mostWeeks = 110;

/** The calendar from the Monday before today to the week after the last date that is known. */
export function stripOf({
  today,
  due,
  at50,
  at85,
  at95,
}: {
  readonly today: ShopDay;
  readonly due: ShopDay | null;
} & Readonly<Record<'at50' | 'at85' | 'at95', ShopDay | null>>): Strip {
  const dates = { today, due, at50, at85, at95 };
  const last = Object.values(dates).reduce<ShopDay>((a, b) => (b !== null && b > a ? b : a), today);
  const monday = mondayOf(today);
  let days = 7;
  while (dayAfter(monday, days - 1) < last && days < 7 * mostWeeks) days += 7;
  const each = days > mostDays ? 'week' : 'day';
  const long = each === 'week' ? 7 : 1;
  return {
    each,
    cells: Array.from({ length: days / long }, (_, at) => {
      const [from, to] = [dayAfter(monday, long * at), dayAfter(monday, long * at + long - 1)];
      return {
        from,
        likeliness: likelinessOf({ from, to }, dates),
        marks: (['today', 'due', 'at50', 'at85', 'at95'] as const).filter((name) => {
          const on = dates[name];
          return on !== null && from <= on && on <= to;
        }),
      };
    }),
  };
}

function likelinessOf(
  { from, to }: { readonly from: ShopDay; readonly to: ShopDay },
  { at50, at85, at95 }: Readonly<Record<'at50' | 'at85' | 'at95', ShopDay | null>>,
): Likeliness {
  if (at50 === null || to < at50) return 'before';
  if (at85 === null || to < at85) return 'at50';
  if (at95 === null || to < at95) return 'at85';
  return from <= at95 ? 'at95' : 'after';
}

function mondayOf(day: ShopDay): ShopDay {
  return dayAfter(day, -((new Date(`${day}T00:00:00Z`).getUTCDay() + 6) % 7));
}

/** What a plan has of a stage, and how much of that was seen. */
export interface StageBehind {
  readonly stage: StageId;
  readonly minutes: number;
  readonly timed: number;
  readonly lost: number;
  readonly back: number;
  readonly tried: number;
  /** Of a hold. */
  readonly cureMinutes: number | null;
}

/** What each stage of a plan rests on: means over what goes through it, and the pieces that they were learnt from. */
export function stagesBehind(
  { stages, variants }: PlanModel,
  {
    ids,
    history: { times, trials },
  }: { readonly ids: readonly StageId[]; readonly history: ForecastHistory },
): readonly StageBehind[] {
  return stages.flatMap((stage, at): StageBehind[] => {
    const [id] = ids.slice(at);
    const steps = variants.flatMap((variant) => variant.steps.filter((step) => step.stage === at));
    if (id === undefined || steps.length === 0) return [];
    const mean = (of: (step: (typeof steps)[number]) => number) =>
      steps.reduce((sum, step) => sum + of(step), 0) / steps.length;
    const isHold = stage.kind === 'hold';
    return [
      {
        stage: id,
        minutes: mean(({ minutes, loading }) => minutes.median + (isHold ? loading.median : 0)),
        timed: sumBy(
          times.filter((each) => each.stage === id),
          ({ time }) => time.pieces,
        ),
        lost: mean(({ lost }) => meanOf(lost)),
        back: mean((step) => meanOf(step.back)),
        tried: sumBy(
          trials.flatMap((wood) => wood.stages.filter((each) => each.stage === id)),
          ({ finished }) => finished.atRisk,
        ),
        cureMinutes: isHold ? stage.cureMinutes : null,
      },
    ];
  });
}

function sumBy<Item>(items: readonly Item[], of: (item: Item) => number): number {
  return items.reduce((sum, item) => sum + of(item), 0);
}
