import { locale } from './locale.ts';

const day = 24 * 60 * 60_000;
const halfYear = 180 * day;

/**
 * Formats of a zone. A zone that this browser does not know comes from a newer one, a moment past all calendars from a
 * foreign entry: neither may break a screen, so the one is told in UTC and the other at the end of the calendar.
 */
function told(at: number, zone: string, how: Intl.DateTimeFormatOptions): string {
  const moment = Math.min(at, lastMoment);
  try {
    return new Intl.DateTimeFormat(locale, { ...how, timeZone: zone }).format(moment);
  } catch {
    return new Intl.DateTimeFormat(locale, { ...how, timeZone: 'UTC', timeZoneName: 'short' }).format(moment);
  }
}

/** The last moment that a Date can hold (ECMA-262, time values and time range). */
const lastMoment = 8.64e15;

const dated = { weekday: 'short', day: 'numeric', month: 'short' } as const;
const timed = { hour: '2-digit', minute: '2-digit' } as const;

/** Clock time in the shop's zone, with the weekday when it is another day than `now`, and the year when it is far off. */
export function clockTime(at: number, { zone, now }: { zone: string; now: number }): string {
  const apart = Math.abs(at - now);
  if (apart > halfYear) return momentWords(at, zone);
  const sameDay = told(at, zone, dated) === told(now, zone, dated) && apart < day;
  return told(at, zone, sameDay ? timed : { ...dated, ...timed });
}

/** A moment in full, in the shop's zone: "Mon, 2 Mar 2020, 09:00". */
export function momentWords(at: number, zone: string): string {
  return told(at, zone, { ...dated, year: 'numeric', ...timed });
}

/** A moment with its date: "2 Mar 2026, 14:05". */
export function dateTime(at: number, zone: string): string {
  return told(at, zone, { day: 'numeric', month: 'short', year: 'numeric', ...timed });
}

/** A day in a sentence, in the shop's zone: "Tuesday" within the last six days, "3 Mar" in this half year, else with its year. */
export function sinceWords(at: number, { zone, now }: { zone: string; now: number }): string {
  const apart = Math.abs(at - now);
  if (apart < 6 * day) return told(at, zone, { weekday: 'long' });
  const year = apart > halfYear ? ({ year: 'numeric' } as const) : {};
  return told(at, zone, { day: 'numeric', month: 'short', ...year });
}

/** A shop day in words: "Tue, 3 Mar 2026". */
export function dayWords(shopDay: string): string {
  const began = Date.parse(`${shopDay}T00:00:00Z`);
  return Number.isNaN(began) ? shopDay : told(began, 'UTC', { ...dated, year: 'numeric' });
}

/** The same without its year: "Tue, 3 Mar". */
export function shortDayWords(shopDay: string): string {
  const began = Date.parse(`${shopDay}T00:00:00Z`);
  return Number.isNaN(began) ? shopDay : told(began, 'UTC', dated);
}
