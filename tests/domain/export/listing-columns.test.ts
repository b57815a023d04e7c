import { expect, test } from 'vitest';
import { listingColumns, listingColumnsOf } from '../../../src/domain/export/listing-columns.ts';

const usual = listingColumns.filter((column) => column !== 'batch');

test('the columns that a maker chose stand in the maker’s order', () => {
  expect(listingColumnsOf(['price', 'name'])).toEqual(['price', 'name']);
});

test.each([
  ['was never made', null],
  ['has a column that no version knew', ['name', 'shoe-size']],
  ['says a thing twice', ['name', 'name']],
  ['says nothing', []],
])('a choice that %s is the usual one', (_what, kept) => {
  expect(listingColumnsOf(kept)).toEqual(usual);
});
