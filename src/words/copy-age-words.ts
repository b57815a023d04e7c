import { wholeNumber } from './number-words.ts';
import { clockTime } from './time-words.ts';

const day = 24 * 60 * 60_000;

interface Moment {
  readonly at: number;
  readonly now: number;
  readonly zone: string;
}

/** A moment of the past as one says it: "today 14:05", "yesterday 17:30", "3 days ago"; a date when it is to come. */
export function sinceWhen({ at, now, zone }: Moment): string {
  const days = calendarDay(now, zone) - calendarDay(at, zone);
  const clock = clockTime(at, { zone, now: at });
  if (days === 0) return `today ${clock}`;
  if (days === 1) return `yesterday ${clock}`;
  return days > 1 ? `${wholeNumber(days)} days ago` : dateTime(at, zone);
}

/** A moment with its date: "2 Mar 2026, 14:05". */
export function dateTime(at: number, zone: string): string {
  return new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    day: 'numeric',
    month: 'short',
    year: 'numeric',
    hour: '2-digit',
    minute: '2-digit',
  }).format(at);
}

/** Days since 1970 by the calendar of a zone. */
function calendarDay(at: number, zone: string): number {
  const [year, month, date] = new Intl.DateTimeFormat('en-CA', { timeZone: zone }).format(at).split('-');
  return Date.UTC(Number(year), Number(month) - 1, Number(date)) / day;
}

export const copyAgeWords = {
  outside: 'Outside copy',
  never: 'never',
} as const;
