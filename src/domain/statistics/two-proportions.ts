import { type Count, demandLevel, type Interval } from './counts.ts';
import { fisherExact } from './fisher-exact.ts';
import { wilson } from './proportion-intervals.ts';

/** How two shares differ. */
export interface TwoProportions {
  /** First share minus second, in [−1, 1]; absent while one side has no pieces. */
  readonly difference: number | undefined;
  /** Newcombe's interval for the difference; [−1, 1] while one side has no pieces. */
  readonly interval: Interval;
  /** Fisher's exact chance of so great a difference either way if there is none. */
  readonly p: number;
  /** Of a first share so low, or lower. */
  readonly pLess: number;
  /** Of a first share so high, or higher. */
  readonly pGreater: number;
}

/**
 * Compares the shares behind two counts: their difference with Newcombe's hybrid score interval (both Wilson
 * intervals, squared and added) and Fisher's exact test. Sound to n = 10⁵ a side and beyond. Throws RangeError unless
 * 0 ≤ k ≤ n are whole and 0 < level < 1.
 * Source: R. G. Newcombe, Statistics in Medicine 17 (1998) 873-890, method 10.
 */
export function twoProportions(a: Count, b: Count, level: number): TwoProportions {
  demandLevel(level);
  const { twoSided, less, greater } = fisherExact(a, b);
  return { ...newcombe(a, b, level), p: twoSided, pLess: less, pGreater: greater };
}

function newcombe(a: Count, b: Count, level: number): Pick<TwoProportions, 'difference' | 'interval'> {
  if (a.n === 0 || b.n === 0) return { difference: undefined, interval: [-1, 1] };
  const shareA = a.k / a.n;
  const shareB = b.k / b.n;
  const [lowA, highA] = wilson(a.k, a.n, level);
  const [lowB, highB] = wilson(b.k, b.n, level);
  const difference = shareA - shareB;
  return {
    difference,
    interval: [
      difference - Math.hypot(shareA - lowA, highB - shareB),
      difference + Math.hypot(highA - shareA, shareB - lowB),
    ],
  };
}
