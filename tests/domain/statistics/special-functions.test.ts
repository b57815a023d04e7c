import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cases as charts } from '../../../shared/check-values/control-charts.json' with { type: 'json' };
import { cases } from '../../../shared/check-values/pooling.json' with { type: 'json' };
import { cases as proportions } from '../../../shared/check-values/proportions.json' with { type: 'json' };
import {
  betaCdf,
  betaQuantile,
  betaUpperTail,
  binomialCdf,
  binomialUpperTail,
  digamma,
  logBeta,
  logGamma,
  normalCdf,
  normalQuantile,
  studentQuantile,
  trigamma,
} from '../../../src/domain/statistics/special-functions.ts';
import { farthest, referenceCases } from './reference/read-reference.ts';

type Four = readonly [number, number, number, number];
type Five = readonly [number, number, number, number, number];

describe('the special functions agree with R', () => {
  test('the beta distribution, both tails', () => {
    const rows = referenceCases<Five>('r-reference', 'beta');
    expect(farthest(rows.map(([x, a, b, lower]) => [betaCdf(x, a, b), lower]))).toBeLessThan(1e-9);
    expect(farthest(rows.map(([x, a, b, , upper]) => [betaUpperTail(x, a, b), upper]))).toBeLessThan(1e-9);
  });

  test('its quantiles', () => {
    const rows = referenceCases<Four>('r-reference', 'betaQuantile');
    expect(farthest(rows.map(([p, a, b, x]) => [betaQuantile(p, a, b), x]))).toBeLessThan(1e-9);
  });

  test('the normal distribution and its quantiles', () => {
    const rows = referenceCases<Four>('r-reference', 'normal');
    expect(farthest(rows.map(([p, z]) => [normalQuantile(p), z]))).toBeLessThan(1e-9);
    expect(farthest(rows.map(([, , z, p]) => [normalCdf(z), p]))).toBeLessThan(1e-9);
  });

  test("the quantiles of Student's t", () => {
    const rows = referenceCases<readonly [number, number, number]>('r-reference', 'student');
    expect(farthest(rows.map(([p, freedom, t]) => [studentQuantile(p, freedom), t]))).toBeLessThan(1e-9);
  });

  test('the binomial distribution, both tails', () => {
    const rows = referenceCases<Five>('r-reference', 'binomial');
    expect(farthest(rows.map(([k, n, p, lower]) => [binomialCdf(k, n, p), lower]))).toBeLessThan(1e-9);
    expect(farthest(rows.map(([k, n, p, , upper]) => [binomialUpperTail(k, n, p), upper]))).toBeLessThan(
      1e-9,
    );
  });
});

describe('the published values', () => {
  test('Beta(438, 544) has 95 % between 0.415 and 0.477 (Gelman et al., section 2.4)', () => {
    const { expected, tolerance } = proportions['prop-placenta'];
    const found = [0.025, 0.975].map((p) => betaQuantile(p, 438, 544));
    for (const [index, limit] of expected.interval95.entries()) {
      expect(Math.abs((found[index] ?? Number.NaN) - limit)).toBeLessThanOrEqual(tolerance);
    }
    expect(Math.abs(betaQuantile(0.5, 438, 544) - expected.median)).toBeLessThanOrEqual(tolerance);
  });

  test('P(at least 12 good of 13 to 16) at 0.9 (binomial distribution)', () => {
    const { inputs, expected, tolerance } = cases['lot-binomial-tail'];
    for (const [index, n] of inputs.n.entries()) {
      const found = binomialUpperTail(inputs.d, n, inputs.p);
      expect(Math.abs(found - (expected.P[index] ?? Number.NaN))).toBeLessThanOrEqual(tolerance);
    }
  });

  test('the fewest to start for d good ones with probability gamma (binomial distribution)', () => {
    const { inputs, expected } = cases['lot-binomial-start'];
    const found = inputs.cases.map(({ d, p, gamma }) => {
      let n = d;
      while (binomialUpperTail(d, n, p) < gamma) n++;
      return n;
    });
    expect(found).toEqual(expected.n);
  });
});

