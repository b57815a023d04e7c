import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/pooling.json' with { type: 'json' };
import { betaMoments } from '../../../src/domain/statistics/beta-moments.ts';
import { FULL_POOLING, likeliestPopulation } from '../../../src/domain/statistics/beta-population.ts';
import type { Count } from '../../../src/domain/statistics/counts.ts';
import { empiricalBayes } from '../../../src/domain/statistics/empirical-bayes.ts';
import { betaQuantile } from '../../../src/domain/statistics/special-functions.ts';
import { farthest, referenceCases } from './reference/read-reference.ts';

const groupsOf = (k: readonly number[], n: readonly number[]): Count[] =>
  k.map((each, index) => ({ k: each, n: n[index] ?? each }));

test('70 groups of rats have the moments of Gelman et al., section 5.1 (data of Tarone 1982)', () => {
  const { inputs, expected, tolerance } = cases['eb-rats-moments'];
  const { y, n, current } = inputs;
  const found = betaMoments(groupsOf(y, n).slice(0, current - 1));
  if (found === undefined) throw new Error('These groups have moments.');
  expect(Math.abs(found.mean - expected.mean_of_rates)).toBeLessThanOrEqual(tolerance.rates);
  expect(Math.abs(found.sd - expected.sd_of_rates)).toBeLessThanOrEqual(tolerance.rates);
  expect(Math.abs(found.alpha - expected.alpha)).toBeLessThanOrEqual(tolerance.alpha);
  expect(Math.abs(found.beta - expected.beta)).toBeLessThanOrEqual(tolerance.beta);
  const [alpha, beta] = [found.alpha + 4, found.beta + 10];
  const mean = alpha / (alpha + beta);
  expect(Math.abs(mean - expected.current_mean)).toBeLessThanOrEqual(tolerance.mean);
  const sd = Math.sqrt((mean * (1 - mean)) / (alpha + beta + 1));
  expect(Math.abs(sd - expected.current_sd)).toBeLessThanOrEqual(tolerance.sd);
});

describe('pooling agrees with scipy', () => {
  test('the likeliest population', () => {
    type Row = readonly [k: readonly number[], n: readonly number[], alpha: number, beta: number];
    const rows = referenceCases<Row>('scipy-reference', 'likeliestPopulation');
    const pairs = rows.flatMap(([k, n, alpha, beta]) => {
      const found = likeliestPopulation(groupsOf(k, n));
      return [
        [found.alpha, alpha],
        [found.beta, beta],
      ] as const;
    });
    expect(farthest(pairs)).toBeLessThan(1e-9);
  });

  test('means and intervals, against the whole mixture by brute force', () => {
    type Answer = readonly [mean: number, low: number, high: number];
    type Row = readonly [k: readonly number[], n: readonly number[], answers: readonly Answer[]];
    const off: number[] = [];
    for (const [k, n, answers] of referenceCases<Row>('scipy-reference', 'empiricalBayes')) {
      const { groups } = empiricalBayes(groupsOf(k, n), 0.9);
      for (const [index, [mean, low, high]] of answers.entries()) {
        const group = groups[index] ?? { mean: Number.NaN, interval: [Number.NaN, Number.NaN] };
        const width = high - low;
        // Where all pieces went the same way the belief about the mean is far from a bell, and the beta that stands
        // for each mixture over it is least like it. A limit is then off by up to a tenth of the width.
        const most = k.some((each, at) => each > 0 && each < (n[at] ?? 0)) ? 0.05 : 0.1;
        expect(Math.abs(group.mean - mean)).toBeLessThan(0.01 * width);
        const limit = Math.max(Math.abs(group.interval[0] - low), Math.abs(group.interval[1] - high));
        expect(limit).toBeLessThan(most * width);
        off.push(limit / width);
      }
    }
    // Not 1e-9: the mixture is made of a dozen betas instead of some ten thousand. Half of the limits are within a
    // three-hundredth of the width.
    expect(off.toSorted((a, b) => a - b)[off.length / 2]).toBeLessThan(1 / 300);
  });
});

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

