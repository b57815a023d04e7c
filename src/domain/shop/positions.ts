import type { TrayId } from '../log/ids.ts';
import { type Place, placeKey } from '../log/place.ts';
import { mapUnder } from './counter.ts';
import type { Projection } from './projection.ts';

/** Pieces of one tray at one place; `arrived` is the sum of their arrival times in ms UTC. */
export interface Standing {
  readonly place: Place;
  pieces: number;
  arrived: number;
}

/** Where the pieces of each tray are, by tray and place. A count may be negative: it asks for a recount. */
export type Positions = Map<TrayId, Map<string, Standing>>;

export const positions: Projection<Positions> = {
  empty: () => new Map(),
  add(state, { event, sign }) {
    if (!('moves' in event)) return;
    const now = event.stamp.wall;
    for (const { tray, from, to, pieces, since } of event.moves) {
      if (from)
        shift(state, { tray, place: from, pieces: -sign * pieces, arrived: -sign * pieces * (since ?? now) });
      // Pieces that come over from another tray bring their age along.
      const came = from === null ? (since ?? now) : now;
      if (to) shift(state, { tray, place: to, pieces: sign * pieces, arrived: sign * pieces * came });
    }
  },
};

function shift(state: Positions, { tray, place, pieces, arrived }: Standing & { tray: TrayId }): void {
  const places = mapUnder(state, tray);
  const key = placeKey(place);
  const standing = places.get(key) ?? { place, pieces: 0, arrived: 0 };
  standing.pieces += pieces;
  standing.arrived += arrived;
  if (standing.pieces !== 0 || standing.arrived !== 0) places.set(key, standing);
  else places.delete(key);
  if (places.size === 0) state.delete(tray);
}

/** Mean time of arrival of the pieces that stand there, in ms UTC; null where none do. */
export function meanArrival({ pieces, arrived }: Standing): number | null {
  return pieces > 0 ? Math.round(arrived / pieces) : null;
}
