import fc from 'fast-check';
import { expect, test } from 'vitest';
import { priceText, readPrice } from '../../../src/screens/set-up/money.ts';

test.each([
  ['24', 2400],
  ['24.50', 2450],
  ['24,5', 2450],
  [' 0.99 ', 99],
  ['0', 0],
  ['£24.50', 2450],
  ['24,50 €', 2450],
  // In floating point 1.15 × 100 is 114.99999999999999.
  ['1.15', 115],
  ['9999999.99', 999_999_999],
])('the price “%s” is %i in minor units', (typed, minor) => {
  expect(readPrice(typed)).toBe(minor);
});

test('an empty price is not known', () => {
  expect(readPrice('')).toBeNull();
  expect(readPrice('  ')).toBeNull();
  expect(priceText(null)).toBe('');
});

test.each(['-3', '1e9', '2.555', '24.', '.5', '1,234.50', '12345678', 'twenty', '24 50', '٢٤', '£'])(
  '“%s” is no price',
  (typed) => {
    expect(readPrice(typed)).toBeUndefined();
  },
);

test('every price that is shown reads back as itself', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 999_999_999 }), (minor) => {
      expect(readPrice(priceText(minor))).toBe(minor);
    }),
  );
});
