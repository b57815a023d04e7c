import type { StationId } from '../log/ids.ts';
import { type EventId, eventKey } from '../log/version-vector.ts';
import type { VoidOf } from './tap-rows.ts';

/**
 * Which events are taken back, by all voids of a log in whatever order. A void is in force unless a void that is in force
 * takes it back; an event with a void in force is out of force, however many there are.
 */
export function takenBack(voids: readonly VoidOf[]): (id: EventId) => boolean {
  const byTarget = new Map<string, VoidOf[]>();
  for (const each of voids) {
    const key = eventKey(each.target);
    const ofTarget = byTarget.get(key);
    if (ofTarget) ofTarget.push(each);
    else byTarget.set(key, [each]);
  }
  const known = new Map<string, boolean>();

  function isTakenBack(id: EventId): boolean {
    const key = eventKey(id);
    const before = known.get(key);
    if (before !== undefined) return before;
    // Voids that take each other back in a circle were not made by a hand: the search must still end.
    known.set(key, false);
    const is = byTarget.get(key)?.some(({ by }) => !isTakenBack(by)) ?? false;
    known.set(key, is);
    return is;
  }

  // Few events are ever taken back, so that a question about any other is answered by two look-ups of numbers.
  const targets = new Map<StationId, Set<number>>();
  for (const { target } of voids) {
    if (!isTakenBack(target)) continue;
    const ofStation = targets.get(target.station) ?? new Set<number>();
    targets.set(target.station, ofStation.add(target.seq));
  }
  return ({ station, seq }) => targets.get(station)?.has(seq) ?? false;
}
