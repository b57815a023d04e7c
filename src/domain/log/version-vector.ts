import type { StationId } from './ids.ts';

/** One station's part of a version vector: all of 1..upTo is held, and beyond it the numbers in `extra`. */
interface Held {
  upTo: number;
  extra: Set<number>;
}

/** What a store holds: per station the events seen. Grows only. */
export type VersionVector = Map<StationId, Held>;

export interface EventId {
  readonly station: StationId;
  readonly seq: number;
}

export function hasSeen(seen: VersionVector, { station, seq }: EventId): boolean {
  const held = seen.get(station);
  return held !== undefined && (seq <= held.upTo || held.extra.has(seq));
}

/** Marks one event as seen, in any order of arrival; a number that closes a gap draws the later ones in. */
export function markSeen(seen: VersionVector, { station, seq }: EventId): void {
  const held = seen.get(station) ?? { upTo: 0, extra: new Set() };
  if (held.upTo === 0) seen.set(station, held);
  if (seq <= held.upTo) return;
  if (seq === held.upTo + 1) held.upTo = seq;
  else held.extra.add(seq);
  while (held.extra.delete(held.upTo + 1)) held.upTo += 1;
}

/** The identity of an event as one string. */
export function eventKey({ station, seq }: EventId): string {
  return `${station}:${seq}`;
}
