/** What a column sorts by. Unknown values stand last, whichever way. */
export type SortKey = number | string | undefined;

export type SortWay = 'ascending' | 'descending';

const collator = new Intl.Collator(undefined, { numeric: true });

const compare = (a: number | string, b: number | string): number =>
  typeof a === 'number' && typeof b === 'number' ? a - b : collator.compare(String(a), String(b));

/** The rows in order of a key; equal keys keep their order. */
export const rowsInOrder = <Row>(
  rows: readonly Row[],
  by: (row: Row) => SortKey,
  way: SortWay,
): readonly Row[] => {
  const turn = way === 'ascending' ? 1 : -1;
  return rows.toSorted((left, right) => {
    const a = by(left);
    const b = by(right);
    if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined);
    return turn * compare(a, b);
  });
};
