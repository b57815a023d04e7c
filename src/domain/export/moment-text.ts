import { type Zone, zoneAt } from '../log/zone.ts';

/** Farthest moment from 1970 that a calendar date can be given to, in ms (ECMA-262, time values). */
const farthest = 8.64e15;

/** A moment (ms UTC) as ISO 8601 in UTC; null for one that no calendar reaches. */
export function utcText(ms: number): string | null {
  return Math.abs(ms) <= farthest ? new Date(ms).toISOString() : null;
}

/** A moment (ms UTC) as date and time of a zone's clock, in the form that spreadsheets take for a date: `2026-03-02 09:00:00`. */
export function localText(ms: number, { offset }: Pick<Zone, 'offset'>): string | null {
  return (
    utcText(ms + offset * 60_000)
      ?.replace('T', ' ')
      .replace(/\.\d+Z$/, '') ?? null
  );
}

/** The same by the name of the zone; in UTC where the platform does not know it. */
export function localTextIn(ms: number, zone: string): string | null {
  return localText(ms, offsetAt(ms, zone));
}

function offsetAt(ms: number, zone: string): Pick<Zone, 'offset'> {
  try {
    return zoneAt(ms, zone);
  } catch {
    return { offset: 0 };
  }
}
