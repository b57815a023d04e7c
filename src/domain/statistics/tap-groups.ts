import { median } from './straight-line.ts';

/** A tap of a spell of work at one stage, in the order of the taps of one station. */
export interface Tap {
  /** Minutes since the tap before, or since the stage was entered; undefined when that is not known. */
  readonly minutes: number | undefined;
  /** Pieces that the tap counts. */
  readonly pieces: number;
  /** The first tap of a spell: its minutes run from when the stage was entered, not from other pieces. */
  readonly begins?: boolean;
}

/** Pieces that were worked on in a stretch of minutes between two looks at the tablet. */
export interface Worked {
  readonly minutes: number;
  readonly pieces: number;
}

/** Nobody makes a piece and taps it within this (2 s): a tap so soon after another belongs to the same stretch. */
const handSpeed = 2 / 60;

/** Nor within this share of the usual time, where that is longer: one log-normal piece in 60,000 with a CV of 0.6. */
const hardlyAny = 0.1;

/** Minutes after which a tap no longer belongs to the stretch of the one before, where a piece usually takes so many. */
export function instantOf(usual: number): number {
  return Math.max(handSpeed, hardlyAny * usual);
}

/**
 * Taps put together where several count what was done in one stretch: twelve taps in a row after half an hour are a
 * dozen pieces in that half hour, like one tap of twelve. Nothing is lost where a quick piece is put to the one before:
 * its minutes and its count both go there. Pieces whose stretch has no known beginning are left out.
 *
 * @throws {RangeError} for minutes that are negative or no number, or pieces that are not whole and positive
 */
export function tapGroups(taps: readonly Tap[]): Worked[] {
  for (const { minutes = 0, pieces } of taps) {
    if (!(minutes >= 0 && minutes < Number.POSITIVE_INFINITY && Number.isInteger(pieces) && pieces > 0))
      throw new RangeError(`no tap: ${pieces} pieces in ${minutes} minutes`);
  }
  const rough = median(together(taps, handSpeed).map(({ minutes, pieces }) => minutes / pieces)) ?? 0;
  return together(taps, instantOf(rough));
}

function together(taps: readonly Tap[], instant: number): Worked[] {
  const groups: { minutes: number | undefined; pieces: number }[] = [];
  for (const { minutes, pieces, begins } of taps) {
    const open = groups.at(-1);
    const isSoon = minutes !== undefined && minutes <= instant;
    if (isSoon && open && !begins) {
      if (open.minutes !== undefined) open.minutes += minutes;
      open.pieces += pieces;
    } else {
      // Tapped as soon as the stage was entered: made before, and nobody knows in how long.
      groups.push({ minutes: isSoon ? undefined : minutes, pieces });
    }
  }
  return groups.flatMap(({ minutes, pieces }) => (minutes === undefined ? [] : [{ minutes, pieces }]));
}
