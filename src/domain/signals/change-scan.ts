import { chanceToLeave } from './chance-to-leave.ts';
import { partsAt, type Scanned } from './change.ts';
import { drawnFrom, logFactorials } from './drawn-without-return.ts';
import { gatesAt } from './strange-counts.ts';
import type { Run } from './tally.ts';

/** A tail is only smaller where more than rounding makes it so; then the earlier split stands. */
const less = 1 - 1e-9;

/**
 * Has the share of flawed pieces changed, and where? Every split of the series into before and since is judged by the
 * tail of Fisher's exact test; the strangest one stands. How often chance alone makes one as strange is found exactly:
 * when nothing changes, every order of the pieces that were done is as likely as any other, so the unknown rate does not
 * matter, nor how many splits were looked at.
 *
 * The conditional test of a change point is that of K. J. Worsley, The power of likelihood ratio and cumulative sum
 * tests for a change in a binomial probability, Biometrika 70 (1983) 455-464; the exact recursion in the manner of his
 * paper, here with Fisher tails instead of likelihood ratios (from memory). It supposes that pieces fail one by one:
 * when trays differ by nature, it takes that for a change more often than it says; see `chanceOfShuffled`.
 *
 * @returns undefined while there is nothing to compare: fewer than two groups, or nothing or everything flawed
 */
export function changeScan(run: Run): (Scanned & { readonly tail: number }) | undefined {
  if (run.groups.length < 2 || run.flawed === 0 || run.flawed === run.pieces) return undefined;
  const logs = logFactorials(run.pieces);
  const splits = run.groups.slice(0, -1);
  let found = { at: 0, tail: Number.POSITIVE_INFINITY, isWorse: false };
  let leastTail = 1;
  for (const [at, { flawed, pieces }] of splits.entries()) {
    const { least, most, atMost, atLeast } = drawnFrom(run, { drawn: pieces, logs });
    leastTail = Math.min(leastTail, atMost(least), atLeast(most));
    const worse = atMost(flawed);
    const better = atLeast(flawed);
    const tail = Math.min(worse, better);
    if (tail < found.tail * less) found = { at, tail, isWorse: worse < better };
  }
  const chanceOf = (tail: number) => {
    const gateAt = gatesAt(run, { tail, logs });
    return chanceToLeave(
      run,
      splits.map(({ pieces }) => gateAt(pieces)),
    );
  };
  const parts = partsAt(run, found.at);
  return {
    direction: found.isWorse ? 'worse' : 'better',
    ...parts,
    expected: (run.flawed * parts.after.pieces) / run.pieces,
    p: chanceOf(found.tail),
    tail: found.tail,
    leastP: chanceOf(leastTail),
  };
}
