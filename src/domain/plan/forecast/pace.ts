import { studentQuantile } from '../../statistics/special-functions.ts';
import type { Drawn } from './plan-model.ts';

/**
 * A day that is over, in minutes: people's hours for which there was work (hours × `handsWanted`), those in which hands were
 * busy (`busyByDay`), and those that what was done usually takes (`usualByDay`).
 */
export interface WorkedDay {
  readonly hours: number;
  readonly busy: number;
  readonly usual: number;
}

/** Before anything is known; common practice, no source: a sixth of the hours goes into no piece, give or take. */
const before: Drawn = { median: 1.2, logSd: 0.2 };
/** Days that this is worth. */
const beforeDays = 1;

/**
 * How many minutes of people's hours a minute of a piece takes, over the days to come: of the days that are over the hours for
 * which there was work, or those in which hands were busy where that is more, ÷ usual minutes of what was made. The first
 * has in it what people did beside, also days on which nothing was made; it leaves out work for which something had to be free
 * first. The second has not in it what people did beside for long.
 *
 * Days differ, as the jackknife finds it (J. W. Tukey, Annals of Mathematical Statistics 29 (1958) 614; from memory), and
 * those to come as well: their own mean is less sure the fewer they are.
 *
 * @param ahead days of work to come, about
 */
export function paceOf(days: readonly WorkedDay[], ahead: number): Drawn {
  const open = days.filter(({ hours, busy }) => hours > 0 || busy > 0);
  const n = open.length;
  const sumOf = (of: (day: WorkedDay) => number) => open.reduce((sum, day) => sum + of(day), 0);
  const usual = sumOf((day) => day.usual);
  if (usual === 0) return before;
  const isBusier = sumOf(({ busy }) => busy) > sumOf(({ hours }) => hours);
  const taken = (day: WorkedDay) => (isBusier ? day.busy : day.hours);
  const own = n / (n + beforeDays);
  const all = sumOf(taken);
  const median = Math.exp(own * Math.log(all / usual) + (1 - own) * Math.log(before.median));
  const without = open.map((day) => Math.log((all - taken(day)) / (usual - day.usual)));
  if (n < 3 || !without.every(Number.isFinite)) return { median, logSd: before.logSd };
  const middle = without.reduce((sum, log) => sum + log, 0) / n;
  const variance = ((n - 1) / n) * without.reduce((sum, log) => sum + (log - middle) ** 2, 0);
  // Student's t as the normal distribution that has the same 90 %.
  const wider = studentQuantile(0.95, n - 1) / studentQuantile(0.95, 1e6);
  const ofDays = variance * (1 + n / Math.max(1, ahead)) * wider ** 2;
  return { median, logSd: Math.hypot(own * Math.sqrt(ofDays), (1 - own) * before.logSd) };
}
