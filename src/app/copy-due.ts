import type { ShopDay } from '../domain/log/ids.ts';

/** A copy of the log as the keeper remembers it. */
export interface CopyMark {
  /** The tablet's clock when it was made, ms UTC. */
  readonly at: number;
  readonly day: ShopDay;
  /** How many entries the log had then. */
  readonly log: number;
}

/** Why a copy is due. */
export type CopyReason = 'first' | 'new-day' | 'many-entries' | 'long-ago';

/** So many new entries are at stake at most before a copy is made. */
const mostNewEntries = 200;
const longestAge = 24 * 60 * 60_000;

export interface CopyQuestion {
  readonly lastCopy: CopyMark | null;
  /** ms UTC. */
  readonly now: number;
  readonly day: ShopDay;
  /** How many entries the log has now. */
  readonly entries: number;
}

/** Whether the log should be copied now, and why; null while nothing is new. A log that has shrunk is new too. */
export function copyIsDue({ lastCopy, now, day, entries }: CopyQuestion): CopyReason | null {
  if (!lastCopy) return entries > 0 ? 'first' : null;
  if (entries === lastCopy.log) return null;
  if (day !== lastCopy.day) return 'new-day';
  if (Math.abs(entries - lastCopy.log) >= mostNewEntries) return 'many-entries';
  // A clock that was set back is as good a reason as one that has run on.
  return Math.abs(now - lastCopy.at) >= longestAge ? 'long-ago' : null;
}
