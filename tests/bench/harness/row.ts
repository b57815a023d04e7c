/** A row of the bench: what was measured, what it is held against, and whether it holds. */

/** Where a row must stand. `of` and `than` name figures of the row: `limit`, or a peer. */
export type Bar =
  | { readonly kind: 'at-most-times'; readonly times: number; readonly of: string }
  | { readonly kind: 'at-most-more'; readonly more: number; readonly than: string }
  | { readonly kind: 'times-less'; readonly times: number; readonly than: string }
  | { readonly kind: 'at-most'; readonly value: number };

/** One figure a round, under the names `ours`, `limit` and those of the peers; all in the unit of the row. */
export type Figures = Readonly<Record<string, readonly number[]>> & { readonly ours: readonly number[] };

export interface Measured {
  readonly id: string;
  readonly work: string;
  readonly unit: string;
  readonly figures: Figures;
  /** All of them must be met; a row without one is there to be seen. */
  readonly bars: readonly Bar[];
}

export interface Row {
  readonly id: string;
  readonly work: string;
  readonly unit: string;
  /** Medians over the rounds. */
  readonly ours: number;
  readonly peers: Readonly<Record<string, number>>;
  readonly limit: number | null;
  /** By the name of a figure: ours as a multiple of the limit, and how many times ours a peer is. */
  readonly ratio: Readonly<Record<string, number>>;
  readonly bar: readonly string[];
  readonly missed: readonly string[];
  readonly ok: boolean;
  /** The least and the most of ours over the rounds. */
  readonly spread: readonly [least: number, most: number];
  readonly rounds: number;
}

export function median(figures: readonly number[]): number {
  const sorted = figures.toSorted((a, b) => a - b);
  const [low, high] = [sorted[Math.floor((sorted.length - 1) / 2)], sorted[Math.floor(sorted.length / 2)]];
  if (low === undefined || high === undefined) throw new Error('There is no median of nothing.');
  return (low + high) / 2;
}

/** The value below which `share` (0 to 1) of the figures lie, by the nearest rank. */
export function quantile(figures: readonly number[], share: number): number {
  const found = figures.toSorted((a, b) => a - b)[Math.max(0, Math.ceil(share * figures.length) - 1)];
  if (found === undefined) throw new Error('There is no quantile of nothing.');
  return found;
}

/** Rounds are compared one by one, as far as both have them: what slows the machine for a while slows both. */
function timesOf(ones: readonly number[], others: readonly number[]): number {
  if (ones.length !== others.length) return median(ones) / median(others);
  return median(ones.map((one, round) => one / (others[round] ?? Number.NaN)));
}

export function rowOf({ id, work, unit, figures, bars }: Measured): Row {
  const { ours, limit, ...peers } = figures;
  const named = (name: string): readonly number[] => {
    const found = figures[name];
    if (!found) throw new Error(`${id} has no figure named ${name}`);
    return found;
  };
  const isMet = (bar: Bar): boolean => {
    switch (bar.kind) {
      case 'at-most-times':
        return timesOf(ours, named(bar.of)) <= bar.times;
      case 'at-most-more':
        return median(ours) <= median(named(bar.than)) + bar.more;
      case 'times-less':
        return timesOf(named(bar.than), ours) >= bar.times;
      case 'at-most':
        return median(ours) <= bar.value;
    }
  };
  const missed = bars.filter((bar) => !isMet(bar));
  return {
    id,
    work,
    unit,
    ours: median(ours),
    peers: Object.fromEntries(Object.entries(peers).map(([name, each]) => [name, median(each)])),
    limit: limit ? median(limit) : null,
    ratio: Object.fromEntries([
      ...(limit ? [['limit', timesOf(ours, limit)]] : []),
      ...Object.entries(peers).map(([name, each]) => [name, timesOf(each, ours)]),
    ]),
    bar: bars.map((bar) => barText(bar, unit)),
    missed: missed.map((bar) => barText(bar, unit)),
    ok: missed.length === 0,
    spread: [Math.min(...ours), Math.max(...ours)],
    rounds: ours.length,
  };
}

function barText(bar: Bar, unit: string): string {
  switch (bar.kind) {
    case 'at-most-times':
      return `at most ${bar.times} × ${bar.of}`;
    case 'at-most-more':
      return `at most ${bar.than} + ${bar.more} ${unit}`;
    case 'times-less':
      return bar.times === 1 ? `less than ${bar.than}` : `${bar.than} at least ${bar.times} × ours`;
    case 'at-most':
      return `at most ${bar.value} ${unit}`;
  }
}
