const minute = 60_000;

/** The units of a stretch of time, as a language writes them. */
export interface TimeUnits {
  readonly minutes: (n: number) => string;
  readonly hours: (n: number) => string;
  readonly days: (n: number) => string;
}

/** A stretch of time in its largest two units: "45 min", "3 h 10 min", "2 days 4 h". `ms` is taken as positive. */
export function durationIn(units: TimeUnits, ms: number): string {
  const whole = Math.max(0, Math.round(ms / minute));
  if (whole < 60) return units.minutes(whole);
  const hours = Math.floor(whole / 60);
  if (hours < 24) return joined(units.hours(hours), whole % 60 ? units.minutes(whole % 60) : '');
  return joined(units.days(Math.floor(hours / 24)), hours % 24 ? units.hours(hours % 24) : '');
}

const joined = (a: string, b: string): string => (b ? `${a} ${b}` : a);
