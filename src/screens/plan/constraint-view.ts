import { readWholeNumber } from '../../domain/command/whole-number.ts';
import { celsiusOf, cureTime } from '../../domain/hold/cure-time.ts';
import type { BatchId, ShopDay } from '../../domain/log/ids.ts';
import { dayAfter } from '../../domain/log/zone.ts';
import type {
  ConstraintQuestion,
  ConstraintStudy,
  LoadName,
  Stretch,
} from '../../domain/plan/constraint/constraint-study.ts';
import { contributionPerHour, type Earning } from '../../domain/plan/constraint/contribution-per-hour.ts';
import type { HoldAsked } from '../../domain/plan/constraint/hold-offer.ts';
import type { ResourceLoad } from '../../domain/plan/constraint/resource-load.ts';
import {
  contributionOf,
  type DemandAsked,
  type VariantDemand,
} from '../../domain/plan/constraint/variant-demand.ts';
import type { Amount, Missing } from '../../domain/plan/cost/amount.ts';
import type { PlanQuestions } from '../../domain/plan/plan-study.ts';
import { shiftsOfPeople } from '../../domain/plan/shifts-of-people.ts';
import { daysBetween, mostDaysAhead } from '../../domain/plan/working-hours.ts';
import type { BatchTargets } from '../../domain/rollup/batch-targets.ts';
import { holdGroups } from '../../domain/rollup/hold-groups.ts';
import { partCost } from '../../domain/rollup/part-cost.ts';
import { factOf, factsOf } from '../../domain/shop/registers.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import { keyOf, planQuestions } from './plan-question.ts';
import { minutesOfWeek, missingOf, shopHours } from './targets-view.ts';
import type { Moment } from './today-view.ts';

/** The stretch of time that a mix is for. */
export const mixTimes = ['week', 'until', 'own'] as const;
type MixTime = (typeof mixTimes)[number];

export interface ConstraintChoice {
  /** Until this one is due. */
  readonly batch: BatchId | undefined;
  readonly time: MixTime;
  /** Hours as they are typed. */
  readonly own: string;
  /** How many can be sold: what targets still want, or any number. */
  readonly sells: 'wanted' | 'any';
}

/** Hours as they are typed; undefined for what is none. */
export function readHours(typed: string): number | undefined {
  const read = readWholeNumber(typed, { least: 1, most: 10_000 });
  return read.ok ? read.value : undefined;
}

/** What the log is asked about loads, earnings and a mix. */
export function constraintQuestions(
  shop: Shop,
  {
    batches,
    choice,
    ...at
  }: Moment & { readonly batches: readonly BatchTargets[]; readonly choice: ConstraintChoice },
): PlanQuestions {
  const base = planQuestions(shop.registers, { batches, goal: 'firsts' });
  const asked = new Set(base.starts.map(({ key }) => key));
  const chosen = batches.find(({ batch }) => batch === choice.batch) ?? batches[0];
  const due = chosen?.due ?? null;
  const until = due === null ? null : stretchTo(shop, due, at);
  const dueBy = batches.filter(
    ({ batch, due: other }) => batch === chosen?.batch || (due !== null && other !== null && other <= due),
  );
  const stretch = mixStretch(shop, { choice, until, at });
  const constraint: ConstraintQuestion = {
    variants: batches.flatMap((batch) => demandsIn(shop, batch).filter(({ key }) => asked.has(key))),
    holds: holdsOf(shop),
    unitCosts: factsOf(shop.registers, 'part').map(({ id }) => ({ part: id, cost: partCost(shop, id) })),
    until: {
      stretch: until,
      keys: dueBy.flatMap((batch) => batch.variants.map((target) => keyOf(batch, target))),
    },
    mix: stretch && {
      stretch,
      most:
        choice.sells === 'any'
          ? null
          : new Map(
              batches.flatMap((batch) =>
                batch.variants.map((target) => [keyOf(batch, target), missingOf(target)] as const),
              ),
            ),
    },
  };
  return { ...base, constraint };
}

/** What is asked of the variants of a batch. */
export function demandsIn(shop: Shop, batch: BatchTargets): readonly DemandAsked[] {
  return batch.variants.flatMap((target): DemandAsked[] => {
    const { variant, species, inFlight } = target;
    const fact = factOf(shop.registers, { register: 'variant', id: variant });
    if (!fact || species === undefined) return [];
    const { bill, firstPrice, secondPrice } = fact;
    return [
      {
        ...{ key: keyOf(batch, target), batch: batch.batch, variant, species, route: batch.route },
        ...{ bill, firstPrice, secondPrice },
        standing: inFlight.map(({ stage, pieces }) => ({ stage, pieces: pieces.first + pieces.second })),
      },
    ];
  });
}

function holdsOf(shop: Shop): readonly HoldAsked[] {
  const celsius = celsiusOf(shop.registers);
  return holdGroups(shop).flatMap(({ key, limit, stages }): HoldAsked[] => {
    if (limit.limit === null) return [];
    const cures = stages.flatMap((stage) => {
      const fact = factOf(shop.registers, { register: 'stage', id: stage });
      return fact?.kind === 'hold' ? [{ stage, cure: cureTime(fact, celsius).recommended * 60_000 }] : [];
    });
    return [{ key, capacity: limit.limit, stages: cures }];
  });
}

