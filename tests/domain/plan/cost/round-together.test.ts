import fc from 'fast-check';
import { expect, test } from 'vitest';
import { roundTogether } from '../../../../src/domain/plan/cost/round-together.ts';

test('what is left goes to the largest remainders (Hamilton’s method, worked by hand)', () => {
  expect(roundTogether([1.4, 1.4, 1.4])).toEqual({ whole: 4, parts: [2, 1, 1] });
  expect(roundTogether([3.1, 2.7, 1.7])).toEqual({ whole: 8, parts: [3, 3, 2] });
  // 10 seats by 47, 16, 16, 12, 6 and 3 of 100 votes: 5, 2, 1, 1, 1 and 0 (a common textbook example, by hand).
  expect(roundTogether([4.7, 1.6, 1.5801, 1.2, 0.6, 0.3199]).parts).toEqual([5, 2, 1, 1, 1, 0]);
});

test('nothing, and what goes back, are amounts too', () => {
  expect(roundTogether([])).toEqual({ whole: 0, parts: [] });
  expect(roundTogether([-0.2, 0.1])).toEqual({ whole: 0, parts: [0, 0] });
  expect(roundTogether([-1.5, -1.5])).toEqual({ whole: -3, parts: [-1, -2] });
  expect(() => roundTogether([1, Number.NaN])).toThrow(RangeError);
});

test('parts are whole, add up, and none is off by a whole unit', () => {
  const money = fc.double({ min: -1e6, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(fc.array(money, { maxLength: 12 }), (exact) => {
      const { whole, parts } = roundTogether(exact);
      expect(parts.reduce((sum, part) => sum + part, 0)).toBe(whole);
      expect(Math.abs(whole - exact.reduce((sum, part) => sum + part, 0))).toBeLessThanOrEqual(0.5 + 1e-6);
      for (const [at, part] of parts.entries()) {
        expect(Number.isInteger(part)).toBe(true);
        expect(Math.abs(part - (exact[at] ?? 0))).toBeLessThan(1 + 1e-6);
      }
    }),
  );
});
