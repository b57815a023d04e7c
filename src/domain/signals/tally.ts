/** Pieces of one kind of work in the order in which they were done: in trays, in taps or one by one. */
export interface Tally {
  /** Flawed pieces of each group, oldest first. */
  readonly counts: readonly number[];
  /** Pieces of each group. A group of none is passed over. */
  readonly sizes: readonly number[];
  /**
   * What each group is of, where that makes a difference: its wood in the series of a stage. Groups are then only
   * compared with others of their kind, so that a week of a difficult wood is no change. All are alike when left out.
   */
  readonly kinds?: readonly string[];
}

/** Flawed pieces among so many. */
export interface Part {
  readonly flawed: number;
  readonly pieces: number;
}

interface Group extends Part {
  readonly index: number;
  readonly kind: string;
}

/** A tally with running sums: what was so far after each group that has pieces. */
export interface Run extends Part {
  readonly groups: readonly Group[];
}

/**
 * The newest groups of a tally that hold at most `mostPieces`, with the sums of pieces from the oldest of them on.
 *
 * @throws {RangeError} when counts and sizes are not whole numbers with 0 ≤ count ≤ size, or not as many, or the kinds
 */
export function newestRun({ counts, sizes, kinds }: Tally, mostPieces: number): Run {
  if (counts.length !== sizes.length || (kinds && kinds.length !== sizes.length))
    throw new RangeError('there must be one size, and one kind, for each count');
  let from = sizes.length;
  let held = 0;
  while (from > 0 && held + (sizes[from - 1] ?? 0) <= mostPieces) {
    from -= 1;
    held += sizes[from] ?? 0;
  }
  let flawed = 0;
  let pieces = 0;
  const groups: Group[] = [];
  for (let index = from; index < sizes.length; index += 1) {
    const count = counts[index] ?? 0;
    const size = sizes[index] ?? 0;
    if (!(Number.isInteger(count) && Number.isInteger(size) && count >= 0 && count <= size))
      throw new RangeError(`no flawed pieces among pieces: ${count} of ${size}`);
    if (size === 0) continue;
    flawed += count;
    pieces += size;
    groups.push({ index, flawed, pieces, kind: kinds?.[index] ?? '' });
  }
  return { flawed, pieces, groups };
}

/** The groups by themselves, without what was before them. */
export function traysOf({ groups }: Run): Part[] {
  return groups.map(({ flawed, pieces }, at) => ({
    flawed: flawed - (groups[at - 1]?.flawed ?? 0),
    pieces: pieces - (groups[at - 1]?.pieces ?? 0),
  }));
}