/** From now to the end of a day; null where hours are not known, or the day is too far off. */
function stretchTo(shop: Shop, to: ShopDay, { now, today, zone }: Moment): Stretch | null {
  const days = daysBetween(today, to) + 1;
  if (days > mostDaysAhead) return null;
  const hands = shopHours(shop.registers).between({ from: today, to });
  const people = factsOf(shop.registers, 'person').flatMap(({ fact }) => (fact.retired ? [] : [fact]));
  const shifts = shiftsOfPeople(people, { from: today, days: Math.max(0, days), zone });
  if (hands === undefined || !shifts) return null;
  const end = shifts.at(-1)?.to ?? now;
  return { hands, working: { now, until: Math.max(now, end), shifts }, times: 1 };
}

function mixStretch(
  shop: Shop,
  {
    choice,
    until,
    at,
  }: { readonly choice: ConstraintChoice; readonly until: Stretch | null; readonly at: Moment },
): Stretch | null {
  if (choice.time === 'until') return until;
  const week = stretchTo(shop, dayAfter(at.today, 6), at);
  if (choice.time === 'week') return week;
  const own = readHours(choice.own);
  if (own === undefined) return null;
  const usual = minutesOfWeek(shopHours(shop.registers), at.today) ?? 0;
  // Places have as much of own hours as they have of a week's: without those nothing is known of them.
  return usual > 0 && week
    ? { ...week, hands: 60 * own, times: (60 * own) / usual }
    : { hands: 60 * own, working: null, times: 1 };
}

export type Load = ResourceLoad<string, LoadName>;

/** What is most loaded; undefined where nothing is known to be. */
export const constraintOf = (study: ConstraintStudy): Load | undefined =>
  study.loads?.find(({ ratio }) => ratio > 0);

/** The stage that takes most of the hands. */
export const mostOfHands = (study: ConstraintStudy): Load | undefined =>
  study.loads?.find(({ resource, ratio }) => resource.startsWith('hands/') && ratio > 0);

/** What a variant takes of a resource at one stage. */
export interface BehindRow {
  readonly key: string;
  readonly stage: VariantDemand['stages'][number]['stage'];
  /** Visits ahead. */
  readonly pieces: number;
  /** Of the resource, for a visit; undefined while not known. */
  readonly each: number | undefined;
}

/** What a load is made up of. */
export function behindLoad(
  { demands, offers }: ConstraintStudy,
  { name, keys }: { readonly name: LoadName; readonly keys: readonly string[] },
): readonly BehindRow[] {
  const offer = offers.find(({ key }) => key === name);
  return demands
    .filter(({ key }) => keys.includes(key))
    .flatMap(({ key, stages }) =>
      stages.flatMap(({ stage, ahead, minutes }): BehindRow[] => {
        const takes = offer?.stages.find((each) => each.stage === stage)?.takes;
        const isIts = offer ? takes !== undefined : name === 'hands' || name === `hands/${stage}`;
        return isIts && ahead > 0 ? [{ key, stage, pieces: ahead, each: offer ? takes : minutes }] : [];
      }),
    );
}

/** A variant, and what an hour of a resource earns with it where all is known. */
export interface EarningRow {
  readonly demand: VariantDemand;
  readonly contribution: Amount;
  readonly minutes: number | undefined;
  readonly earning: Earning<string> | undefined;
}

/** All variants by what an hour of a resource earns with them; those of which something is missing last. */
export function earningRows({ demands, uses }: ConstraintStudy, name: LoadName): readonly EarningRow[] {
  const rows = demands.map((demand) => {
    const of = uses.find(({ key }) => key === demand.key)?.of;
    const minutes = of?.has(name) ? of.get(name) : 0;
    return { demand, contribution: contributionOf(demand), minutes };
  });
  const ranked = contributionPerHour(
    rows.flatMap(({ demand, contribution, minutes }) =>
      contribution.kind === 'known' && minutes !== undefined
        ? [{ variant: demand.key, contribution: contribution.money, minutes }]
        : [],
    ),
  );
  const place = new Map(ranked.map(({ variant }, at) => [variant, at]));
  return rows
    .map((row) => ({ ...row, earning: ranked.find(({ variant }) => variant === row.demand.key) }))
    .sort((a, b) => (place.get(a.demand.key) ?? rows.length) - (place.get(b.demand.key) ?? rows.length));
}

/** All that has to be said before every load and earning is known. */
export function missingHere({ demands }: ConstraintStudy): readonly Missing[] {
  const all = demands.flatMap((demand): readonly Missing[] => {
    const contribution = contributionOf(demand);
    return [
      ...(contribution.kind === 'known' ? [] : contribution.missing),
      ...demand.stages.flatMap(({ stage, minutes, perOut }): Missing[] =>
        minutes === undefined && perOut > 0 ? [{ what: 'minutes', stage }] : [],
      ),
    ];
  });
  return [...new Map(all.map((each) => [Object.values(each).join('|'), each])).values()];
}
