import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/proportions.json' with { type: 'json' };
import type { Interval } from '../../../src/domain/statistics/counts.ts';
import { clopperPearson, jeffreys, wilson } from '../../../src/domain/statistics/proportion-intervals.ts';
import { farthest, referenceCases } from './reference/read-reference.ts';

function expectLimits(found: Interval, { limits, within }: { limits: Interval; within: number }): void {
  for (const [index, limit] of limits.entries()) {
    expect(Math.abs((found[index] ?? Number.NaN) - limit)).toBeLessThanOrEqual(within);
  }
}

describe('the published intervals', () => {
  test.each(['prop-wilson-81-263', 'prop-wilson-0-20'] as const)(
    'Wilson, %s (Newcombe 1998, table I)',
    (id) => {
      const { inputs, expected, tolerance } = cases[id];
      const limits = [expected.lower, expected.upper] as const;
      expectLimits(wilson(inputs.x, inputs.n, inputs.confidence), { limits, within: tolerance });
    },
  );

  test('Wilson, 26 of 200: lower 95 % limit on one side 0.09577 (NIST e-Handbook 7.2.4.1)', () => {
    const { inputs, expected, tolerance } = cases['prop-nist-wilson-onesided'];
    const [low] = wilson(inputs.x, inputs.n, 2 * inputs.confidence_one_sided - 1);
    expect(Math.abs(low - expected.lower)).toBeLessThanOrEqual(tolerance);
  });

  test.each(['prop-cp-15-148', 'prop-cp-1-29', 'prop-nist-cp-4-20'] as const)(
    'Clopper-Pearson, %s (Newcombe 1998, table I; NIST e-Handbook 7.2.4.1)',
    (id) => {
      const { inputs, expected, tolerance } = cases[id];
      const limits = [expected.lower, expected.upper] as const;
      expectLimits(clopperPearson(inputs.x, inputs.n, inputs.confidence), { limits, within: tolerance });
    },
  );

  test('Clopper-Pearson, nothing in 20 and 30: upper 95 % limit on one side (Hanley and Lippman-Hand 1983)', () => {
    const { inputs, expected, tolerance } = cases['prop-zero-rule'];
    for (const [index, n] of inputs.n.entries()) {
      const [, high] = clopperPearson(0, n, 0.9);
      expect(Math.abs(high - (expected.exact[index] ?? Number.NaN))).toBeLessThanOrEqual(tolerance);
    }
  });

  test.each(['prop-jeffreys-81-263', 'prop-jeffreys-1-29'] as const)(
    'Jeffreys, %s (definition of Brown, Cai and DasGupta 2001)',
    (id) => {
      const { inputs, expected, tolerance } = cases[id];
      const limits = [expected.lower, expected.upper] as const;
      expectLimits(jeffreys(inputs.x, inputs.n, inputs.confidence), { limits, within: tolerance });
    },
  );

  test('Jeffreys, 0 of 20: the lower limit is 0 by convention (Brown, Cai and DasGupta 2001, section 3.1.3)', () => {
    const { inputs, expected, tolerance } = cases['prop-jeffreys-0-20-plain'];
    const limits = [expected.lower_by_convention, expected.upper] as const;
    const found = jeffreys(inputs.x, inputs.n, inputs.confidence);
    expect(found[0]).toBe(0);
    expectLimits(found, { limits, within: tolerance });
  });
});

describe('the intervals agree with the reference implementations, to 1e-9 of each limit', () => {
  type Row = readonly [k: number, n: number, level: number, ...limits: number[]];

  test('Wilson and Jeffreys (statsmodels)', () => {
    const rows = referenceCases<Row>('scipy-reference', 'intervals');
    const pairs = rows.flatMap(([k, n, level, ...limits]) =>
      [...wilson(k, n, level), ...jeffreys(k, n, level)].map(
        (found, index) => [found, limits[index] ?? Number.NaN] as const,
      ),
    );
    // The lower Wilson limit of statsmodels is a difference that cancels: it is off by up to 1e-16 ÷ limit, and at
    // k = 0 it leaves as much instead of 0.
    const apart = pairs.filter(([found, expected]) => Math.abs(found - expected) > 2e-16);
    expect(farthest(apart)).toBeLessThan(1e-9);
  });

  test('Clopper-Pearson (R, binom.test)', () => {
    const rows = referenceCases<Row>('r-reference', 'clopperPearson');
    const pairs = rows.flatMap(([k, n, level, ...limits]) =>
      clopperPearson(k, n, level).map((found, index) => [found, limits[index] ?? Number.NaN] as const),
    );
    expect(farthest(pairs)).toBeLessThan(1e-9);
  });
});

