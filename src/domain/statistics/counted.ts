/** What was counted in a sample of a size. */
export interface Counted {
  readonly index: number;
  readonly count: number;
  readonly size: number;
}

/**
 * Counts beside their sizes. A sample of nothing says nothing and is left out.
 *
 * @throws {RangeError} when there are not as many counts as sizes, or one of them is negative or no number
 */
export function countedIn(counts: readonly number[], sizes: readonly number[]): Counted[] {
  if (counts.length !== sizes.length) throw new RangeError('there must be one size for each count');
  return counts
    .map((count, index) => ({ index, count, size: sizes[index] ?? 0 }))
    .filter(({ count, size }) => {
      if (!(count >= 0 && size >= 0 && count < Number.POSITIVE_INFINITY && size < Number.POSITIVE_INFINITY))
        throw new RangeError(`not something counted: ${count} of ${size}`);
      return size > 0;
    });
}

/** All counts over all sizes; not yet known when nothing was looked at. */
export function pooledRate(counted: readonly Counted[]): number | undefined {
  const size = counted.reduce((sum, each) => sum + each.size, 0);
  return size === 0 ? undefined : counted.reduce((sum, each) => sum + each.count, 0) / size;
}
