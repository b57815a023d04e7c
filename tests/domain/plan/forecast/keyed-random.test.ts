import { expect, test } from 'vitest';
import {
  bitsAt,
  keyOf,
  normalOf,
  secondNormalOf,
  shareOf,
  thirdNormalOf,
} from '../../../../src/domain/plan/forecast/keyed-random.ts';

const draws = 100_000;

/** Draws of replications, of streams in one, and along one stream: all ways that a forecast takes them. */
const ways = {
  'over replications': (at: number) => bitsAt(keyOf(keyOf(keyOf(0, 7), at), 3), 0),
  'over streams': (at: number) => bitsAt(bitsAt(keyOf(7, 3), at), 0),
  'along a stream': (at: number) => bitsAt(bitsAt(keyOf(7, 3), 5), at),
};

test.each(Object.entries(ways))(
  '%s draws are spread evenly, and one says nothing of the next',
  (_, bitsOf) => {
    const cells = new Float64Array(1024);
    for (let at = 0; at < draws; at += 1) {
      const [one, next] = [bitsOf(at) >>> 27, bitsOf(at + 1) >>> 27];
      cells[one * 32 + next] = (cells[one * 32 + next] ?? 0) + 1;
    }
    const each = draws / 1024;
    const chiSquare = cells.reduce((sum, count) => sum + (count - each) ** 2 / each, 0);
    // 1023 degrees of freedom: five standard deviations of 45 about the mean. The keys are fixed, and so is the figure.
    expect(Math.abs(chiSquare - 1023)).toBeLessThan(5 * Math.sqrt(2 * 1023));
  },
);

test('a share lies between 0 and 1 and is neither', () => {
  expect(shareOf(0)).toBeGreaterThan(0);
  expect(shareOf(2 ** 32 - 1)).toBeLessThan(1);
});

test('three normal numbers come out of one draw, each standard, none of which says anything of another', () => {
  const sums = new Float64Array(9);
  for (let at = 0; at < draws; at += 1) {
    const bits = ways['over streams'](at);
    const numbers = [normalOf(bits), secondNormalOf(bits), thirdNormalOf(bits)];
    for (const [a, one] of numbers.entries())
      for (const [b, other] of numbers.entries()) sums[3 * a + b] = (sums[3 * a + b] ?? 0) + one * other;
  }
  for (const [place, sum] of sums.entries()) {
    const wanted = place % 4 === 0 ? 1 : 0;
    expect(Math.abs(sum / draws - wanted)).toBeLessThan((5 * Math.SQRT2) / Math.sqrt(draws));
  }
});
