import { doneBy, type Opening, openings, type Shift } from './shifts.ts';

/** What waits for a hold, and what a round of it takes; times in ms. */
export interface RoundStage<Name> {
  readonly stage: Name;
  /** Pieces that could be loaded. */
  readonly waiting: number;
  readonly cure: number;
  /** Work of hands for a piece, into the clamps and out of them. */
  readonly load: number;
  readonly unload: number;
}

/** A round of a hold: loaded in one go, cured together; ms UTC. */
export interface Round<Name> {
  readonly stage: Name;
  readonly pieces: number;
  readonly from: number;
  /** The last piece is in. */
  readonly loaded: number;
  /** The last piece is cured. */
  readonly ready: number;
  /** The places are empty: whoever unloads has come, and is done. */
  readonly free: number;
}

interface Loading {
  /** The most pieces of the round. */
  readonly pieces: number;
  readonly from: number;
  readonly shifts: readonly Shift[];
}

/** The first round that can be loaded, with as many pieces as its shift has time for; undefined when no shift is left. */
export function loadedFrom<Name>(stage: RoundStage<Name>, loading: Loading): Round<Name> | undefined {
  for (const opening of openings(loading.shifts, loading.from)) {
    const pieces = Math.min(loading.pieces, fits(stage, opening));
    if (pieces > 0) return roundAt(stage, { pieces, from: opening.from, shifts: loading.shifts });
  }
  return undefined;
}

/** The first round of all the pieces; undefined when no shift has time for them. */
export function wholeLoadFrom<Name>(stage: RoundStage<Name>, loading: Loading): Round<Name> | undefined {
  for (const opening of openings(loading.shifts, loading.from)) {
    if (fits(stage, opening) >= loading.pieces) return roundAt(stage, { ...loading, from: opening.from });
  }
  return undefined;
}

/** Pieces that can be loaded before a shift ends. */
function fits<Name>({ load }: RoundStage<Name>, { from, to }: Opening): number {
  return load === 0 ? Number.POSITIVE_INFINITY : Math.floor((to - from) / load);
}

function roundAt<Name>(
  { stage, cure, load, unload }: RoundStage<Name>,
  { pieces, from, shifts }: Loading,
): Round<Name> {
  const loaded = from + pieces * load;
  const ready = loaded + cure;
  const free = doneBy(shifts, { from: ready, work: pieces * unload }) ?? Number.POSITIVE_INFINITY;
  return { stage, pieces, from, loaded, ready, free };
}
