import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bonferroniThreshold,
  falseDiscovery,
  holm,
  taroneHolm,
} from '../../../src/domain/statistics/false-discovery.ts';

const chance = fc.double({ min: 0, max: 1, noNaN: true });
const chances = fc.array(chance, { maxLength: 20 });

describe('adjusted p values', () => {
  // By hand from the definitions: p · m ÷ rank, and p · (m − rank + 1), each made monotone.
  test('of 0.01, 0.04, 0.03 and 0.9', () => {
    expect(falseDiscovery([0.01, 0.04, 0.03, 0.9])).toEqual([0.04, 0.04 * (4 / 3), 0.04 * (4 / 3), 0.9]);
    expect(holm([0.01, 0.04, 0.03, 0.9])).toEqual([0.04, 0.09, 0.09, 0.9]);
    expect(bonferroniThreshold(0.05, 4)).toBe(0.0125);
  });

  test('a test that could never come so low costs the others nothing', () => {
    expect(taroneHolm([0.01, 1, 1], [0.001, 0.02, 0.5])).toEqual([0.01, 1, 1]);
    expect(taroneHolm([0.02, 1, 1], [0.001, 0.02, 0.5])).toEqual([0.04, 1, 1]);
    expect(taroneHolm([0.03, 1, 1], [0.001, 0.02, 0.5])).toEqual([0.06, 1, 1]);
  });

  test('of none there are none', () => {
    expect([falseDiscovery([]), holm([]), taroneHolm([], [])]).toEqual([[], [], []]);
  });
});

describe('laws', () => {
  test('p ≤ each of them ≤ 1; false discovery ≤ Holm; Tarone ≤ Holm; the order of p values stays', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(chance, chance), { maxLength: 20 }), (pairs) => {
        const p = pairs.map(([each]) => each);
        const least = pairs.map(([each, part]) => each * part);
        const [shares, all, some] = [falseDiscovery(p), holm(p), taroneHolm(p, least)];
        for (const [at, each] of p.entries()) {
          const [share = -1, whole = -1, tarone = -1] = [shares[at], all[at], some[at]];
          for (const adjusted of [share, whole, tarone]) {
            expect(adjusted).toBeGreaterThanOrEqual(each);
            expect(adjusted).toBeLessThanOrEqual(1);
          }
          expect(share).toBeLessThanOrEqual(whole * (1 + 1e-12));
          expect(tarone).toBeLessThanOrEqual(whole);
          for (const [other, than] of p.entries()) {
            if (each < than) expect(whole).toBeLessThanOrEqual(all[other] ?? 0);
            if (each < than) expect(tarone).toBeLessThanOrEqual(some[other] ?? 0);
          }
        }
      }),
    );
  });

  test('Holm shows something exactly when Bonferroni does', () => {
    fc.assert(
      fc.property(chances, (p) => {
        if (p.length === 0) return;
        const least = Math.min(...p);
        expect(holm(p).some((each) => each <= 0.05)).toBe(least * p.length <= 0.05);
      }),
    );
  });
});

test('what is no chance is refused', () => {
  expect(() => falseDiscovery([1.1])).toThrow(RangeError);
  expect(() => holm([Number.NaN])).toThrow(RangeError);
  expect(() => taroneHolm([0.1], [])).toThrow(RangeError);
  expect(() => bonferroniThreshold(0.05, 0)).toThrow(RangeError);
});
