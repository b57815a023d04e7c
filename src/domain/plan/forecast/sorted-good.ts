import type { Runs } from './runs.ts';

/**
 * Good ones of the replications in ascending order, by variant and mark; the variant behind the last is all of them
 * together. Counts lie close to one another, so each is counted instead of compared: one look at the tables to find how far
 * they reach, and one to count.
 */
export function sortedGood(
  parts: readonly Pick<Runs, 'count' | 'good'>[],
  { variants, marks }: { readonly variants: number; readonly marks: number },
): (variant: number, mark: number) => Int32Array {
  const places = (variants + 1) * marks;
  const count = parts.reduce((sum, part) => sum + part.count, 0);
  const least = new Int32Array(places).fill(2 ** 31 - 1);
  const most = new Int32Array(places).fill(-(2 ** 31));
  const shape = { variants, marks };
  for (const part of parts) reach(part, shape, least, most);
  // From where on the counts of a place stand, less the least of them.
  const from = new Int32Array(places);
  let length = 0;
  for (let place = 0; place < places && count > 0; place += 1) {
    from[place] = length - (least[place] ?? 0);
    length += (most[place] ?? 0) - (least[place] ?? 0) + 1;
  }
  const counts = new Int32Array(length);
  for (const part of parts) tally(part, shape, from, counts);

  return (variant, mark) => {
    const place = variant * marks + mark;
    const sorted = new Int32Array(count);
    for (let pieces = least[place] ?? 0, at = 0; at < count; pieces += 1) {
      const next = at + (counts[(from[place] ?? 0) + pieces] ?? 0);
      sorted.fill(pieces, at, next);
      at = next;
    }
    return sorted;
  };
}

interface Shape {
  readonly variants: number;
  readonly marks: number;
}

function reach(
  { good, count }: Pick<Runs, 'count' | 'good'>,
  { variants, marks }: Shape,
  least: Int32Array,
  most: Int32Array,
): void {
  const all = new Int32Array(marks);
  let at = 0;
  for (let run = 0; run < count; run += 1) {
    all.fill(0);
    for (let variant = 0, place = 0; variant < variants; variant += 1)
      for (let mark = 0; mark < marks; mark += 1) {
        const pieces = good[at] ?? 0;
        if (pieces < (least[place] ?? 0)) least[place] = pieces;
        if (pieces > (most[place] ?? 0)) most[place] = pieces;
        all[mark] = (all[mark] ?? 0) + pieces;
        at += 1;
        place += 1;
      }
    for (let mark = 0, place = variants * marks; mark < marks; mark += 1, place += 1) {
      const pieces = all[mark] ?? 0;
      if (pieces < (least[place] ?? 0)) least[place] = pieces;
      if (pieces > (most[place] ?? 0)) most[place] = pieces;
    }
  }
}

function tally(
  { good, count }: Pick<Runs, 'count' | 'good'>,
  { variants, marks }: Shape,
  from: Int32Array,
  counts: Int32Array,
): void {
  const all = new Int32Array(marks);
  let at = 0;
  for (let run = 0; run < count; run += 1) {
    all.fill(0);
    for (let variant = 0, place = 0; variant < variants; variant += 1)
      for (let mark = 0; mark < marks; mark += 1) {
        const pieces = good[at] ?? 0;
        const cell = (from[place] ?? 0) + pieces;
        counts[cell] = (counts[cell] ?? 0) + 1;
        all[mark] = (all[mark] ?? 0) + pieces;
        at += 1;
        place += 1;
      }
    for (let mark = 0, place = variants * marks; mark < marks; mark += 1, place += 1) {
      const cell = (from[place] ?? 0) + (all[mark] ?? 0);
      counts[cell] = (counts[cell] ?? 0) + 1;
    }
  }
}
