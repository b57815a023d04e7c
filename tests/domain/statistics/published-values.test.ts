/** Published values of what the app has no function for, by way of what it computes. */
import { describe, expect, test } from 'vitest';
import { cases as charts } from '../../../shared/check-values/control-charts.json' with { type: 'json' };
import { cases as pooling } from '../../../shared/check-values/pooling.json' with { type: 'json' };
import { cases as proportions } from '../../../shared/check-values/proportions.json' with { type: 'json' };
import { cases as yields } from '../../../shared/check-values/yield.json' with { type: 'json' };
import { empiricalBayes } from '../../../src/domain/statistics/empirical-bayes.ts';
import { pChart } from '../../../src/domain/statistics/p-chart.ts';
import { productLimit } from '../../../src/domain/statistics/product-limit.ts';
import { clopperPearson, wilson } from '../../../src/domain/statistics/proportion-intervals.ts';
import {
  binomialCdf,
  binomialUpperTail,
  logGamma,
  normalCdf,
  normalQuantile,
} from '../../../src/domain/statistics/special-functions.ts';

function within(found: number | undefined, expected: number | undefined, tolerance: number): void {
  const away = Math.abs((found ?? Number.NaN) - (expected ?? Number.NaN));
  expect({ found, away: away <= tolerance }).toEqual({ found, away: true });
}

/** Where a function that falls from 0 to 1 comes down to `value`. */
function whereFalls(of: (p: number) => number, value: number): number {
  let [low, high] = [0, 1];
  while (high - low > 1e-12) {
    const middle = (low + high) / 2;
    if (of(middle) > value) low = middle;
    else high = middle;
  }
  return low;
}

describe('shares', () => {
  test.each(['prop-midp-15-148', 'prop-midp-0-20'] as const)(
    'the mid-p interval is where the binomial tails, with half of what was seen, hold one in forty: %s (Newcombe 1998)',
    (id) => {
      const { inputs, expected, tolerance } = proportions[id];
      const { x, n } = inputs;
      const upTo = (p: number) => (binomialCdf(x, n, p) + binomialCdf(x - 1, n, p)) / 2;
      within(whereFalls(upTo, 0.025), expected.upper, tolerance);
      within(x === 0 ? 0 : whereFalls(upTo, 0.975), expected.lower, tolerance);
    },
  );

  test('the z test of a share is where Wilson’s limit meets it: 26 of 200 against 0.1 (NIST 7.2.4)', () => {
    const { inputs, expected, tolerance } = proportions['prop-nist-ztest'];
    const limit = (z: number) => wilson(inputs.x, inputs.n, 2 * normalCdf(z) - 1)[0];
    expect(limit(expected.z - tolerance)).toBeGreaterThan(inputs.p0);
    expect(limit(expected.z + tolerance)).toBeLessThan(inputs.p0);
  });

  test('pieces that tell 0.2 from 0.1, by normal quantiles (NIST 7.2.4.2)', () => {
    const { inputs, expected } = proportions['prop-nist-samplesize'];
    const { p0, p1, alpha, beta } = inputs;
    const root =
      normalQuantile(1 - alpha) * Math.sqrt(p0 * (1 - p0)) +
      normalQuantile(1 - beta) * Math.sqrt(p1 * (1 - p1));
    const pieces = (root / (p1 - p0)) ** 2;
    expect(Math.ceil(pieces)).toBe(expected.n);
    expect(Math.ceil(Math.ceil(pieces) + 1 / (p1 - p0))).toBe(
      expected.n_with_continuity_correction_1_over_delta,
    );
  });

  test('χ² of five lots is the sum of the squared deviations of their p chart (NIST 7.4.6)', () => {
    const { inputs, expected, tolerance } = proportions['propk-nist-diodes'];
    const { centre = Number.NaN, points } = pChart(inputs.x, inputs.n);
    within(centre, expected.pooled, tolerance);
    const squares = points.map(({ value, high }) => ((3 * (value - centre)) / (high - centre)) ** 2);
    within(
      squares.reduce((sum, square) => sum + square, 0),
      expected.chi2,
      tolerance,
    );
  });

  test('runs without a failure that show a reliability, by the exact limit of none failed (Wilks 1941)', () => {
    const { inputs, expected } = pooling['lot-success-run'];
    for (const [at, [confidence = 0, reliability = 0]] of inputs.pairs_CR.entries()) {
      const pieces = expected.n[at] ?? 0;
      const limit = (n: number) => clopperPearson(n, n, 2 * confidence - 1)[0];
      expect(limit(pieces)).toBeGreaterThanOrEqual(reliability);
      expect(limit(pieces - 1)).toBeLessThan(reliability);
    }
  });

  test('eighteen batters: pooled, the error against the rest of the season is a third (Efron and Morris 1977)', () => {
    const { inputs, expected, tolerance } = pooling['eb-efron-morris'];
    const { groups } = empiricalBayes(inputs.hits.map((k) => ({ k, n: inputs.at_bats })));
    const error = (of: (at: number) => number) =>
      inputs.season.reduce((sum, season, at) => sum + (of(at) - season) ** 2, 0);
    const raw = error((at) => groups[at]?.raw ?? Number.NaN);
    const pooled = error((at) => groups[at]?.mean ?? Number.NaN);
    within(raw, expected.sse_raw, tolerance.sse);
    expect(raw / pooled).toBeGreaterThan(3);
    // James and Stein take the rates as normal, and the population as known: not the same, and near.
    const [first, last] = [groups.slice(0, 3), groups.at(-1)];
    for (const [at, { mean }] of first.entries()) within(mean, expected.first_three[at], 0.013);
    within(last?.mean, expected.last, 0.013);
  });
});

