import * as v from 'valibot';
import { type ShopDay, shopDayText } from './ids.ts';

/** The shop's zone at a moment: its IANA name and minutes ahead of UTC. */
export const zoneSchema = v.object({
  name: v.pipe(v.string(), v.maxLength(64)),
  offset: v.pipe(v.number(), v.integer(), v.minValue(-18 * 60), v.maxValue(18 * 60)),
});
export type Zone = Readonly<v.InferOutput<typeof zoneSchema>>;

const formats = new Map<string, Intl.DateTimeFormat>();

function formatIn(zone: string): Intl.DateTimeFormat {
  const known = formats.get(zone);
  if (known) return known;
  const made = new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    second: '2-digit',
  });
  formats.set(zone, made);
  return made;
}

/** The wall clock of `zone` at `wall` (ms UTC), written as if it were UTC, in ms to the second. */
function localAsUtc(wall: number, zone: string): number {
  const parts = new Map(
    formatIn(zone)
      .formatToParts(wall)
      .map((part) => [part.type, Number(part.value)]),
  );
  const get = (name: Intl.DateTimeFormatPartTypes) => parts.get(name) ?? 0;
  return Date.UTC(get('year'), get('month') - 1, get('day'), get('hour'), get('minute'), get('second'));
}

/** Whether the platform knows a zone by this name. */
export function isZoneName(name: string): boolean {
  try {
    formatIn(name);
    return name !== '';
  } catch {
    return false;
  }
}

/** Zone name with its offset at `wall` (ms UTC). Throws RangeError for a name that the platform does not know. */
export function zoneAt(wall: number, name: string): Zone {
  const second = Math.floor(wall / 1000) * 1000;
  return { name, offset: Math.round((localAsUtc(second, name) - second) / 60_000) };
}

/** A moment (ms UTC) as the clock on the wall of a zone shows it: `YYYY-MM-DD` and `HH:MM`. */
export function wallClockAt(wall: number, zone: string): { readonly day: string; readonly time: string } {
  const text = new Date(localAsUtc(wall, zone)).toISOString();
  return { day: text.slice(0, 10), time: text.slice(11, 16) };
}

/**
 * The moment (ms UTC) at which the clock on the wall of a zone shows a day and a time; the earlier one where the clock is
 * put back and shows it twice, that after the gap where it is put forward and never does. null for what is no day or time.
 */
export function momentAt(
  { day, time }: { readonly day: string; readonly time: string },
  zone: string,
): number | null {
  const local = Date.parse(`${day}T${time}:00Z`);
  // A day such as 30 February is read as one in March; it is then not the day that was written.
  if (Number.isNaN(local) || !new Date(local).toISOString().startsWith(`${day}T${time}`)) return null;
  const offsets = [-1, 1].map(
    (days) => localAsUtc(local + days * 86_400_000, zone) - local - days * 86_400_000,
  );
  const moments = offsets.map((offset) => local - offset);
  return moments.find((each) => localAsUtc(each, zone) === local) ?? Math.max(...moments);
}

/**
 * The shop day of a moment: the calendar day in the shop's zone, begun at `startHour` (0 to 23). Days of 23
 * and 25 hours need no care here, because only the hands of the local clock are read.
 */
export function shopDay(wall: number, { zone, startHour }: { zone: string; startHour: number }): ShopDay {
  const local = localAsUtc(wall, zone) - startHour * 3_600_000;
  return dayText(local);
}

/** Hour at which a shop day begins until the maker sets another. */
export const usualDayStart = 4;

/** The shop day `days` after `day` (before it, when negative). */
export function dayAfter(day: ShopDay, days: number): ShopDay {
  const began = Date.parse(`${day}T00:00:00Z`);
  // The form of a day does not make it one: an address may name the 99th.
  return Number.isNaN(began) ? day : dayText(began + days * 86_400_000);
}

/** A clock may say anything, and a tap is kept all the same: days end with the years of four digits. */
const [firstMoment, lastMoment] = [Date.parse('0001-01-01T00:00:00Z'), Date.parse('9999-12-31T00:00:00Z')];

function dayText(ms: number): ShopDay {
  const within = Math.min(Math.max(ms, firstMoment), lastMoment);
  return v.parse(shopDayText, new Date(within).toISOString().slice(0, 10));
}
