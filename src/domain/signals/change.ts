import type { Part, Run } from './tally.ts';

export interface Change {
  /** `worse`: more are flawed since than would be. */
  readonly direction: 'worse' | 'better';
  /** The first group after the likely change. */
  readonly since: number;
  readonly before: Part;
  readonly after: Part;
  /** How many would be flawed since, were before and since alike: by the rate of both together. */
  readonly expected: number;
  /** The chance of a split as strange as this one, anywhere in a series in which nothing changes. */
  readonly p: number;
}

/** A change with what a list needs to judge it among others. */
export interface Scanned extends Change {
  /** The smallest `p` that as many flawed pieces in groups of these sizes could have given. */
  readonly leastP: number;
  /** The tail of Fisher's exact test at the split: how strange that looks alone. Not known of a mixed series. */
  readonly tail?: number;
}

/** Both parts of a run that is split after its `at`-th group. */
export function partsAt(run: Run, at: number): Pick<Change, 'since' | 'before' | 'after'> {
  const { flawed = 0, pieces = 0 } = run.groups[at] ?? {};
  return {
    since: run.groups[at + 1]?.index ?? 0,
    before: { flawed, pieces },
    after: { flawed: run.flawed - flawed, pieces: run.pieces - pieces },
  };
}
