import { durationIn } from './duration.ts';
import { inLanguage } from './language.ts';

export const timeWords = inLanguage('timeWords', {
  units: {
    minutes: (n: number) => `${n} min`,
    hours: (n: number) => `${n} h`,
    days: (n: number) => (n === 1 ? '1 day' : `${n} days`),
  },
  justNow: 'just now',
  ago: (stretch: string) => `${stretch} ago`,
  ready: 'ready',
  readyIn: (stretch: string) => `ready in ${stretch}`,
});

/** A stretch of time in its largest two units: "45 min", "3 h 10 min", "2 days 4 h". `ms` is taken as positive. */
export function duration(ms: number): string {
  return durationIn(timeWords.units, ms);
}

/** How long ago `then` was: "just now", "4 min ago". */
export function ago(then: number, now: number): string {
  const past = now - then;
  return past < 60_000 ? timeWords.justNow : timeWords.ago(duration(past));
}

/** "ready", or "ready in 3 h 10 min". */
export function readyIn(ready: number, now: number): string {
  return ready <= now ? timeWords.ready : timeWords.readyIn(duration(ready - now));
}
