import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/proportions.json' with { type: 'json' };
import { fisherExact } from '../../../src/domain/statistics/fisher-exact.ts';
import { twoProportions } from '../../../src/domain/statistics/two-proportions.ts';
import { farthest, referenceCases } from './reference/read-reference.ts';

describe('the published comparisons', () => {
  test.each(['prop2-newcombe-a', 'prop2-newcombe-d', 'prop2-newcombe-e'] as const)(
    "Newcombe's interval, %s (Newcombe 1998, table II, method 10)",
    (id) => {
      const { inputs, expected, tolerance } = cases[id];
      const { interval } = twoProportions(
        { k: inputs.x1, n: inputs.n1 },
        { k: inputs.x2, n: inputs.n2 },
        0.95,
      );
      expect(Math.abs(interval[0] - expected.lower)).toBeLessThanOrEqual(tolerance);
      expect(Math.abs(interval[1] - expected.upper)).toBeLessThanOrEqual(tolerance);
    },
  );

  test('2 of 7 against 3 of 5: one-tailed 0.3106 (NIST e-Handbook 7.3.3)', () => {
    const { expected, tolerance } = cases['prop2-nist-fisher'];
    const { pLess, p } = twoProportions({ k: 2, n: 7 }, { k: 3, n: 5 }, 0.95);
    expect(Math.abs(pLess - expected.p_one_tailed)).toBeLessThanOrEqual(tolerance.sum);
    expect(p).toBeCloseTo(0.5581, 4);
  });

  test('the lady tasting tea: 17/35 on both sides, 17/70 on one (R, fisher.test)', () => {
    const { expected, tolerance } = cases['prop2-tea'];
    const { p, pGreater } = twoProportions({ k: 3, n: 4 }, { k: 1, n: 4 }, 0.95);
    expect(Math.abs(p - expected.p_two_sided)).toBeLessThanOrEqual(tolerance);
    expect(Math.abs(pGreater - expected.p_one_sided)).toBeLessThanOrEqual(tolerance);
    expect([p, pGreater]).toEqual([expect.closeTo(17 / 35, 14), expect.closeTo(17 / 70, 14)]);
  });
});

describe('the comparisons agree with the reference implementations', () => {
  test("Newcombe's interval (statsmodels)", () => {
    type Row = readonly [number, number, number, number, level: number, low: number, high: number];
    const rows = referenceCases<Row>('scipy-reference', 'newcombe');
    const pairs = rows.flatMap(([k1, n1, k2, n2, level, low, high]) => {
      const { interval } = twoProportions({ k: k1, n: n1 }, { k: k2, n: n2 }, level);
      // A limit may lie anywhere near 0, where it is what remains of a difference of shares: so to 1e-9 of a share.
      return [
        [interval[0] + 2, low + 2],
        [interval[1] + 2, high + 2],
      ] as const;
    });
    expect(farthest(pairs)).toBeLessThan(1e-9);
  });

  test("Fisher's test (R)", () => {
    type Row = readonly [number, number, number, number, both: number, less: number, greater: number];
    const rows = referenceCases<Row>('r-reference', 'fisher');
    const pairs = rows.flatMap(([k1, n1, k2, n2, both, less, greater]) => {
      const found = fisherExact({ k: k1, n: n1 }, { k: k2, n: n2 });
      return [
        [found.twoSided, both],
        [found.less, less],
        [found.greater, greater],
      ] as const;
    });
    // R's log-factorials of 10⁵ pieces carry an error of about 1e-10 each.
    expect(farthest(pairs)).toBeLessThan(1e-9);
  });
});

