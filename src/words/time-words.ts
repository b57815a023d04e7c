const minute = 60_000;
const hour = 60 * minute;
const day = 24 * hour;

/** A stretch of time in its largest two units: "45 min", "3 h 10 min", "2 days 4 h". `ms` is taken as positive. */
export function duration(ms: number): string {
  const whole = Math.max(0, Math.round(ms / minute));
  if (whole < 60) return `${whole} min`;
  if (whole < 24 * 60) return joined(`${Math.floor(whole / 60)} h`, whole % 60 ? `${whole % 60} min` : '');
  const days = Math.floor(whole / (24 * 60));
  const hours = Math.floor((whole % (24 * 60)) / 60);
  return joined(days === 1 ? '1 day' : `${days} days`, hours ? `${hours} h` : '');
}

function joined(a: string, b: string): string {
  return b ? `${a} ${b}` : a;
}

/** How long ago `then` was: "just now", "4 min ago". */
export function ago(then: number, now: number): string {
  const past = now - then;
  return past < minute ? 'just now' : `${duration(past)} ago`;
}

/** "ready", or "ready in 3 h 10 min". */
export function readyIn(ready: number, now: number): string {
  return ready <= now ? 'ready' : `ready in ${duration(ready - now)}`;
}

/** Clock time in the shop's zone, with the weekday when it is another day than `now`. */
export function clockTime(at: number, { zone, now }: { zone: string; now: number }): string {
  const sameDay = dayName(at, zone) === dayName(now, zone) && Math.abs(at - now) < day;
  return new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    hour: '2-digit',
    minute: '2-digit',
    ...(sameDay ? {} : { weekday: 'short', day: 'numeric', month: 'short' }),
  }).format(at);
}

function dayName(at: number, zone: string): string {
  return new Intl.DateTimeFormat('en-GB', { timeZone: zone, dateStyle: 'short' }).format(at);
}

/** A shop day in words: "Tue 3 Mar 2026". */
export function dayWords(shopDay: string): string {
  return new Intl.DateTimeFormat('en-GB', {
    timeZone: 'UTC',
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    year: 'numeric',
  }).format(Date.parse(`${shopDay}T00:00:00Z`));
}
