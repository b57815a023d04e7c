import type { OutcomeKind } from '../log/event.ts';
import type { PartId, ReasonId, ShopDay, SpeciesId, StageId } from '../log/ids.ts';
import type { Verdict } from '../log/stores-facts.ts';
import { dayAfter } from '../log/zone.ts';
import { addTo, type Counter, countOf } from '../shop/counter.ts';
import { blankSheet, type DaySheet, isBlank } from '../shop/days.ts';
import type { Shop } from '../shop/shop.ts';

/** A number of the day, of the day before, and of the average working day; null is not yet known. */
export interface Compared {
  readonly day: number;
  readonly before: number;
  readonly average: number | null;
}

export interface StageDay {
  readonly stage: StageId;
  readonly passed: Compared;
  /** Milliseconds of work inside spells. */
  readonly worked: Compared;
}

export interface DayFlaw {
  readonly stage: StageId;
  readonly species: SpeciesId;
  readonly reason: ReasonId;
  readonly outcome: OutcomeKind;
  readonly pieces: number;
}

/** Deliveries of one part of which samples were checked on a day. */
export interface DaySample {
  readonly part: PartId;
  readonly accepted: number;
  readonly refused: number;
}

export interface DayReport {
  readonly day: ShopDay;
  readonly stages: readonly StageDay[];
  readonly flaws: readonly DayFlaw[];
  readonly samples: readonly DaySample[];
  readonly scrapped: Compared;
  readonly seconds: Compared;
  readonly finishedFirsts: Compared;
  readonly finishedSeconds: Compared;
  readonly made: Compared;
  readonly worked: Compared;
  /** Earlier days on which something was done; the average is over them. */
  readonly workingDays: number;
  /** Taps of the day that were made while a tablet's clock was in doubt. */
  readonly doubtful: number;
}

const outcome = (kind: OutcomeKind) => (sheet: DaySheet) =>
  sumWhere(sheet.outcomes, (key) => key.endsWith(`|${kind}`));

/** What was done on `day`, beside the calendar day before it and the average of the earlier working days. */
export function dayReport(shop: Shop, day: ShopDay): DayReport {
  const { days } = shop;
  const sheet = days.get(day) ?? blankSheet();
  const before = days.get(dayAfter(day, -1)) ?? blankSheet();
  const { sum: earlier, days: workingDays } = sumBefore(shop, day);
  const compare = (measure: (sheet: DaySheet) => number): Compared => ({
    day: measure(sheet),
    before: measure(before),
    average: workingDays === 0 ? null : measure(earlier) / workingDays,
  });
  const stages = new Set(
    [sheet, before, earlier].flatMap((each) => [...each.passed.keys(), ...each.worked.keys()]),
  );
  return {
    day,
    stages: [...stages].map((stage) => ({
      stage,
      passed: compare((each) => countOf(each.passed, stage)),
      worked: compare((each) => countOf(each.worked, stage)),
    })),
    flaws: [...sheet.flawed].map(([key, pieces]) => {
      const [stage, species, reason, kind] = key.split('|') as [StageId, SpeciesId, ReasonId, OutcomeKind];
      return { stage, species, reason, outcome: kind, pieces };
    }),
    samples: samplesOf(sheet),
    scrapped: compare(outcome('scrapped')),
    seconds: compare(outcome('second')),
    finishedFirsts: compare((each) => countOf(each.finished, 'first')),
    finishedSeconds: compare((each) => countOf(each.finished, 'second')),
    made: compare((each) => sumWhere(each.made, () => true)),
    worked: compare((each) => sumWhere(each.worked, () => true)),
    workingDays,
    doubtful: countOf(sheet.doubtful, 'taps'),
  };
}

function samplesOf({ sampled }: DaySheet): readonly DaySample[] {
  const parts = new Set([...sampled.keys()].map((key) => key.split('|')[0] as PartId));
  const count = (part: PartId, verdict: Verdict) => countOf(sampled, `${part}|${verdict}`);
  return [...parts].map((part) => ({
    part,
    accepted: count(part, 'accepted'),
    refused: count(part, 'refused'),
  }));
}

/**
 * All sheets before a day in one, and how many they are: measures are sums, so that their average needs no more. It is
 * what all days have without those from this one on, or the earlier ones added up where they are fewer.
 */
function sumBefore({ days, allDays }: Shop, day: ShopDay): { readonly sum: DaySheet; readonly days: number } {
  const earlier: DaySheet[] = [];
  const others: DaySheet[] = [];
  for (const [each, sheet] of days) (each < day ? earlier : others).push(sheet);
  const sum = blankSheet();
  if (earlier.length <= others.length) for (const sheet of earlier) addAll(sum, { sheet, times: 1 });
  else {
    addAll(sum, { sheet: allDays, times: 1 });
    for (const sheet of others) addAll(sum, { sheet, times: -1 });
  }
  return { sum, days: earlier.filter(hasWork).length };
}

/** A day on which a delivery was checked and no more is no working day. */
function hasWork(sheet: DaySheet): boolean {
  return !isBlank({ ...sheet, sampled: new Map() });
}

function addAll(sum: DaySheet, { sheet, times }: { sheet: DaySheet; times: 1 | -1 }): void {
  for (const name of Object.keys(sum) as (keyof DaySheet)[]) {
    const counter = sum[name] as Counter;
    for (const [key, by] of sheet[name]) addTo(counter, { key, by: times * by });
  }
}

/** The days that hold taps made while a tablet's clock was in doubt, the latest first. */
export function doubtfulDays({ days }: Shop): readonly ShopDay[] {
  const found: ShopDay[] = [];
  for (const [day, sheet] of days) if (sheet.doubtful.size > 0) found.push(day);
  return found.sort().reverse();
}

function sumWhere(counter: Counter, wanted: (key: string) => boolean): number {
  let sum = 0;
  for (const [key, by] of counter) if (wanted(key)) sum += by;
  return sum;
}