describe('chances', () => {
  test('just 3 of 200 at 0.025, as the difference of tails (NIST 6.3.3.1)', () => {
    const { inputs, expected, tolerance } = charts['cc-nist-poisson'];
    const { k, n, p } = inputs;
    within(binomialCdf(k, n, p) - binomialCdf(k - 1, n, p), expected.binomial, tolerance);
    within(binomialUpperTail(k, n, p) - binomialUpperTail(k + 1, n, p), expected.binomial, tolerance);
  });

  test('the bias factor c₄ of ten values, by the gamma function (NIST 6.3.2)', () => {
    const { inputs, expected, tolerance } = charts['cc-c4'];
    const { n } = inputs;
    const c4 = Math.sqrt(2 / (n - 1)) * Math.exp(logGamma(n / 2) - logGamma((n - 1) / 2));
    within(c4, expected.c4, tolerance);
  });

  test('3.4 and 66,807 flaws in a million lie beyond 6 and 3 sigma with the customary shift of 1.5', () => {
    const { inputs, expected, tolerance } = yields['yield-sigma-convention'];
    for (const [at, dpmo] of inputs.dpmo.entries())
      within(1.5 - normalQuantile(dpmo / 1e6), expected.sigma_level[at], tolerance);
  });
});

test('what falls off along three operations is what the product of their survivals has lost (ISO 22400-2)', () => {
  const { inputs, expected, tolerance } = yields['yield-iso22400-falloff'];
  let atRisk = inputs.start;
  const steps = inputs.scrap_by_operation.map((lost) => {
    const step = { atRisk, lost };
    atRisk -= lost;
    return step;
  });
  const survivals = [1, ...productLimit(steps).map(({ survival = Number.NaN }) => survival)];
  for (const [at, fallOff] of expected.fall_off_by_operation.entries()) {
    const [before = Number.NaN, after = Number.NaN] = survivals.slice(at);
    within(before - after, fallOff, tolerance);
    within(1 - after / before, expected.scrap_ratio_by_operation[at], tolerance);
  }
  within(1 - (survivals.at(-1) ?? Number.NaN), expected.cumulative, tolerance);
});
