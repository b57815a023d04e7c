import { expect, test } from 'vitest';
import { normalPopulation } from '../../../src/domain/statistics/normal-population.ts';

/** Eight schools: effects and standard errors (Rubin 1981; Gelman et al., Bayesian Data Analysis, table 5.2, from memory). */
const schools = [
  [28, 15],
  [8, 10],
  [-3, 16],
  [7, 11],
  [-1, 9],
  [1, 11],
  [18, 10],
  [12, 18],
].map(([mean = 0, error = 0]) => ({ mean, error }));

test('the eight schools come together as in Bayesian Data Analysis, table 5.3 (posterior medians, from memory)', () => {
  // With a prior as good as flat. The table is of 200 draws and has medians, these are means.
  const found = normalPopulation(schools, { spread: 1000 })?.groups ?? [];
  const medians = [10, 8, 7, 8, 5, 6, 10, 8];
  for (const [at, median] of medians.entries()) {
    expect(Math.abs((found[at]?.mean ?? Number.NaN) - median)).toBeLessThan(1.6);
  }
});

test('it is what the integral over mean and spread gives, point by point on a grid', () => {
  const spread = 5;
  let [mass, first, second] = [0, 0, 0];
  const density = (x: number, mean: number, variance: number) =>
    Math.exp(-((x - mean) ** 2) / (2 * variance)) / Math.sqrt(variance);
  for (let tau = 0.05; tau < 200; tau += 0.1)
    for (let mu = -60; mu < 80; mu += 1) {
      const prior = 1 / (1 + (tau / spread) ** 2);
      const weight = schools.reduce(
        (product, { mean, error }) => product * density(mean, mu, error ** 2 + tau ** 2),
        prior,
      );
      // School A, given both.
      const precision = 1 / 15 ** 2 + 1 / tau ** 2;
      const mean = (28 / 15 ** 2 + mu / tau ** 2) / precision;
      mass += weight;
      first += weight * mean;
      second += weight * (mean ** 2 + 1 / precision);
    }
  const mean = first / mass;
  const [school] = normalPopulation(schools, { spread })?.groups ?? [];
  expect(school?.mean).toBeCloseTo(mean, 1);
  expect(school?.sd).toBeCloseTo(Math.sqrt(second / mass - mean ** 2), 1);
});

test('a group that is known well stands for itself, and one that is not known leans on the others', () => {
  const found = normalPopulation(
    [
      { mean: 1, error: 0.001 },
      { mean: 1.4, error: 0.001 },
      { mean: 5, error: 50 },
    ],
    { spread: 0.3 },
  );
  expect(found?.groups[0]?.mean).toBeCloseTo(1, 3);
  expect(found?.groups[0]?.shared).toBeLessThan(0.01);
  expect(found?.groups[2]?.mean).toBeGreaterThan(0.9);
  expect(found?.groups[2]?.mean).toBeLessThan(1.6);
  expect(found?.other.mean).toBeCloseTo(1.2, 1);
  expect(found?.groups[2]?.sd).toBeGreaterThan(0.2);
});

test('one group alone is as it was measured, and of none nothing is known', () => {
  const found = normalPopulation([{ mean: 2, error: 0.1 }], { spread: 0.3 });
  expect(found?.groups[0]?.mean).toBeCloseTo(2, 9);
  expect(found?.groups[0]?.sd).toBeCloseTo(0.1, 9);
  expect(normalPopulation([], { spread: 0.3 })).toBeUndefined();
  expect(() => normalPopulation([{ mean: 2, error: 0 }], { spread: 0.3 })).toThrow(RangeError);
});
