import { studentQuantile } from '../../statistics/special-functions.ts';
import type { Drawn } from './plan-model.ts';

/**
 * A day that is over: the minutes of people's hours for which there was work (hours × `handsWanted`), and those that what was
 * done usually takes (`usualByDay`).
 */
export interface WorkedDay {
  readonly hours: number;
  readonly usual: number;
}

/** Before anything is known; common practice, no source: a sixth of the hours goes into no piece, give or take. */
const before: Drawn = { median: 1.2, logSd: 0.2 };
/** Days that this is worth. */
const beforeDays = 1;

/**
 * How many minutes of people's hours a minute of a piece takes, over the days to come: hours ÷ usual minutes of the days that
 * are over, also of those on which nothing was done. Days differ, as the jackknife finds it (J. W. Tukey, Annals of
 * Mathematical Statistics 29 (1958) 614; from memory), and those to come as well: their own mean is less sure the fewer
 * they are.
 *
 * @param ahead days of work to come, about
 */
export function paceOf(days: readonly WorkedDay[], ahead: number): Drawn {
  const open = days.filter(({ hours }) => hours > 0);
  const n = open.length;
  const hours = open.reduce((sum, day) => sum + day.hours, 0);
  const usual = open.reduce((sum, day) => sum + day.usual, 0);
  if (usual === 0) return before;
  const own = n / (n + beforeDays);
  const median = Math.exp(own * Math.log(hours / usual) + (1 - own) * Math.log(before.median));
  const without = open.map((day) => Math.log((hours - day.hours) / (usual - day.usual)));
  if (n < 3 || !without.every(Number.isFinite)) return { median, logSd: before.logSd };
  const middle = without.reduce((sum, log) => sum + log, 0) / n;
  const variance = ((n - 1) / n) * without.reduce((sum, log) => sum + (log - middle) ** 2, 0);
  // Student's t as the normal distribution that has the same 90 %.
  const wider = studentQuantile(0.95, n - 1) / studentQuantile(0.95, 1e6);
  const ofDays = variance * (1 + n / Math.max(1, ahead)) * wider ** 2;
  return { median, logSd: Math.hypot(own * Math.sqrt(ofDays), (1 - own) * before.logSd) };
}
