import type { ShopDay } from '../../domain/log/ids.ts';
import { dayAfter } from '../../domain/log/zone.ts';
import type { PlanStudy } from '../../domain/plan/plan-study.ts';
import { mostWanted } from '../../domain/plan/starts/most-wanted.ts';
import {
  daysBetween,
  type Hours,
  mostDaysAhead,
  workingMinutesBetween,
} from '../../domain/plan/working-hours.ts';
import { type BatchTargets, flyingOf, type VariantTarget } from '../../domain/rollup/batch-targets.ts';
import { factOf, factsOf, type Registers } from '../../domain/shop/registers.ts';

/** Sums over the variants of a batch. */
export interface TargetSums {
  readonly wanted: number;
  readonly firsts: number;
  readonly seconds: number;
  readonly flying: { readonly first: number; readonly second: number };
  readonly scrapped: number;
  readonly missing: number;
}

export function sumsOf(targets: readonly VariantTarget[]): TargetSums {
  return targets.reduce<TargetSums>(
    (sum, target) => {
      const { first, second } = flyingOf(target);
      return {
        wanted: sum.wanted + target.wanted,
        firsts: sum.firsts + target.finished.first,
        seconds: sum.seconds + target.finished.second,
        flying: { first: sum.flying.first + first, second: sum.flying.second + second },
        scrapped: sum.scrapped + target.scrapped,
        missing: sum.missing + missingOf(target),
      };
    },
    { wanted: 0, firsts: 0, seconds: 0, flying: { first: 0, second: 0 }, scrapped: 0, missing: 0 },
  );
}

/** Firsts that are not finished yet, whatever is in work. */
export const missingOf = ({ wanted, finished }: VariantTarget): number =>
  Math.max(0, wanted - finished.first);

export interface ShopHours {
  /** Minutes in a range of days by all whose hours are said; undefined where nobody's are. */
  readonly between: (range: { readonly from: ShopDay; readonly to: ShopDay }) => number | undefined;
  /** Names of those whose hours are not said. */
  readonly unsaid: readonly string[];
}

/** The hours of everybody who works in the shop. */
export function shopHours(registers: Registers): ShopHours {
  const zone = factOf(registers, { register: 'shop', id: 'shop' })?.zone ?? 'UTC';
  const people = factsOf(registers, 'person').filter(({ fact }) => !fact.retired);
  const said: readonly Hours[] = people.flatMap(({ fact }) => (fact.week === undefined ? [] : [fact]));
  return {
    unsaid: people.flatMap(({ fact }) => (fact.week === undefined ? [fact.name] : [])),
    between: (range) =>
      said.length === 0
        ? undefined
        : said.reduce((sum, person) => sum + (workingMinutesBetween(person, range, zone) ?? 0), 0),
  };
}

/** Minutes of the seven days that begin today. */
export const minutesOfWeek = ({ between }: ShopHours, today: ShopDay): number | undefined =>
  between({ from: today, to: dayAfter(today, 6) });

export interface HoursRow {
  readonly batch: BatchTargets;
  /** Minutes until the end of the due day; null where there is none, undefined where hours are not known. */
  readonly until: number | null | undefined;
  /** Undefined while the log is read. */
  readonly needed: PlanStudy['hours'][number] | undefined;
  readonly verdict: 'enough' | 'short' | 'unknown' | 'past' | 'done';
}

/** The hours that each batch has and needs. What is only partly known is enough for nothing, but can be too little. */
export function hoursRows(
  batches: readonly BatchTargets[],
  {
    hours,
    today,
    study,
  }: { readonly hours: ShopHours; readonly today: ShopDay; readonly study: PlanStudy | null },
): readonly HoursRow[] {
  return batches.map((batch) => {
    const { due } = batch;
    const until =
      due === null || daysBetween(today, due) > mostDaysAhead
        ? null
        : hours.between({ from: today, to: due });
    // A target that is too large to be reckoned would be missing in the sum.
    const isWhole = batch.variants.every(({ wanted }) => wanted <= mostWanted);
    const needed = isWhole ? study?.hours.find((each) => each.batch === batch.batch) : undefined;
    return { batch, until, needed, verdict: verdictOf({ batch, until, needed, today }) };
  });
}

function verdictOf({
  batch,
  until,
  needed,
  today,
}: Omit<HoursRow, 'verdict'> & { readonly today: ShopDay }): HoursRow['verdict'] {
  if (needed && needed.minutes === 0 && needed.unknown.length === 0) return 'done';
  if (batch.due !== null && batch.due < today) return 'past';
  if (until == null || !needed) return 'unknown';
  if (needed.minutes > until) return 'short';
  return needed.unknown.length > 0 ? 'unknown' : 'enough';
}
