import type { Runs } from './runs.ts';

/**
 * Good ones of the replications in ascending order, by variant and mark; the variant behind the last is all of them
 * together. Counts lie close to one another, so each is counted instead of compared: one look at the table to find how far
 * they reach, and one to count.
 */
export function sortedGood(
  { count, good }: Pick<Runs, 'count' | 'good'>,
  { variants, marks }: { readonly variants: number; readonly marks: number },
): (variant: number, mark: number) => Int32Array {
  const places = (variants + 1) * marks;
  const row = new Int32Array(places);
  const read = (run: number) => {
    row.fill(0, variants * marks);
    for (let place = 0, mark = 0; place < variants * marks; place += 1) {
      const pieces = good[run * variants * marks + place] ?? 0;
      row[place] = pieces;
      row[variants * marks + mark] = (row[variants * marks + mark] ?? 0) + pieces;
      mark = mark === marks - 1 ? 0 : mark + 1;
    }
  };

  const least = new Int32Array(places).fill(2 ** 31 - 1);
  const most = new Int32Array(places).fill(-(2 ** 31));
  for (let run = 0; run < count; run += 1) {
    read(run);
    for (let place = 0; place < places; place += 1) {
      const pieces = row[place] ?? 0;
      if (pieces < (least[place] ?? 0)) least[place] = pieces;
      if (pieces > (most[place] ?? 0)) most[place] = pieces;
    }
  }
  const from = new Float64Array(places + 1);
  for (let place = 0; place < places; place += 1) {
    const width = count === 0 ? 0 : (most[place] ?? 0) - (least[place] ?? 0) + 1;
    from[place + 1] = (from[place] ?? 0) + width;
  }
  const counts = new Int32Array(from[places] ?? 0);
  for (let run = 0; run < count; run += 1) {
    read(run);
    for (let place = 0; place < places; place += 1) {
      const at = (from[place] ?? 0) + (row[place] ?? 0) - (least[place] ?? 0);
      counts[at] = (counts[at] ?? 0) + 1;
    }
  }

  return (variant, mark) => {
    const place = variant * marks + mark;
    const sorted = new Int32Array(count);
    let end = 0;
    for (let at = from[place] ?? 0; at < (from[place + 1] ?? 0); at += 1) {
      const begin = end;
      end += counts[at] ?? 0;
      sorted.fill((least[place] ?? 0) + at - (from[place] ?? 0), begin, end);
    }
    return sorted;
  };
}