describe.each([
  ['wilson', wilson],
  ['clopperPearson', clopperPearson],
  ['jeffreys', jeffreys],
])('the laws of %s', (_, interval) => {
  const count = fc
    .oneof(fc.integer({ min: 1, max: 100 }), fc.integer({ min: 1, max: 1e6 }))
    .chain((n) => fc.tuple(fc.oneof(fc.constantFrom(0, n), fc.nat({ max: n })), fc.constant(n)));
  // In thousandths: levels that differ by less than rounding cannot be told apart.
  const level = fc.integer({ min: 500, max: 999 }).map((thousandths) => thousandths / 1000);

  test('0 ≤ low ≤ k ÷ n ≤ high ≤ 1', () => {
    fc.assert(
      fc.property(count, level, ([k, n], at) => {
        const [low, high] = interval(k, n, at);
        expect(low).toBeGreaterThanOrEqual(0);
        expect(low).toBeLessThanOrEqual(k / n);
        expect(high).toBeGreaterThanOrEqual(k / n);
        expect(high).toBeLessThanOrEqual(1);
      }),
    );
  });

  test('counting the bad ones instead of the good turns it round', () => {
    fc.assert(
      fc.property(count, level, ([k, n], at) => {
        const [low, high] = interval(k, n, at);
        const [turnedLow, turnedHigh] = interval(n - k, n, at);
        expect(1 - turnedHigh).toBeCloseTo(low, 12);
        expect(1 - turnedLow).toBeCloseTo(high, 12);
      }),
    );
  });

  test('a higher level is wider, and more good pieces lie higher', () => {
    fc.assert(
      fc.property(count, level, level, ([k, n], a, b) => {
        const [low, high] = interval(k, n, Math.min(a, b));
        const [lower, higher] = interval(k, n, Math.max(a, b));
        expect(lower).toBeLessThanOrEqual(low);
        expect(higher).toBeGreaterThanOrEqual(high);
        if (k === n) return;
        const [nextLow, nextHigh] = interval(k + 1, n, Math.min(a, b));
        expect(nextLow).toBeGreaterThan(low);
        expect(nextHigh).toBeGreaterThan(high);
      }),
    );
  });

  test('all good reaches 1, none good 0, and without a piece nothing is known', () => {
    for (const n of [1, 7, 1e6]) {
      expect(interval(n, n, 0.9)[1]).toBe(1);
      expect(interval(0, n, 0.9)[0]).toBe(0);
    }
    expect(interval(0, 0, 0.9)).toEqual([0, 1]);
  });

  test.each([
    [3, 2, 0.9],
    [-1, 2, 0.9],
    [1.5, 2, 0.9],
    [1, Number.NaN, 0.9],
    [1, Number.POSITIVE_INFINITY, 0.9],
    [1, 2, 0],
    [1, 2, 1],
    [1, 2, Number.NaN],
  ])('%d of %d at %d is refused', (k, n, at) => {
    expect(() => interval(k, n, at)).toThrow(RangeError);
  });
});

test('the exact interval covers every true share at least as often as it says', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 40 }), fc.double({ min: 0.01, max: 0.99, noNaN: true }), (n, p) => {
      let chance = (1 - p) ** n;
      let covered = 0;
      for (let k = 0; k <= n; k++) {
        const [low, high] = clopperPearson(k, n, 0.9);
        if (low <= p && p <= high) covered += chance;
        chance *= ((n - k) / (k + 1)) * (p / (1 - p));
      }
      expect(covered).toBeGreaterThanOrEqual(0.9 - 1e-9);
    }),
    { numRuns: 50 },
  );
});
