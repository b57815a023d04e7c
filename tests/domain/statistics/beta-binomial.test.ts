import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/pooling.json' with { type: 'json' };
import { betaBinomial } from '../../../src/domain/statistics/beta-binomial.ts';
import { farthest, referenceCases } from './reference/read-reference.ts';

const { pmf, cdf, quantile } = betaBinomial;

test('ten pieces at Beta(2, 3) have the tabled chances (beta-binomial distribution, multiples of 1/1001)', () => {
  const { inputs, expected, tolerance } = cases['lot-bb-table'];
  for (const [index, k] of inputs.k.entries()) {
    const found = pmf(k, inputs.n, inputs.a, inputs.b);
    expect(Math.abs(found - (expected.pmf[index] ?? Number.NaN))).toBeLessThanOrEqual(tolerance);
  }
});

describe('the beta-binomial agrees with scipy and mpmath', () => {
  type Row = readonly [
    k: number,
    n: number,
    alpha: number,
    beta: number,
    mass: number,
    sum: number,
    p: number,
    at: number,
  ];
  const rows = () => referenceCases<Row>('scipy-reference', 'betaBinomial');

  test('its mass', () => {
    expect(farthest(rows().map(([k, n, a, b, mass]) => [pmf(k, n, a, b), mass]))).toBeLessThan(1e-9);
  });

  test('its sum', () => {
    expect(farthest(rows().map(([k, n, a, b, , sum]) => [cdf(k, n, a, b), sum]))).toBeLessThan(1e-9);
  });

  test('its quantiles', () => {
    for (const [, n, a, b, , , p, at] of rows()) expect(quantile(p, n, a, b)).toBe(at);
  });
});

describe('the laws of the beta-binomial', () => {
  const shape = fc.double({ min: 0.05, max: 500, noNaN: true });
  const size = fc.integer({ min: 0, max: 400 });

  test('its masses sum to 1 and to its sums', () => {
    fc.assert(
      fc.property(size, shape, shape, (n, a, b) => {
        let sum = 0;
        for (let k = 0; k <= n; k++) {
          sum += pmf(k, n, a, b);
          expect(cdf(k, n, a, b)).toBeCloseTo(sum, 10);
        }
        expect(sum).toBeCloseTo(1, 10);
      }),
    );
  });

  test('a quantile is the first number that reaches its probability, and undoes the sum', () => {
    fc.assert(
      fc.property(size, shape, shape, fc.double({ min: 0, max: 1, noNaN: true }), (n, a, b, p) => {
        const k = quantile(p, n, a, b);
        expect(cdf(k, n, a, b)).toBeGreaterThanOrEqual(p * (1 - 1e-11));
        if (k > 0) expect(cdf(k - 1, n, a, b)).toBeLessThan(p);
        // Where the next piece adds less than rounding, numbers cannot be told apart by their sums.
        if (pmf(k, n, a, b) > 1e-9) expect(quantile(cdf(k, n, a, b), n, a, b)).toBe(k);
      }),
    );
  });

  test('at a flat chance every number is a quantile of its share, though a share is seldom a round binary number', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2000 }), fc.nat(), (n, draw) => {
        const k = draw % (n + 1);
        expect(quantile((k + 1) / (n + 1), n, 1, 1)).toBe(k);
      }),
      { numRuns: 300 },
    );
  });

  test('a sure chance makes it the binomial: 3 of 10 at one half', () => {
    expect(pmf(3, 10, 1e9, 1e9)).toBeCloseTo(120 / 1024, 7);
  });
});

describe('the edges', () => {
  test('of no pieces none come out', () => {
    expect([pmf(0, 0, 2, 3), cdf(0, 0, 2, 3), quantile(0.4, 0, 2, 3)]).toEqual([1, 1, 0]);
  });

  test('what is no number of pieces has no chance', () => {
    expect([pmf(-1, 5, 2, 3), pmf(6, 5, 2, 3), pmf(1.5, 5, 2, 3)]).toEqual([0, 0, 0]);
    expect([cdf(-0.5, 5, 2, 3), cdf(5.5, 5, 2, 3)]).toEqual([0, 1]);
    expect(cdf(2.9, 5, 2, 3)).toBe(cdf(2, 5, 2, 3));
  });

  test('a million pieces at a flat chance are spread evenly', () => {
    expect(pmf(123_456, 1e6, 1, 1) * 1_000_001).toBeCloseTo(1, 8);
    expect(cdf(249_999, 1e6, 1, 1)).toBeCloseTo(250_000 / 1_000_001, 9);
    expect(quantile(0.5, 1e6, 1, 1)).toBe(500_000);
  });

  test('far from the mean the chance fades to 0, and the quantile stays finite', () => {
    expect(cdf(1000, 1e6, 1e6, 10)).toBe(0);
    expect(quantile(0, 1e6, 1e6, 10)).toBe(0);
    expect(quantile(1, 50, 2, 3)).toBeLessThanOrEqual(50);
  });

  test.each([
    () => pmf(1, -1, 1, 1),
    () => pmf(1, 2.5, 1, 1),
    () => pmf(1, 2, 0, 1),
    () => cdf(1, 2, 1, Number.NaN),
    () => cdf(Number.NaN, 2, 1, 1),
    () => quantile(1.1, 2, 1, 1),
  ])('an argument outside its range is refused: %s', (ask) => {
    expect(ask).toThrow(RangeError);
  });
});
