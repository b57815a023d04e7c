import { expect, test } from 'vitest';
import { rowsInOrder, type SortKey } from '../../../src/ui/table/row-order.ts';

const order = (keys: readonly SortKey[], way: 'ascending' | 'descending') =>
  rowsInOrder(
    keys.map((key, place) => ({ key, place })),
    (row) => row.key,
    way,
  ).map((row) => row.place);

test('numbers go by size, not by their first digit', () => {
  expect(order([10, 9, 100], 'ascending')).toEqual([1, 0, 2]);
});

test('codes go as people count', () => {
  expect(order(['A10', 'A9', 'B1'], 'ascending')).toEqual([1, 0, 2]);
});

test.each(['ascending', 'descending'] as const)('what is not known stands last, %s', (way) => {
  expect(order([undefined, 2, undefined, 1], way).slice(2)).toEqual([0, 2]);
});

test('equal ones keep their order, whichever way', () => {
  expect(order([1, 1, 0, 1], 'ascending')).toEqual([2, 0, 1, 3]);
  expect(order([1, 1, 0, 1], 'descending')).toEqual([0, 1, 3, 2]);
});

test('the rows as given are left alone', () => {
  const rows = Object.freeze([3, 1, 2]);
  expect(rowsInOrder(rows, (row) => row, 'ascending')).toEqual([1, 2, 3]);
});
