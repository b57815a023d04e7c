import { clockTime, dateTime } from './date-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';

const day = 24 * 60 * 60_000;

interface Moment {
  readonly at: number;
  readonly now: number;
  readonly zone: string;
}

export const copyAgeWords = inLanguage('copyAgeWords', {
  outside: 'Outside copy',
  never: 'never',
  today: (clock: string) => `today ${clock}`,
  yesterday: (clock: string) => `yesterday ${clock}`,
  daysAgo: (days: number) => `${wholeNumber(days)} days ago`,
});

/** A moment of the past as one says it: "today 14:05", "yesterday 17:30", "3 days ago"; a date when it is to come. */
export function sinceWhen({ at, now, zone }: Moment): string {
  const days = calendarDay(now, zone) - calendarDay(at, zone);
  const clock = clockTime(at, { zone, now: at });
  if (days === 0) return copyAgeWords.today(clock);
  if (days === 1) return copyAgeWords.yesterday(clock);
  return days > 1 ? copyAgeWords.daysAgo(days) : dateTime(at, zone);
}

/** Days since 1970 by the calendar of a zone. */
function calendarDay(at: number, zone: string): number {
  const [year, month, date] = new Intl.DateTimeFormat('en-CA', { timeZone: zone }).format(at).split('-');
  return Date.UTC(Number(year), Number(month) - 1, Number(date)) / day;
}
