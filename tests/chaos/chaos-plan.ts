/** How often each fault is tried, and how long that may take at most: the full run by `npm run chaos`, the short one in `npm test`. */

export const isFull = process.env.CHAOS === 'full';

interface KindPlan {
  readonly runs: number;
  /** A kind that takes longer has failed. */
  readonly minutes: number;
}

const plans = {
  kill: { full: { runs: 300, minutes: 45 }, short: { runs: 6, minutes: 6 } },
  seal: { full: { runs: 30, minutes: 30 }, short: { runs: 2, minutes: 8 } },
  corrupt: { full: { runs: 100, minutes: 45 }, short: { runs: 6, minutes: 6 } },
  'disk-full': { full: { runs: 20, minutes: 30 }, short: { runs: 1, minutes: 4 } },
  /** Taps of both windows together. */
  'two-windows': { full: { runs: 2000, minutes: 20 }, short: { runs: 100, minutes: 4 } },
  update: { full: { runs: 20, minutes: 20 }, short: { runs: 3, minutes: 4 } },
  crash: { full: { runs: 20, minutes: 10 }, short: { runs: 2, minutes: 3 } },
  reload: { full: { runs: 100, minutes: 5 }, short: { runs: 15, minutes: 3 } },
  'fuzzed-backup': { full: { runs: 20_000, minutes: 30 }, short: { runs: 500, minutes: 3 } },
} as const satisfies Readonly<Record<string, { full: KindPlan; short: KindPlan }>>;

export type Kind = keyof typeof plans;

export function planOf(kind: Kind): KindPlan {
  return plans[kind][isFull ? 'full' : 'short'];
}
