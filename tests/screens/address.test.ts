// @vitest-environment happy-dom
import { expect, test } from 'vitest';
import { hrefOf, readAddress } from '../../src/screens/parts/address.ts';

test.each([
  ['', { place: 'bench', rest: [] }],
  ['#/yield', { place: 'yield', rest: [] }],
  ['#/bench/sand/t1', { place: 'bench', rest: ['sand', 't1'] }],
  ['#/nowhere/else', { place: 'bench', rest: [] }],
  ['#/trays/%E0%A4%A', { place: 'trays', rest: ['%E0%A4%A'] }],
])('the address %j is read', (hash, expected) => {
  expect(readAddress(hash)).toEqual(expected);
});

test('an address that was made is read back as it was meant', () => {
  expect(readAddress(hrefOf('trays', 'a b/c'))).toEqual({ place: 'trays', rest: ['a b/c'] });
});
