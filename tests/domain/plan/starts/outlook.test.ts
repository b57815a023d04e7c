import { expect, test } from 'vitest';
import { goodByStarts } from '../../../../src/domain/plan/starts/good-by-starts.ts';
import { blockEnd, fillOutlook, newOutlook } from '../../../../src/domain/plan/starts/outlook.ts';
import { betaBinomial } from '../../../../src/domain/statistics/beta-binomial.ts';
import { known } from './rates.ts';

test('thousands of starts are as exact as a few, whether the rate is known well or hardly', () => {
  for (const rate of [known(0.9), { alpha: 900, beta: 100 }, { alpha: 3, beta: 0.4 }]) {
    const comesTo = goodByStarts({ wanted: 3000, finished: 0, stages: [{ rate, standing: 0 }] });
    for (const n of [3001, 3200, 3333, 3347, 3420, 3800]) {
      // Of the known rate the sums of the other routine cancel: it is held to a thousand times less.
      const far = rate.alpha > 1e9 ? 1e-2 : 1e-9;
      expect(
        Math.abs(comesTo(n).chance - (1 - betaBinomial.cdf(2999, n, rate.alpha, rate.beta))),
      ).toBeLessThan(far);
    }
  }
});

test('a step in the middle of a block is found and drawn by itself', () => {
  const outlook = newOutlook();
  const asked = new Set<number>();
  fillOutlook(outlook, {
    upTo: 5000,
    sumOf: (pieces) => {
      asked.add(pieces);
      return { fewer: pieces < 4321 ? 1 : 0, short: Math.max(0, 4321 - pieces) };
    },
  });
  for (const pieces of [1, 1023, 1024, 3000, 4319, 4320, 4321, 4322, 4999]) {
    expect(outlook.fewer[pieces]).toBeCloseTo(pieces < 4321 ? 1 : 0, 9);
    expect(outlook.short[pieces]).toBeCloseTo(Math.max(0, 4321 - pieces), 6);
  }
  expect(asked.size).toBeLessThan(1700);
});

test('blocks follow on one another', () => {
  expect([0, 1023, 1024, 1151, 1152, 2047, 2048].map(blockEnd)).toEqual([
    0, 1023, 1151, 1151, 1279, 2047, 2303,
  ]);
});