describe('the laws of a comparison', () => {
  const count = fc.nat({ max: 60 }).chain((n) => fc.record({ k: fc.nat({ max: n }), n: fc.constant(n) }));
  const some = fc
    .integer({ min: 1, max: 500 })
    .chain((n) => fc.record({ k: fc.nat({ max: n }), n: fc.constant(n) }));
  const level = fc.double({ min: 0.5, max: 0.999, noNaN: true });

  test('the interval holds the difference and stays within −1 and 1', () => {
    fc.assert(
      fc.property(some, some, level, (a, b, at) => {
        const { difference = Number.NaN, interval } = twoProportions(a, b, at);
        expect(difference).toBe(a.k / a.n - b.k / b.n);
        expect(interval[0]).toBeLessThanOrEqual(difference);
        expect(interval[1]).toBeGreaterThanOrEqual(difference);
        expect(interval[0]).toBeGreaterThanOrEqual(-1 - 1e-12);
        expect(interval[1]).toBeLessThanOrEqual(1 + 1e-12);
      }),
    );
  });

  test('the other way round it is the same with the other sign', () => {
    fc.assert(
      fc.property(count, count, level, (a, b, at) => {
        const there = twoProportions(a, b, at);
        const back = twoProportions(b, a, at);
        expect(back.interval[0]).toBeCloseTo(-there.interval[1], 12);
        expect(back.p).toBeCloseTo(there.p, 12);
        expect(back.pLess).toBeCloseTo(there.pGreater, 12);
      }),
    );
  });

  test('chances lie from 0 to 1, and both one-sided ones share the table found', () => {
    fc.assert(
      fc.property(count, count, (a, b) => {
        const { twoSided, less, greater } = fisherExact(a, b);
        for (const chance of [twoSided, less, greater]) {
          expect(chance).toBeGreaterThan(0);
          expect(chance).toBeLessThanOrEqual(1);
        }
        expect(less + greater).toBeGreaterThanOrEqual(1 - 1e-12);
        expect(twoSided).toBeGreaterThanOrEqual(Math.min(less, greater) * (1 - 1e-12));
      }),
    );
  });

  test('without a difference a low chance is rare: at most one table in twenty has p below 0.05', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 25 }), fc.integer({ min: 1, max: 25 }), (n1, n2) => {
        const p = 0.3;
        let rare = 0;
        for (let x = 0; x <= n1; x++) {
          for (let y = 0; y <= n2; y++) {
            if (fisherExact({ k: x, n: n1 }, { k: y, n: n2 }).twoSided <= 0.05)
              rare += binomial(x, n1, p) * binomial(y, n2, p);
          }
        }
        expect(rare).toBeLessThanOrEqual(0.05);
      }),
      { numRuns: 20 },
    );
  });
});

/** The plain product: slow and right for small numbers. */
function binomial(k: number, n: number, p: number): number {
  let chance = (1 - p) ** n;
  for (let j = 0; j < k; j++) chance *= ((n - j) / (j + 1)) * (p / (1 - p));
  return chance;
}

describe('the edges', () => {
  test('while one side has no pieces nothing is known of the difference', () => {
    expect(twoProportions({ k: 0, n: 0 }, { k: 3, n: 9 }, 0.9)).toEqual({
      difference: undefined,
      interval: [-1, 1],
      p: 1,
      pLess: 1,
      pGreater: 1,
    });
  });

  test('100 000 pieces a side', () => {
    const { p, interval } = twoProportions({ k: 50_000, n: 100_000 }, { k: 49_500, n: 100_000 }, 0.95);
    expect(p).toBeGreaterThan(0.02);
    expect(p).toBeLessThan(0.03);
    expect(interval[0]).toBeGreaterThan(0);
    expect(twoProportions({ k: 100_000, n: 100_000 }, { k: 0, n: 100_000 }, 0.95).p).toBe(0);
  });

  test.each([
    [{ k: 3, n: 2 }, { k: 1, n: 2 }, 0.9],
    [{ k: 1, n: 2 }, { k: -1, n: 2 }, 0.9],
    [{ k: 1, n: 2 }, { k: 1, n: 2 }, 1],
  ])('%j against %j at %d is refused', (a, b, at) => {
    expect(() => twoProportions(a, b, at)).toThrow(RangeError);
  });
});
