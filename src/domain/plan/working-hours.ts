import type { ShopDay } from '../log/ids.ts';
import { dayAfter, momentAt } from '../log/zone.ts';
import type { PersonFact, ShopFact } from '../set-up/facts.ts';

/** A person's hours as the shop has them. */
export type Hours = Pick<PersonFact, 'week' | 'daysOff'>;

/** A day's work of one person; moments in ms UTC. */
export interface Shift {
  readonly from: number;
  readonly to: number;
  /** Of all breaks together, minutes. When they are is not known. */
  readonly breakMinutes: number;
}

/**
 * When a person works on a shop day. Hours are those of the clock on the wall, so a day on which it is put forward or
 * back has the same hours by the wall, and a night over the change is an hour shorter or longer.
 *
 * @param zone IANA name of the shop's zone
 * @returns null for a day off; undefined where nobody has said the person's hours
 * @throws {RangeError} for a zone that the platform does not know
 */
export function shiftOn({ week, daysOff = [] }: Hours, day: ShopDay, zone: string): Shift | null | undefined {
  if (week === undefined) return undefined;
  const work = week[weekdayOf(day)] ?? null;
  if (work === null || daysOff.some(({ from, to }) => from <= day && day <= to)) return null;
  const [from, to] = [work.from, work.to].map((minutes) => momentOn(day, minutes, zone));
  if (from == null || to == null || to <= from) return null;
  return { from, to, breakMinutes: work.breakMinutes };
}

/** Working minutes of a person on a shop day, breaks taken off; never below 0. undefined: see `shiftOn`. */
export function workingMinutes(person: Hours, day: ShopDay, zone: string): number | undefined {
  const shift = shiftOn(person, day, zone);
  if (shift === undefined) return undefined;
  return shift === null ? 0 : Math.max(0, Math.round((shift.to - shift.from) / 60_000) - shift.breakMinutes);
}

/** Ten years: further ahead nobody knows anyone's hours. */
export const mostDaysAhead = 3653;

/**
 * Working minutes of a person from one shop day to another, both counted; 0 where the first is later. undefined: see `shiftOn`.
 *
 * @throws {RangeError} beyond `mostDaysAhead` days
 * @example
 * const day = { from: 8 * 60, to: 16 * 60, breakMinutes: 30 };
 * const week = [day, day, day, day, day, null, null];
 * workingMinutesBetween({ week }, { from: '2026-03-02' as ShopDay, to: '2026-03-08' as ShopDay }, 'UTC') // => 2250
 */
export function workingMinutesBetween(
  person: Hours,
  { from, to }: { readonly from: ShopDay; readonly to: ShopDay },
  zone: string,
): number | undefined {
  if (person.week === undefined) return undefined;
  if (daysBetween(from, to) > mostDaysAhead) throw new RangeError(`Too far ahead: ${from} to ${to}`);
  let sum = 0;
  for (let day = from; day <= to; day = dayAfter(day, 1)) sum += workingMinutes(person, day, zone) ?? 0;
  return sum;
}

/** Calendar days from one shop day to another; below 0 where the second is earlier. */
export function daysBetween(from: ShopDay, to: ShopDay): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / 86_400_000);
}

/** What an hour of a person's work costs in minor units, by their own rate or the shop's; null where neither is known. */
export function hourCostOf(
  person: Pick<PersonFact, 'hourCost'> | undefined,
  shop: Pick<ShopFact, 'hourCost'> | undefined,
): number | null {
  return person?.hourCost ?? shop?.hourCost ?? null;
}

/** Monday is 0. */
function weekdayOf(day: ShopDay): number {
  return (new Date(`${day}T00:00:00Z`).getUTCDay() + 6) % 7;
}

function momentOn(day: ShopDay, minutes: number, zone: string): number | null {
  const [hour, minute] = [Math.floor((minutes % 1440) / 60), minutes % 60];
  const time = `${String(hour).padStart(2, '0')}:${String(minute).padStart(2, '0')}`;
  return momentAt({ day: dayAfter(day, Math.floor(minutes / 1440)), time }, zone);
}
