import type { Link } from '../../domain/log/chain.ts';

/** The links of a log, against which copies of it are held one after the other. */
export interface LinkLedger {
  readonly size: () => number;
  readonly add: (link: Link) => void;
  /** Begins with another copy. */
  readonly compare: () => Comparison;
}

/** A copy that is gone through, entry by entry. */
interface Comparison {
  readonly meet: (link: Link) => void;
  /** How many entries of the copy the log lacks. */
  readonly lacking: () => number;
  /** How many entries of the log the copy lacks. */
  readonly missing: () => number;
}

export function linkLedger(): LinkLedger {
  /** Each link, and the last comparison that met it: one table serves for all, however long the log is. */
  const metIn = new Map<Link, number>();
  let comparisons = 0;
  return {
    size: () => metIn.size,
    add: (link) => metIn.set(link, 0),
    compare() {
      comparisons += 1;
      const own = comparisons;
      let lacking = 0;
      let met = 0;
      return {
        meet(link) {
          const last = metIn.get(link);
          if (last === undefined) lacking += 1;
          else if (last !== own) {
            metIn.set(link, own);
            met += 1;
          }
        },
        lacking: () => lacking,
        missing: () => metIn.size - met,
      };
    },
  };
}
