import { latestWall } from './backup-format.ts';

/** Names that reach the prototype of an object where code is careless. */
const forbidden: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

/** A year, ms. */
const longestElapsed = 366 * 24 * 60 * 60 * 1000;
// One tap a millisecond for eleven days; past it, sums of numbers would come near to losing their units.
const mostTaps = 1_000_000_000;

/** The most that numbers of an event which are packed can be within reason. */
export const greatestNumbers = {
  ...{ seq: mostTaps, tick: mostTaps, elapsed: longestElapsed },
  ...{ wall: latestWall, time: latestWall },
};
/** Numbers beyond what a shop can have done, wherever they stand in an event. */
const most: ReadonlyMap<string, number> = new Map([
  ['wall', greatestNumbers.wall],
  ['since', greatestNumbers.time],
  ['ready', greatestNumbers.time],
  ['seq', greatestNumbers.seq],
  ['tick', greatestNumbers.tick],
  ['pieces', 10_000_000],
  ['again', 10_000_000],
  ['elapsed', greatestNumbers.elapsed],
]);

/** What no station of ours ever wrote, though its link fits: a forger can sum up too. Null when there is nothing. */
export function beyondReason(value: unknown): string | null {
  if (typeof value !== 'object' || value === null) return null;
  for (const [key, part] of Object.entries(value)) {
    if (forbidden.has(key)) return `a field is named ${key}`;
    if (typeof part === 'number' && Math.abs(part) > (most.get(key) ?? Number.POSITIVE_INFINITY))
      return `${key} is beyond reason: ${part}`;
    if ((key === 'day' || key === 'due') && typeof part === 'string' && !isDay(part))
      return `${key} is no day: ${part}`;
    const inner = beyondReason(part);
    if (inner !== null) return inner;
  }
  return null;
}

/** A day of the calendar from 1970 to 2199. */
function isDay(text: string): boolean {
  const ms = Date.parse(`${text}T00:00:00Z`);
  return ms >= 0 && ms < latestWall && new Date(ms).toISOString().startsWith(text);
}
