import type { StageId, TrayId } from '../log/ids.ts';
import type { Grade, Move, Place, StagePlace } from '../log/place.ts';
import { atStage } from '../log/place.ts';
import { meanArrival, type Positions, placesOf, type Standing } from '../shop/positions.ts';

export interface DrawFrom {
  readonly tray: TrayId;
  readonly stage: StageId;
  readonly at: 'waiting' | 'held';
  readonly grade: Grade;
}

/** Pieces that a move takes, with the place they leave and when they had come to it. */
export interface Drawn {
  readonly place: StagePlace;
  readonly pieces: number;
  readonly since: number | null;
}

/** What stands at one spot of a tray: first visits before repeats, the soonest cured first. */
export function standingAt(
  positions: Positions,
  { tray, stage, at, grade }: DrawFrom,
): readonly (Standing & { place: StagePlace })[] {
  return [...placesOf(positions, tray).values()]
    .filter((standing): standing is Standing & { place: StagePlace } => {
      const { place } = standing;
      return (
        atStage(place) &&
        place.stage === stage &&
        place.at === at &&
        place.grade === grade &&
        standing.pieces !== 0
      );
    })
    .sort(
      (a, b) =>
        readyOf(a.place) - readyOf(b.place) || (a.place.redo ?? '').localeCompare(b.place.redo ?? '', 'en'),
    );
}

function readyOf(place: Place): number {
  return place.at === 'held' ? place.ready : 0;
}

/**
 * Takes `pieces` from a spot. When the log holds fewer, because another window or tablet was quicker, the rest
 * is drawn all the same and the count goes below zero: the piece in the hand is real, the count asks for a recount.
 */
export function draw(
  positions: Positions,
  { pieces, ...spot }: DrawFrom & { pieces: number },
): readonly Drawn[] {
  const drawn: Drawn[] = [];
  let left = pieces;
  for (const standing of standingAt(positions, spot)) {
    const taken = Math.min(left, Math.max(0, standing.pieces));
    if (taken > 0) drawn.push({ place: standing.place, pieces: taken, since: meanArrival(standing) });
    left -= taken;
  }
  if (left > 0) {
    const { stage, grade } = spot;
    drawn.push({ place: { at: 'waiting', stage, grade, redo: null }, pieces: left, since: null });
  }
  return drawn;
}

/** The moves that bring drawn pieces of a tray to where `to` says. */
export function movesOf(
  tray: TrayId,
  { drawn, to }: { drawn: readonly Drawn[]; to: (place: StagePlace) => Place | null },
): Move[] {
  return drawn.map(({ place, pieces, since }) => ({ tray, from: place, to: to(place), pieces, since }));
}

/** Pieces that the log holds at a spot; never counts what is below zero. */
export function piecesAt(positions: Positions, spot: DrawFrom): number {
  return standingAt(positions, spot).reduce((sum, { pieces }) => sum + Math.max(0, pieces), 0);
}
