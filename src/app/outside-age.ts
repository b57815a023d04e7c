import type { OutsideCopy } from './known-copies.ts';

/** How much the age of the last outside copy matters: with nothing new in the log it never does. */
export type AgeTone = 'calm' | 'amber' | 'red';

const day = 24 * 60 * 60_000;
const amberAfter = 2 * day;
const redAfter = 7 * day;

/**
 * The tone of the last outside copy's age at `now` (ms UTC) when the log has `log` entries. Where there never was one,
 * the age counts from the beginning of the work (`firstDay`, a shop day; undefined before the first tap).
 */
export function toneOfOutside({
  outside,
  now,
  log,
  firstDay,
}: {
  readonly outside: Pick<OutsideCopy, 'at' | 'log'> | null;
  readonly now: number;
  readonly log: number;
  readonly firstDay: string | undefined;
}): AgeTone {
  if (outside ? outside.log === log : firstDay === undefined) return 'calm';
  const since = outside ? outside.at : Date.parse(`${firstDay}T00:00:00Z`);
  // A copy that seems to come from the future was made under another clock: its age is unknown, so it is looked after.
  const age = now - since;
  if (age < -day) return 'amber';
  if (age >= redAfter) return 'red';
  return age >= amberAfter ? 'amber' : 'calm';
}
