import type { TrayId } from '../log/ids.ts';
import { type Place, placeKey } from '../log/place.ts';
import { mapUnder } from './counter.ts';
import type { Projection } from './projection.ts';

/**
 * Pieces of one tray at one place; `arrived` is the sum of their arrival times in whole seconds UTC. In milliseconds
 * the sum over some thousand pieces would pass 2^53, and rounding would make it depend on the order of addition.
 */
export interface Standing {
  readonly place: Place;
  pieces: number;
  arrived: number;
}

/** Where the pieces of each tray are, by tray and place. A count may be negative: it asks for a recount. */
export type Positions = Map<TrayId, Map<string, Standing>>;

export const positions: Projection<Positions> = {
  empty: () => new Map(),
  add(state, { event, times }) {
    if (!('moves' in event)) return;
    const now = event.stamp.wall;
    for (const { tray, from, to, pieces, since } of event.moves) {
      if (from) shift(state, { tray, place: from, pieces: -times * pieces, came: since ?? now });
      // Pieces that come over from another tray bring their age along.
      if (to) shift(state, { tray, place: to, pieces: times * pieces, came: from ? now : (since ?? now) });
    }
  },
};

interface Shift {
  readonly tray: TrayId;
  readonly place: Place;
  /** Signed. */
  readonly pieces: number;
  /** When the pieces had come, ms UTC. */
  readonly came: number;
}

function shift(state: Positions, { tray, place, pieces, came }: Shift): void {
  const places = mapUnder(state, tray);
  const key = placeKey(place);
  const standing = places.get(key) ?? { place, pieces: 0, arrived: 0 };
  standing.pieces += pieces;
  standing.arrived += pieces * Math.floor(came / 1000);
  if (standing.pieces !== 0 || standing.arrived !== 0) places.set(key, standing);
  else places.delete(key);
  if (places.size === 0) state.delete(tray);
}

/**
 * Mean time of arrival of the pieces that stand there, in ms UTC to the second; null where none do. Of a count below
 * zero it is when its pieces were taken. Clocks that differ by decades could bring it before 1970, which no event
 * can hold: that is 0.
 */
export function meanArrival({ pieces, arrived }: Standing): number | null {
  return pieces === 0 ? null : Math.max(0, Math.round(arrived / pieces) * 1000);
}
