/** Pieces in rounds of the same size; the last may be smaller. */
export interface Rounds {
  readonly rounds: number;
  /** Pieces of each round but the last. */
  readonly each: number;
  /** Pieces of the last round; 0 where there is none. */
  readonly last: number;
}

/**
 * How many rounds whole `pieces` need where `capacity` pieces (whole, 1 or more; null is no limit) go into one. Throws
 * RangeError on anything else.
 */
export function holdRounds(pieces: number, capacity: number | null): Rounds {
  const most = capacity ?? Math.max(1, pieces);
  if (!(Number.isInteger(pieces) && pieces >= 0 && Number.isInteger(most) && most >= 1))
    throw new RangeError('rounds need whole pieces and at least one place');
  const rounds = Math.ceil(pieces / most);
  return { rounds, each: Math.min(pieces, most), last: rounds === 0 ? 0 : pieces - (rounds - 1) * most };
}
