import fc from 'fast-check';
import * as v from 'valibot';
import { expect, test } from 'vitest';
import { linkText } from '../../../src/domain/log/chain.ts';
import { emptyHolding, holdingOf, isSameHolding, withLink } from '../../../src/domain/log/holding.ts';

const hex = fc.string({ unit: fc.constantFrom(...'0123456789abcdef'), minLength: 32, maxLength: 32 });
const links = fc.uniqueArray(
  hex.map((text) => v.parse(linkText, text)),
  { maxLength: 40 },
);
/** The same sum in the integers of the language, which have no width. */
const sumByBigInt = (some: readonly string[]) =>
  some
    .reduce((sum, link) => sum ^ BigInt(`0x${link}`), 0n)
    .toString(16)
    .padStart(32, '0');

test('the sum is the exclusive or of the links, whatever their order', () => {
  fc.assert(
    fc.property(links, (some) => {
      expect(holdingOf(some)).toEqual({ entries: some.length, sum: sumByBigInt(some) });
      expect(isSameHolding(holdingOf(some), holdingOf(some.toReversed()))).toBe(true);
    }),
  );
});

test('one entry more or another entry in its place is another holding', () => {
  fc.assert(
    fc.property(links, hex, (some, text) => {
      const link = v.parse(linkText, text);
      fc.pre(!some.includes(link));
      const here = holdingOf(some);
      expect(isSameHolding(here, withLink(here, link))).toBe(false);
      expect(isSameHolding(here, holdingOf([...some.slice(1), link]))).toBe(false);
    }),
  );
});

test('nothing held is nothing', () => {
  expect(holdingOf([])).toEqual(emptyHolding);
});
