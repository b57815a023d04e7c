import type { TrayId } from '../log/ids.ts';
import { atStage, type Place, placeKey } from '../log/place.ts';
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

/** Where the pieces of one tray are, by place. */
export type Places = Map<string, Standing>;

/**
 * Where the pieces of each tray are. A count may be negative: it asks for a recount. Trays with anything at a stage are
 * `working`; those of the years before, all of whose pieces are finished or scrapped, are `settled`, and nothing that is
 * asked at every tap has to pass them by.
 */
export interface Positions {
  readonly working: Map<TrayId, Places>;
  readonly settled: Map<TrayId, Places>;
}

const nowhere: ReadonlyMap<string, Standing> = new Map();

/** Where the pieces of a tray are; nowhere when there is no such tray. */
export function placesOf({ working, settled }: Positions, tray: TrayId): ReadonlyMap<string, Standing> {
  return working.get(tray) ?? settled.get(tray) ?? nowhere;
}

export const positions: Projection<Positions> = {
  empty: () => ({ working: new Map(), settled: new Map() }),
  add(state, { event, times }) {
    if (!('moves' in event)) return;
    const now = event.stamp.wall;
    for (const { tray, from, to, pieces, since } of event.moves) {
      const places = state.working.get(tray) ?? state.settled.get(tray) ?? new Map();
      if (from) shift(places, { place: from, pieces: -times * pieces, came: since ?? now });
      // Pieces that come over from another tray bring their age along.
      if (to) shift(places, { place: to, pieces: times * pieces, came: from ? now : (since ?? now) });
      file(state, tray, places);
    }
  },
};

interface Shift {
  readonly place: Place;
  /** Signed. */
  readonly pieces: number;
  /** When the pieces had come, ms UTC. */
  readonly came: number;
}

function shift(places: Places, { place, pieces, came }: Shift): void {
  stand(places, { place, pieces, arrived: pieces * Math.floor(came / 1000) });
}

function stand(places: Places, { place, pieces, arrived }: Standing): void {
  const key = placeKey(place);
  const standing = places.get(key);
  if (!standing) {
    places.set(key, { place, pieces, arrived });
    return;
  }
  standing.pieces += pieces;
  standing.arrived += arrived;
  if (standing.pieces === 0 && standing.arrived === 0) places.delete(key);
}

/** Adds what stands at a place of a tray to what is known of it. */
export function placePieces(
  state: Positions,
  { tray, ...standing }: Standing & { readonly tray: TrayId },
): void {
  const places = state.working.get(tray) ?? state.settled.get(tray) ?? new Map();
  stand(places, standing);
  file(state, tray, places);
}

/** Keeps a tray where it belongs by now. */
function file({ working, settled }: Positions, tray: TrayId, places: Places): void {
  const shelf = hasWork(places) ? working : settled;
  if (places.size > 0 && shelf.has(tray)) return;
  working.delete(tray);
  settled.delete(tray);
  if (places.size > 0) shelf.set(tray, places);
}

function hasWork(places: Places): boolean {
  for (const { place, pieces } of places.values()) if (atStage(place) && pieces !== 0) return true;
  return false;
}

/**
 * Mean time of arrival of the pieces that stand there, in ms UTC to the second; null where none do. Of a count below
 * zero it is when its pieces were taken. Clocks that differ by decades could bring it before 1970, which no event
 * can hold: that is 0.
 */
export function meanArrival({ pieces, arrived }: Standing): number | null {
  return pieces === 0 ? null : Math.max(0, Math.round(arrived / pieces) * 1000);
}
