import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seededRandom } from '../../../src/domain/chance/seeded-random.ts';
import { FULL_POOLING } from '../../../src/domain/statistics/beta-population.ts';
import { empiricalBayes } from '../../../src/domain/statistics/empirical-bayes.ts';
import { betaQuantile } from '../../../src/domain/statistics/special-functions.ts';

const group = fc
  .oneof(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 2000 }))
  .chain((n) => fc.record({ k: fc.oneof(fc.constantFrom(0, n), fc.nat({ max: n })), n: fc.constant(n) }));
const some = fc.array(group, { minLength: 1, maxLength: 8 });

describe('the laws of pooling', () => {
  test('a rate lies between what the groups show and what a group without a piece would be given', () => {
    fc.assert(
      fc.property(some, (groups) => {
        const { groups: found } = empiricalBayes([...groups, { k: 0, n: 0 }]);
        const unseen = found.at(-1)?.mean ?? Number.NaN;
        const seen = groups.flatMap(({ k, n }) => (n > 0 ? [k / n] : []));
        for (const { mean } of found) {
          // Within the pull of the flat prior of the mean when there is little else.
          expect(mean).toBeGreaterThanOrEqual(Math.min(...seen, unseen) - 0.02);
          expect(mean).toBeLessThanOrEqual(Math.max(...seen, unseen) + 0.02);
        }
      }),
    );
  });

  test('nothing is NaN, and every mean lies in its interval within 0 and 1', () => {
    fc.assert(
      fc.property(some, fc.double({ min: 0.5, max: 0.99, noNaN: true }), (groups, level) => {
        const { alpha, beta, groups: found } = empiricalBayes(groups, level);
        expect(alpha).toBeGreaterThan(0);
        expect(beta).toBeGreaterThan(0);
        expect(alpha + beta).toBeLessThanOrEqual(FULL_POOLING * (1 + 1e-9));
        for (const { mean, interval } of found) {
          expect(interval[0]).toBeGreaterThanOrEqual(0);
          expect(interval[1]).toBeGreaterThanOrEqual(interval[0]);
          expect(interval[1]).toBeLessThanOrEqual(1);
          expect(mean).toBeGreaterThan(0);
          expect(mean).toBeLessThan(1);
        }
      }),
    );
  });

  test('good and bad turned round turn the answer round', () => {
    fc.assert(
      fc.property(some, (groups) => {
        const there = empiricalBayes(groups).groups;
        const back = empiricalBayes(groups.map(({ k, n }) => ({ k: n - k, n }))).groups;
        for (const [index, { mean, interval }] of there.entries()) {
          expect(1 - (back[index]?.mean ?? Number.NaN)).toBeCloseTo(mean, 8);
          expect(1 - (back[index]?.interval[1] ?? Number.NaN)).toBeCloseTo(interval[0], 5);
        }
      }),
    );
  });

  test('of two groups with as many pieces, the one with more good ones is given more', () => {
    fc.assert(
      fc.property(some, fc.integer({ min: 1, max: 60 }), fc.nat(), (groups, n, k) => {
        const { groups: found } = empiricalBayes([{ k: k % n, n }, { k: (k % n) + 1, n }, ...groups]);
        expect(found[1]?.mean).toBeGreaterThan(found[0]?.mean ?? Number.NaN);
      }),
    );
  });

  test('the order of the groups changes nothing', () => {
    fc.assert(
      fc.property(some, (groups) => {
        const { groups: found } = empiricalBayes(groups.toReversed());
        for (const [index, { mean }] of empiricalBayes(groups).groups.entries()) {
          expect(found.at(-1 - index)?.mean).toBeCloseTo(mean, 8);
        }
      }),
    );
  });
});

describe('in 200 simulated shops of six woods with 20 to 60 pieces', () => {
  const next = seededRandom(42);
  const whole = (low: number, high: number) => low + Math.floor(next() * (high - low + 1));
  const shops = Array.from({ length: 200 }, (_, shop) => {
    const precision = [8, 20, 60][shop % 3] ?? 20;
    const truth = Array.from({ length: 6 }, () => betaQuantile(next(), 0.88 * precision, 0.12 * precision));
    const counts = truth.map((rate) => {
      const n = whole(20, 60);
      return { k: Array.from({ length: n }, next).filter((draw) => draw < rate).length, n };
    });
    return empiricalBayes(counts, 0.9).groups.map((each, wood) => ({
      ...each,
      truth: truth[wood] ?? Number.NaN,
    }));
  }).flat();

  test('the 90 % intervals cover the true rate 86 to 94 times of 100', () => {
    const covered = shops.filter(
      ({ truth, interval }) => interval[0] <= truth && truth <= interval[1],
    ).length;
    expect(covered / shops.length).toBeGreaterThan(0.86);
    expect(covered / shops.length).toBeLessThan(0.94);
  });

  test('the pooled rate is nearer to the true one than the raw rate is', () => {
    const squares = (pick: 'raw' | 'mean') =>
      shops.reduce((sum, each) => sum + ((each[pick] ?? Number.NaN) - each.truth) ** 2, 0);
    expect(squares('mean')).toBeLessThan(0.9 * squares('raw'));
  });
});
