import { studentQuantile } from '../../statistics/special-functions.ts';
import type { Drawn } from './plan-model.ts';

/** A day that is over: the minutes of people's hours, and those that its pieces usually take (`usualByDay`). */
export interface WorkedDay {
  readonly hours: number;
  readonly usual: number;
}

/** Before anything is known; common practice, no source: a fifth of the hours goes into no piece, give or take. */
const before: Drawn = { median: 1.25, logSd: 0.2 };
/** Days that this is worth. */
const beforeDays = 2;

/**
 * How many minutes of people's hours a minute of a piece takes, over the days to come: hours ÷ usual minutes of the days
 * that are over, with the spread of days as the jackknife finds it (J. W. Tukey, Annals of Mathematical Statistics 29 (1958)
 * 614; from memory). Days to come differ as those before did, so their own mean is less sure the fewer they are. Days on
 * which people waited for work or did other things count as slow ones: the forecast expects as many of them again.
 *
 * @param ahead days of work to come, about
 */
export function paceOf(days: readonly WorkedDay[], ahead: number): Drawn {
  const worked = days.filter(({ hours, usual }) => hours > 0 && usual > 0);
  const n = worked.length;
  if (n === 0) return before;
  const all = { hours: 0, usual: 0 };
  for (const { hours, usual } of worked) {
    all.hours += hours;
    all.usual += usual;
  }
  const found = Math.log(all.hours / all.usual);
  const weight = n / (n + beforeDays);
  const centre = weight * found + (1 - weight) * Math.log(before.median);
  if (n < 3) return { median: Math.exp(centre), logSd: before.logSd };
  const without = worked.map(({ hours, usual }) => Math.log((all.hours - hours) / (all.usual - usual)));
  const middle = without.reduce((sum, log) => sum + log, 0) / n;
  const variance = ((n - 1) / n) * without.reduce((sum, log) => sum + (log - middle) ** 2, 0);
  // Student's t as the normal distribution that has the same 90 %.
  const wider = studentQuantile(0.95, n - 1) / studentQuantile(0.95, 1e6);
  const ofDays = variance * (1 + n / Math.max(1, ahead)) * wider ** 2;
  return {
    median: Math.exp(centre),
    logSd: Math.sqrt(weight ** 2 * ofDays + (1 - weight) ** 2 * before.logSd ** 2),
  };
}
