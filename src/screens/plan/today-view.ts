import type { BatchId, ShopDay, StageId } from '../../domain/log/ids.ts';
import { type AdvisedGroup, nextOfShop } from '../../domain/plan/next/next-of-shop.ts';
import { type NextWork, whatNext } from '../../domain/plan/next/what-next.ts';
import type { PlanStudy } from '../../domain/plan/plan-study.ts';
import { type HandsAt, roundsOfShop } from '../../domain/plan/rounds/rounds-of-shop.ts';
import { type RoundsTimetable, roundsTimetable } from '../../domain/plan/rounds/rounds-timetable.ts';
import { todaysAdvice } from '../../domain/plan/rounds/todays-advice.ts';
import { shiftsOfPeople } from '../../domain/plan/shifts-of-people.ts';
import { daysBetween } from '../../domain/plan/working-hours.ts';
import type { BatchTargets } from '../../domain/rollup/batch-targets.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import { hoursRows, minutesOfWeek, shopHours } from './targets-view.ts';

/** So many days of rounds are looked ahead. */
const daysAhead = 14;

export interface GroupToday extends AdvisedGroup {
  readonly timetable: RoundsTimetable<StageId>;
  /** Stages whose loading nobody has timed: it is reckoned as no time at all. */
  readonly untimed: readonly StageId[];
}

export interface Today {
  /** Nobody's hours are said, so that no round has a time. */
  readonly hasHours: boolean;
  readonly groups: readonly GroupToday[];
  readonly next: readonly NextWork<StageId, BatchId>[];
}

export interface Moment {
  /** ms UTC. */
  readonly now: number;
  readonly today: ShopDay;
  readonly zone: string;
}

/** What to load when, and what to do next. While the log is still read (`study` null) times count as not known. */
export function todayView(
  shop: Shop,
  {
    batches,
    study,
    ...at
  }: Moment & { readonly batches: readonly BatchTargets[]; readonly study: PlanStudy | null },
): Today {
  const people = factsOf(shop.registers, 'person').flatMap(({ fact }) => (fact.retired ? [] : [fact]));
  const range = { from: at.today, zone: at.zone };
  const shifts = shiftsOfPeople(people, { ...range, days: daysAhead });
  const closing = shiftsOfPeople(people, { ...range, days: 1 })?.at(-1)?.to ?? at.now;
  const handsAt = handsOf(study);
  const groups = roundsOfShop(shop, { now: at.now, shifts: shifts ?? [], handsAt }).map((group) => ({
    ...group,
    timetable: roundsTimetable(group.question),
    advice: todaysAdvice(group.question, closing),
    untimed: group.question.stages.flatMap(({ stage, waiting }) =>
      waiting > 0 && handsAt(stage).load === undefined ? [stage] : [],
    ),
  }));
  const question = nextOfShop(shop, {
    ...{ now: at.now, groups, times: study?.times ?? [] },
    spareOf: sparesOf(shop, { batches, study, today: at.today }),
    ahead: study?.hours.flatMap(({ stages }) => stages) ?? [],
  });
  return { hasHours: shifts !== undefined, groups, next: whatNext(question) };
}

function handsOf(study: PlanStudy | null): HandsAt {
  return (stage) => {
    const median = (of: 'work' | 'loading') => {
      const known = study?.times.filter((each) => each.stage === stage && each.of === of) ?? [];
      // The slowest wood: a round that was promised is then in on time.
      return known.length === 0 ? undefined : Math.max(...known.map(({ time }) => time.median));
    };
    return { load: median('loading'), unload: median('work') };
  };
}

/** Days to spare: those that the hours left over would fill, or those left until it is due where hours are not known. */
function sparesOf(
  shop: Shop,
  {
    batches,
    study,
    today,
  }: { readonly batches: readonly BatchTargets[]; readonly study: PlanStudy | null; readonly today: ShopDay },
): (batch: BatchId) => number | null {
  const hours = shopHours(shop.registers);
  const aDay = (minutesOfWeek(hours, today) ?? 0) / 7;
  const rows = new Map(hoursRows(batches, { hours, today, study }).map((row) => [row.batch.batch, row]));
  return (batch) => {
    const row = rows.get(batch);
    if (!row || row.batch.due === null) return null;
    const left = daysBetween(today, row.batch.due);
    if (left < 0 || row.until == null || !row.needed || aDay === 0) return left;
    return Math.floor((row.until - row.needed.minutes) / aDay);
  };
}
