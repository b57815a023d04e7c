import { chanceToLeave, type Gate } from './chance-to-leave.ts';
import { type Drawn, drawnFrom, logFactorials } from './drawn-without-return.ts';
import { newestRun, type Part, type Run, type Tally } from './tally.ts';

export interface Change {
  /** `worse`: a larger share is flawed since. */
  readonly direction: 'worse' | 'better';
  /** The first group after the likely change. */
  readonly since: number;
  readonly before: Part;
  readonly after: Part;
  /** The chance of a split as strange as this one, anywhere in a series in which nothing changes. */
  readonly p: number;
  /** The smallest `p` that as many flawed pieces in groups of these sizes could have given. */
  readonly leastP: number;
}

/** What rounding may add to a tail: two splits that are equally strange must count as such. */
const rounding = 1 + 1e-9;

/**
 * Has the share of flawed pieces changed, and where? Every split of the series into before and since is judged by the
 * tail of Fisher's exact test; the strangest one stands. How often chance alone makes one as strange is found exactly:
 * when nothing changes, every order of the pieces that were done is as likely as any other, so the unknown rate does not
 * matter, nor how many splits were looked at.
 *
 * The conditional test of a change point is that of K. J. Worsley, The power of likelihood ratio and cumulative sum
 * tests for a change in a binomial probability, Biometrika 70 (1983) 455-464; the exact recursion in the manner of his
 * paper, here with Fisher tails instead of likelihood ratios (from memory). It supposes that pieces fail one by one:
 * when whole planks or trays differ by nature, it takes that for change more often than it says.
 *
 * @param tally groups between which a change may lie
 * @param options.mostPieces older pieces are left out; 3000 when left out
 * @returns undefined while there is nothing to compare: fewer than two groups, or nothing or everything flawed
 * @throws {RangeError} see `newestRun`
 */
export function changeScan(
  tally: Tally,
  { mostPieces = 3000 }: { readonly mostPieces?: number } = {},
): Change | undefined {
  const run = newestRun(tally, mostPieces);
  if (run.groups.length < 2 || run.flawed === 0 || run.flawed === run.pieces) return undefined;
  const logs = logFactorials(run.pieces);
  const splits = run.groups.slice(0, -1).map((before, at) => ({
    before,
    since: run.groups[at + 1]?.index ?? 0,
    drawn: drawnFrom(run, { drawn: before.pieces, logs }),
  }));
  let found: Omit<Change, 'p' | 'leastP'> | undefined;
  let tail = Number.POSITIVE_INFINITY;
  let leastTail = 1;
  for (const { before, since, drawn } of splits) {
    const worse = drawn.atMost(before.flawed);
    const better = drawn.atLeast(before.flawed);
    leastTail = Math.min(leastTail, drawn.atMost(drawn.least), drawn.atLeast(drawn.most));
    if (Math.min(worse, better) * rounding >= tail) continue;
    tail = Math.min(worse, better);
    found = { direction: worse < better ? 'worse' : 'better', since, ...bothSides(run, before) };
  }
  if (!found) return undefined;
  const chanceOf = (bound: number) => chanceToLeave(run, gatesAt(splits, bound * rounding));
  return { ...found, p: chanceOf(tail), leastP: chanceOf(leastTail) };
}

function bothSides(run: Run, { flawed, pieces }: Part): { before: Part; after: Part } {
  return {
    before: { flawed, pieces },
    after: { flawed: run.flawed - flawed, pieces: run.pieces - pieces },
  };
}

/** The counts at each split whose tail is no larger than `bound`. */
function gatesAt(splits: readonly { readonly before: Part; readonly drawn: Drawn }[], bound: number): Gate[] {
  // Counts so far can only grow, and so do the bounds of what is strange: each search begins where the last one ended.
  let low = -1;
  let high = 0;
  return splits.map(({ before, drawn }) => {
    while (drawn.atMost(low + 1) <= bound) low += 1;
    while (drawn.atLeast(high) > bound) high += 1;
    return { pieces: before.pieces, low, high };
  });
}
