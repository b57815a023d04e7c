import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pieceCostText, priceText, readPieceCost, readPrice } from '../../../src/screens/parts/money.ts';

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

test.each([
  ['0.0084', 84],
  ['0.85', 8500],
  ['1.15', 11_500],
  ['3', 30_000],
  ['', null],
])('the cost of a piece “%s” is %j in hundredths of a minor unit', (typed, hundredths) => {
  expect(readPieceCost(typed)).toBe(hundredths);
});

test('a cost finer than that is none', () => {
  expect(readPieceCost('0.00841')).toBeUndefined();
});

test('every cost that is shown has two decimals or more, and reads back as itself', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 99_999_999_999 }), (hundredths) => {
      expect(pieceCostText(hundredths)).toMatch(/\.\d{2,4}$/);
      expect(readPieceCost(pieceCostText(hundredths))).toBe(hundredths);
    }),
  );
});
