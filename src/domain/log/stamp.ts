import * as v from 'valibot';

/**
 * Hybrid logical clock after S. S. Kulkarni, M. Demirbas, D. Madeppa, B. Avva, M. Leone, "Logical physical
 * clocks and consistent snapshots in globally distributed databases" (OPODIS 2014). `wall` is milliseconds
 * since 1970 UTC and never runs back, even when the tablet's clock does; `tick` parts stamps of equal wall.
 */
export const stampSchema = v.object({
  wall: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
  tick: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
});
export type Stamp = Readonly<v.InferOutput<typeof stampSchema>>;

export const stampZero: Stamp = { wall: 0, tick: 0 };

/** A foreign stamp further ahead than this (24 h in ms) must not drag the own clock along. */
const longestPull = 24 * 60 * 60 * 1000;

/** The stamp of the next own event, given the last stamp and the tablet's clock (ms). */
export function nextStamp(last: Stamp, now: number): Stamp {
  return now > last.wall ? { wall: now, tick: 0 } : { wall: last.wall, tick: last.tick + 1 };
}

/** The own clock after an event with stamp `seen` came in from another station at `now` (ms). */
export function witnessStamp(last: Stamp, { seen, now }: { seen: Stamp; now: number }): Stamp {
  if (seen.wall - Math.max(now, last.wall) > longestPull) return last;
  const wall = Math.max(last.wall, seen.wall, now);
  if (wall === last.wall && wall === seen.wall) return { wall, tick: Math.max(last.tick, seen.tick) + 1 };
  if (wall === last.wall) return { wall, tick: last.tick + 1 };
  if (wall === seen.wall) return { wall, tick: seen.tick + 1 };
  return { wall, tick: 0 };
}

/** Negative when `a` is earlier than `b`; counters compare as numbers. */
export function compareStamps(a: Stamp, b: Stamp): number {
  return a.wall - b.wall || a.tick - b.tick;
}