describe('the laws of the special functions', () => {
  const shape = fc.double({ min: 0.01, max: 1e4, noNaN: true });
  /** Not so small that a beta keeps most of itself nearer to 0 and 1 than a number can say. */
  const blunt = fc.double({ min: 0.5, max: 1e4, noNaN: true });
  const share = fc.double({ min: 0, max: 1, noNaN: true });

  test('a beta and its mirror are each other, and both tails make 1', () => {
    fc.assert(
      fc.property(share, shape, shape, (x, a, b) => {
        const lower = betaCdf(x, a, b);
        expect(lower).toBeGreaterThanOrEqual(0);
        expect(lower).toBeLessThanOrEqual(1);
        expect(lower + betaUpperTail(x, a, b)).toBeCloseTo(1, 12);
      }),
    );
  });

  test('a quantile is where the probability is reached', () => {
    fc.assert(
      fc.property(share, blunt, blunt, (p, a, b) => {
        expect(betaCdf(betaQuantile(p, a, b), a, b)).toBeCloseTo(p, 6);
      }),
    );
  });

  test('the logarithms follow their recurrences: Γ(x + 1) = x Γ(x), and what follows for the slopes', () => {
    fc.assert(
      fc.property(shape, shape, (a, b) => {
        expect(farthest([[logGamma(a + 1) + 1e3, logGamma(a) + Math.log(a) + 1e3]])).toBeLessThan(1e-12);
        expect(farthest([[digamma(a + 1) + 1e3, digamma(a) + 1 / a + 1e3]])).toBeLessThan(1e-12);
        expect(farthest([[trigamma(a + 1) + 1e5, trigamma(a) - 1 / a ** 2 + 1e5]])).toBeLessThan(1e-12);
        expect(logBeta(a, b)).toBe(logBeta(b, a));
      }),
    );
  });

  test("with one degree of freedom Student's t is Cauchy's: tan π(p − ½), from the middle to far out", () => {
    for (const away of [1e-9, 1e-4, 0.1, 0.24, 0.26, 0.45]) {
      const found = [studentQuantile(0.5 + away, 1), studentQuantile(0.5 - away, 1)];
      // The chance itself is known only to rounding, which is all that it may cost.
      const step = 2e-16 / away + 1e-13;
      expect(farthest(found.map((t, turn) => [turn === 0 ? t : -t, Math.tan(Math.PI * away)]))).toBeLessThan(
        step,
      );
    }
  });

  test('beside its range a distribution is 0 or 1', () => {
    expect([betaCdf(-1, 2, 3), betaCdf(2, 2, 3)]).toEqual([0, 1]);
    expect([betaUpperTail(-1, 2, 3), betaUpperTail(2, 2, 3)]).toEqual([1, 0]);
    expect([betaQuantile(0, 2, 3), betaQuantile(1, 2, 3)]).toEqual([0, 1]);
    expect([binomialCdf(-1, 5, 0.3), binomialCdf(5, 5, 0.3), binomialCdf(0, 0, 0.3)]).toEqual([0, 1, 1]);
    expect([binomialUpperTail(0, 5, 0.3), binomialUpperTail(6, 5, 0.3)]).toEqual([1, 0]);
    expect([normalCdf(-60), normalCdf(60)]).toEqual([0, 1]);
    expect([normalQuantile(0.5), studentQuantile(0.5, 3)]).toEqual([0, 0]);
  });

  test.each([
    () => logGamma(0),
    () => logBeta(-1, 2),
    () => digamma(Number.NaN),
    () => trigamma(0),
    () => betaCdf(Number.NaN, 1, 1),
    () => betaUpperTail(Number.NaN, 1, 1),
    () => betaCdf(0.5, 0, 1),
    () => betaQuantile(1.5, 1, 1),
    () => normalCdf(Number.NaN),
    () => normalQuantile(0),
    () => studentQuantile(1, 4),
    () => studentQuantile(0.9, 0),
    () => binomialCdf(1, 2.5, 0.5),
    () => binomialCdf(Number.NaN, 2, 0.5),
    () => binomialUpperTail(1, 2, 1.5),
    () => binomialUpperTail(Number.NaN, 2, 0.5),
  ])('an argument outside its range is refused: %s', (ask) => {
    expect(ask).toThrow(RangeError);
  });
});

test('the operating characteristic of a sampling plan is the one of the table', () => {
  const { inputs, expected, tolerance, source } = charts['cc-oc-52-3'];
  const found = inputs.p.map((p) => binomialCdf(inputs.c, inputs.n, p));
  for (const [at, value] of expected.Pa.entries())
    expect(Math.abs((found[at] ?? 2) - value), source).toBeLessThanOrEqual(tolerance);
});
