import type { OutcomeKind } from '../log/event.ts';
import type { ReasonId, ShopDay, SpeciesId, StageId } from '../log/ids.ts';
import { dayAfter } from '../log/zone.ts';
import { type Counter, countOf } from '../shop/counter.ts';
import { blankSheet, type DaySheet, type Days } from '../shop/days.ts';
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

export interface DayReport {
  readonly day: ShopDay;
  readonly stages: readonly StageDay[];
  readonly flaws: readonly DayFlaw[];
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
export function dayReport({ days }: Shop, day: ShopDay): DayReport {
  const sheet = days.get(day) ?? blankSheet();
  const before = days.get(dayAfter(day, -1)) ?? blankSheet();
  const { sum: earlier, days: workingDays } = sumBefore(days, day);
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

/** All sheets before a day in one, and how many they are: measures are sums, so that their average needs no more. */
function sumBefore(days: Days, day: ShopDay): { readonly sum: DaySheet; readonly days: number } {
  const sum = blankSheet();
  let count = 0;
  for (const [each, { passed, outcomes, finished, made, worked }] of days) {
    if (each >= day) continue;
    count += 1;
    addAll(sum.passed, passed);
    addAll(sum.outcomes, outcomes);
    addAll(sum.finished, finished);
    addAll(sum.made, made);
    addAll(sum.worked, worked);
  }
  return { sum, days: count };
}

function addAll<Key extends string>(sum: Counter<Key>, counter: Counter<Key>): void {
  for (const [key, by] of counter) sum.set(key, (sum.get(key) ?? 0) + by);
}

/** The days that hold taps made while a tablet's clock was in doubt, the latest first. */
export function doubtfulDays({ days }: Shop): readonly ShopDay[] {
  return [...days]
    .filter(([, sheet]) => sheet.doubtful.size > 0)
    .map(([day]) => day)
    .sort()
    .reverse();
}

function sumWhere(counter: Counter, wanted: (key: string) => boolean): number {
  let sum = 0;
  for (const [key, by] of counter) if (wanted(key)) sum += by;
  return sum;
}
