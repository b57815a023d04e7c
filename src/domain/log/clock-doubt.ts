import type { ShopEvent } from './event.ts';

const minute = 60_000;
const hour = 60 * minute;

/** A right clock is never further off than this (10 min in ms). Common practice, no source. */
const tolerance = 10 * minute;
/** No tablet sleeps longer than this (60 days in ms) and wakes with the app still open. Common practice, no source. */
const longestSleep = 60 * 24 * hour;

/**
 * Why the tablet's clock is in doubt: it says a time before this version was built, or before the last tap that was
 * made here; or it has jumped since it was last looked at.
 */
export type ClockDoubt = 'before-build' | 'behind' | 'jumped';

export interface ClockLook {
  /** The tablet's clock, ms UTC. */
  readonly now: number;
  /** When this version was built, ms UTC. */
  readonly built: number;
  /** What the clock said at the last own tap that was not in doubt, ms UTC; null where there is none. */
  readonly lastTap: number | null;
  /** How far (ms) both clocks went since the last look without a doubt; null at the first. */
  readonly since: { readonly wall: number; readonly mono: number } | null;
}

/**
 * Judges the tablet's clock; null is no doubt. A monotonic clock stands still while some tablets sleep and runs on in
 * others, so a wall clock that went further than it may have slept: only what no sleep explains is a jump ahead.
 */
export function doubtOfClock({ now, built, lastTap, since }: ClockLook): ClockDoubt | null {
  if (now < built - tolerance) return 'before-build';
  if (lastTap !== null && now < lastTap - tolerance) return 'behind';
  const ahead = since ? since.wall - since.mono : 0;
  return ahead < -tolerance || ahead > longestSleep ? 'jumped' : null;
}

/** A shop day lasts at most 25 hours and begins at noon at the latest; an hour more, for the offset may have changed. */
const longestReach = 38 * hour;

/**
 * What the tablet's clock said at a tap, ms UTC: the stamp, which the clock gave. A stamp of another day than the
 * event's was not the clock's but had been drawn ahead of it; all that is known then is when the day began.
 */
export function clockAtTap({ stamp, zone, day }: Pick<ShopEvent, 'stamp' | 'zone' | 'day'>): number {
  const began = Date.parse(`${day}T00:00:00Z`) - zone.offset * minute;
  return stamp.wall >= began && stamp.wall < began + longestReach ? stamp.wall : began;
}
