import type { ShopDay, StageId } from '../../domain/log/ids.ts';
import { dayAfter } from '../../domain/log/zone.ts';
import { changedPlan, type PlanChange } from '../../domain/plan/forecast/changed-plan.ts';
import type { Compared } from '../../domain/plan/forecast/compared.ts';
import type { ForecastQuestion } from '../../domain/plan/forecast/forecast.ts';
import { hoursOf } from '../../domain/plan/forecast/shift-hours.ts';
import { daysOfHours } from '../../domain/plan/forecast/shop-to-plan.ts';
import { type Payback, payback } from '../../domain/plan/purchase/payback.ts';
import { shiftOn } from '../../domain/plan/working-hours.ts';
import { whatIfWords as words } from '../../words/what-if-words.ts';
import { readPrice } from '../parts/money.ts';
import type { PlanAbout } from './forecast-view.ts';

/** Changes as they are typed; what is empty changes nothing. Places in lists are told as text, as a select has them. */
export interface WhatIfDraft {
  readonly resource: string;
  readonly places: string;
  readonly hold: string;
  readonly cureHours: string;
  readonly stage: string;
  readonly percent: string;
  readonly saturday: string;
  readonly variant: string;
  readonly fewer: string;
  readonly price: string;
  readonly monthly: string;
}

export const emptyWhatIf: WhatIfDraft = {
  ...{ resource: '', places: '', hold: '', cureHours: '', stage: '', percent: '' },
  ...{ saturday: '', variant: '', fewer: '', price: '', monthly: '' },
};

type Typed = 'places' | 'cureHours' | 'percent' | 'saturday' | 'fewer' | 'price' | 'monthly';

/** What is wrong with what is typed, by field. */
export function whatIfProblems(draft: WhatIfDraft): Partial<Record<Typed, string>> {
  const { bad } = words;
  const within = (typed: string, [least, most]: readonly [number, number], isWhole: boolean) => {
    const read = numberTyped(typed);
    return (
      read === null ||
      (read !== undefined && read >= least && read <= most && (!isWhole || Number.isInteger(read)))
    );
  };
  return {
    ...(within(draft.places, [1, 9999], true) ? {} : { places: bad.places }),
    ...(within(draft.cureHours, [0, 2160], false) ? {} : { cureHours: bad.cure }),
    ...(within(draft.percent, [1, 95], false) ? {} : { percent: bad.percent }),
    ...(within(draft.saturday, [0.5, 14], false) ? {} : { saturday: bad.hours }),
    ...(within(draft.fewer, [1, 99_999], true) ? {} : { fewer: bad.fewer }),
    ...(readPrice(draft.price) === undefined ? { price: bad.price } : {}),
    ...(within(draft.monthly, [0, 99_999], true) ? {} : { monthly: bad.monthly }),
  };
}

/** A number as it is typed, with a point or a comma; null when nothing is, undefined when it is none. */
export function numberTyped(typed: string): number | null | undefined {
  const text = typed.trim().replace(',', '.');
  if (text === '') return null;
  return /^\d+(\.\d+)?$/.test(text) ? Number(text) : undefined;
}

/** The changes that are typed whole; those that lack their other half are left out. */
export function changesOf(
  draft: WhatIfDraft,
  at: { readonly today: ShopDay; readonly zone: string; readonly now: number },
): readonly PlanChange[] {
  const problems = whatIfProblems(draft);
  const read = (field: Typed) => (problems[field] === undefined ? (numberTyped(draft[field]) ?? null) : null);
  const places = read('places');
  const cure = read('cureHours');
  const percent = read('percent');
  const saturday = read('saturday');
  const fewer = read('fewer');
  const changes: PlanChange[] = [];
  if (draft.resource !== '' && places !== null)
    changes.push({ kind: 'places', resource: Number(draft.resource), capacity: places });
  if (draft.hold !== '' && cure !== null)
    changes.push({ kind: 'cure', stage: Number(draft.hold), minutes: Math.round(60 * cure) });
  if (draft.stage !== '' && percent !== null)
    changes.push({ kind: 'faster', stage: Number(draft.stage), percent });
  if (saturday !== null) changes.push({ kind: 'helper', hours: saturdays(saturday, at) });
  if (draft.variant !== '' && fewer !== null)
    changes.push({ kind: 'fewer', variant: Number(draft.variant), pieces: fewer });
  return changes;
}

/** Every Saturday from nine o'clock on. */
function saturdays(
  hours: number,
  { today, zone, now }: { readonly today: ShopDay; readonly zone: string; readonly now: number },
) {
  const nine = 9 * 60;
  const week = [
    null,
    null,
    null,
    null,
    null,
    { from: nine, to: nine + Math.round(60 * hours), breakMinutes: 0 },
    null,
  ];
  return Array.from({ length: daysOfHours }, (_, ahead) => dayAfter(today, ahead)).flatMap((day) => {
    const shift = shiftOn({ week }, day, zone);
    return shift && shift.to > now ? hoursOf(shift) : [];
  });
}

/** The question of the changed plan: all else, its luck above all, is the same. */
export function changedQuestion(
  question: ForecastQuestion,
  changes: readonly PlanChange[],
): ForecastQuestion {
  return { ...question, plan: changedPlan(question.plan, changes) };
}

/** Choices of the fields, by their place in the plan. */
export function whatIfChoices(
  { plan }: ForecastQuestion,
  { stages, keys }: Pick<PlanAbout, 'stages' | 'keys'>,
): {
  readonly resources: readonly { readonly value: string; readonly name: string }[];
  readonly holds: readonly { readonly value: string; readonly stage: StageId }[];
  readonly stages: readonly { readonly value: string; readonly stage: StageId }[];
  readonly variants: readonly { readonly value: string; readonly key: string }[];
} {
  const met = new Set(plan.variants.flatMap(({ steps }) => steps.map(({ stage }) => stage)));
  const all = stages.flatMap((stage, at) => (met.has(at) ? [{ value: String(at), stage, at }] : []));
  return {
    resources: plan.resources.map(({ name }, at) => ({ value: String(at), name })),
    holds: all.filter(({ at }) => plan.stages[at]?.kind === 'hold'),
    stages: all,
    variants: keys.map((key, at) => ({ value: String(at), key })),
  };
}

/**
 * When a purchase has paid for itself by the hours that it saves, at a rate of an hour in minor units; undefined while no price
 * is typed, nothing good is to come, or a number of pieces a month is missing.
 */
export function paybackOf(
  { price, monthly }: Pick<WhatIfDraft, 'price' | 'monthly'>,
  { hours, good, rate }: { readonly hours: Compared['hours']; readonly good: number; readonly rate: number },
): Payback | undefined {
  const [cost, aMonth] = [readPrice(price), numberTyped(monthly)];
  if (cost == null || aMonth == null || !(good > 0)) return undefined;
  const savedBy = (more: number) => (-more * rate) / good;
  return payback({
    price: cost,
    piecesAMonth: aMonth,
    savedEach: { low: savedBy(hours.high), likely: savedBy(hours.middle), high: savedBy(hours.low) },
  });
}
