import { describe, expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/pooling.json' with { type: 'json' };
import { betaMoments } from '../../../src/domain/statistics/beta-moments.ts';
import { FULL_POOLING, likeliestPopulation } from '../../../src/domain/statistics/beta-population.ts';
import type { Count } from '../../../src/domain/statistics/counts.ts';
import { empiricalBayes } from '../../../src/domain/statistics/empirical-bayes.ts';
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