describe('the edges', () => {
  test('a group with many pieces stands for itself, one with few leans on the others', () => {
    const [many, few] = empiricalBayes([
      { k: 1500, n: 2000 },
      { k: 1, n: 2 },
      { k: 38, n: 40 },
      { k: 47, n: 50 },
      { k: 36, n: 40 },
    ]).groups;
    expect(many?.mean).toBeCloseTo(0.75, 2);
    expect(few?.mean).toBeGreaterThan(0.75);
  });

  test('rates that differ no more than chance lets them are pooled in full', () => {
    const { alpha, beta } = empiricalBayes([
      { k: 18, n: 20 },
      { k: 27, n: 30 },
      { k: 9, n: 10 },
    ]);
    expect(alpha + beta).toBeCloseTo(FULL_POOLING, 3);
    expect(alpha / (alpha + beta)).toBeCloseTo(0.9, 12);
  });

  test('one group alone, and groups that all went one way, have an answer', () => {
    for (const groups of [
      [{ k: 3, n: 4 }],
      [
        { k: 5, n: 5 },
        { k: 9, n: 9 },
      ],
      [{ k: 0, n: 1 }],
    ]) {
      const { alpha, beta, groups: found } = empiricalBayes(groups);
      expect(alpha + beta).toBeCloseTo(FULL_POOLING, 3);
      for (const { mean, raw = Number.NaN } of found) expect(Math.abs(mean - raw)).toBeLessThan(0.35);
    }
  });

  test('without a piece anywhere the rate may be anything', () => {
    const { alpha, beta, groups } = empiricalBayes([{ k: 0, n: 0 }]);
    expect([alpha, beta]).toEqual([1, 1]);
    expect(groups[0]?.raw).toBeUndefined();
    expect(groups[0]?.mean).toBeCloseTo(0.5, 9);
    expect(groups[0]?.interval[0]).toBeLessThan(0.1);
    expect(groups[0]?.interval[1]).toBeGreaterThan(0.9);
    expect(empiricalBayes([])).toEqual({ alpha: 1, beta: 1, groups: [] });
  });

  test('groups of a million are met', () => {
    const { groups } = empiricalBayes([
      { k: 999_000, n: 1e6 },
      { k: 500, n: 1e3 },
      { k: 1e6, n: 1e6 },
      { k: 0, n: 1e6 },
    ]);
    expect(groups.map(({ mean }) => mean)).toEqual([
      expect.closeTo(0.999, 5),
      expect.closeTo(0.5, 2),
      expect.closeTo(1, 5),
      expect.closeTo(0, 5),
    ]);
  });

  test('fractions of a piece count as such', () => {
    const found = [1.5, 2, 2.5].map(
      (k) =>
        empiricalBayes([
          { k, n: 3.7 },
          { k: 18.2, n: 20.4 },
        ]).groups[0]?.mean,
    );
    expect(found).toEqual(found.toSorted());
    expect(new Set(found).size).toBe(3);
  });

  test('moments are absent where there are none', () => {
    expect(betaMoments([{ k: 1, n: 2 }])).toBeUndefined();
    expect(
      betaMoments([
        { k: 1, n: 2 },
        { k: 2, n: 4 },
      ]),
    ).toBeUndefined();
    expect(
      betaMoments([
        { k: 0, n: 2 },
        { k: 2, n: 2 },
        { k: 0, n: 0 },
      ]),
    ).toBeUndefined();
  });

  test.each([
    [[{ k: 3, n: 2 }], 0.9],
    [[{ k: -0.5, n: 2 }], 0.9],
    [[{ k: 1, n: Number.NaN }], 0.9],
    [[{ k: 1, n: 2 }], 0],
  ])('%j at %d is refused', (groups, level) => {
    expect(() => empiricalBayes(groups, level)).toThrow(RangeError);
    if (level > 0) expect(() => betaMoments(groups)).toThrow(RangeError);
  });
});

/** A stream of numbers from 0 to 1 that is the same in every run (mulberry32). */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

describe('in 200 simulated shops of six woods with 20 to 60 pieces', () => {
  const next = numbers(42);
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
