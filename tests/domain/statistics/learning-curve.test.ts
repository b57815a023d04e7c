import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/learning.json' with { type: 'json' };
import { seededRandom } from '../../../src/domain/chance/seeded-random.ts';
import { learningCurve } from '../../../src/domain/statistics/learning-curve.ts';
import {
  cumulativeTotal,
  type LearningModel,
  learningExponent,
  predictUnit,
  unitsToReach,
} from '../../../src/domain/statistics/learning-model.ts';
import { normalQuantile } from '../../../src/domain/statistics/special-functions.ts';

const law = (firstUnit: number, rate: number, model: LearningModel = 'unit') => ({
  firstUnit,
  exponent: learningExponent(rate),
  model,
});
const near = (found: number | undefined, value: number | undefined, within: number) =>
  expect(Math.abs((found ?? Number.NaN) - (value ?? Number.NaN))).toBeLessThanOrEqual(within);

describe('the published curves', () => {
  test('factors and totals of the 80 % curve (Heizer and Render, module E; Stevenson, table 7S.1)', () => {
    const { inputs, expected, tolerance } = cases['learn-table-80'];
    for (const [at, n] of inputs.n.entries()) near(predictUnit(n, law(1, 0.8)), expected.unit[at], tolerance);
    for (const [n, total] of Object.entries(expected.total)) {
      near(cumulativeTotal(Number(n), law(1, 0.8)), total, tolerance);
    }
  });

  test('exponents of the usual rates (Wright 1936)', () => {
    const { inputs, expected, tolerance } = cases['learn-exponents'];
    for (const [at, rate] of inputs.rates.entries()) near(learningExponent(rate), expected.b[at], tolerance);
  });

  test('30 and 25 minutes: a rate of 83.3 %, and the seventh piece meets 18 (Stevenson, 7S problem 16)', () => {
    const { inputs, expected, tolerance } = cases['learn-irene'];
    const curve = learningCurve([inputs.T1, inputs.T2]);
    near(curve?.rate, expected.rate, tolerance.rate);
    expect(curve?.rateInterval).toBeUndefined();
    const n = curve && unitsToReach(inputs.standard, curve);
    near(n, expected.n_continuous, tolerance.n_continuous);
    expect(Math.ceil(n ?? 0)).toBe(expected.n);
  });

  test('at 80 % on average the second piece takes 60 of 100 (Wideman)', () => {
    const { inputs, expected, tolerance } = cases['learn-wright-basic'];
    const average = law(inputs.T1, inputs.rate, 'cumulativeAverage');
    near(cumulativeTotal(2, average) / 2, expected.average_2, tolerance);
    near(predictUnit(2, average), expected.unit_2, tolerance);
    near(cumulativeTotal(4, average) / 4, expected.average_4, tolerance);
  });

  test('the time of one piece from that of another, by the average (R package learningCurve, tests)', () => {
    const { inputs, expected, tolerance } = cases['learn-wright-unit'];
    for (const [at, { T_m, m, n, rate }] of inputs.cases.entries()) {
      const shape = law(1, rate, 'cumulativeAverage');
      near((T_m * predictUnit(n, shape)) / predictUnit(m, shape), expected.hours[at], tolerance);
    }
  });

  test('both models tell different totals of one rate (R package learningCurve, vignette)', () => {
    const { inputs, expected, tolerance } = cases['learn-model-gap'];
    const { T1, rate, n } = inputs;
    near(cumulativeTotal(n, law(T1, rate)), expected.total_unit_model, tolerance);
    const average = cumulativeTotal(n, law(T1, rate, 'cumulativeAverage'));
    near(average, expected.total_cumulative_average_model, tolerance);
  });

  test('a rate that was wrong by two hundredths costs a fifth of 250 pieces (R package learningCurve, tests)', () => {
    const { inputs, expected, tolerance } = cases['learn-rate-error'];
    const average = (rate: number) => cumulativeTotal(inputs.n, law(1, rate, 'cumulativeAverage'));
    near(average(inputs.r2) / average(inputs.r1) - 1, expected.error, tolerance);
  });

  test('from seven minutes to two in a day of handles is a rate of about 82 % (common practice, no source)', () => {
    near(learningCurve([7, ...Array.from({ length: 78 }, () => undefined), 2])?.rate, 0.82, 0.01);
  });
});

describe('a fit gives back what it was made of', () => {
  test.each<LearningModel>(['unit', 'cumulativeAverage'])('times without scatter, %s', (model) => {
    const shapes = fc.tuple(
      fc.double({ min: 0.5, max: 1.1, noNaN: true }),
      fc.double({ min: 0.1, max: 100, noNaN: true }),
    );
    fc.assert(
      fc.property(shapes, fc.integer({ min: 3, max: 40 }), ([rate, first], pieces) => {
        const shape = law(first, rate, model);
        const times = Array.from({ length: pieces }, (_, at) => predictUnit(at + 1, shape));
        // A rate below one half makes pieces of no time at all in the average model.
        fc.pre(times.every((time) => time > first * 1e-6));
        for (const fit of ['leastSquares', 'robust'] as const) {
          const curve = learningCurve(times, { model, fit });
          near(curve?.rate, rate, 1e-7);
          near((curve?.firstUnit ?? 0) / first, 1, 1e-6);
        }
      }),
    );
  });

  test('a piece of unknown time still counts as made', () => {
    const times = [10, 8, undefined, 6.4, 0, 10 * 6 ** learningExponent(0.8)];
    const curve = learningCurve(times);
    near(curve?.rate, 0.8, 1e-12);
    expect(curve?.pieces).toBe(4);
    expect(learningCurve(times, { model: 'cumulativeAverage' })?.pieces).toBe(2);
  });
});

describe('scatter', () => {
  const scattered = (random: () => number, { outliers }: { outliers: number }) =>
    Array.from({ length: 60 }, (_, at) => {
      const noise = Math.exp(0.3 * normalQuantile((random() * 2 ** 32 + 0.5) / 2 ** 32));
      return 7 * (at + 1) ** learningExponent(0.85) * noise + (random() < outliers ? 30 : 0);
    });

  test('nine in ten intervals hold the true rate: least squares without pauses, robust with one piece in twenty', () => {
    const random = seededRandom(1936);
    const held = { leastSquares: 0, robust: 0 };
    for (let run = 0; run < 400; run += 1) {
      for (const fit of ['leastSquares', 'robust'] as const) {
        const times = scattered(random, { outliers: fit === 'robust' ? 0.05 : 0 });
        const [low, high] = learningCurve(times, { fit })?.rateInterval ?? [2, 0];
        if (low <= 0.85 && 0.85 <= high) held[fit] += 1;
      }
    }
    // Two standard errors of 400 runs are 0.03; pauses shift the robust fit a little.
    expect(held.leastSquares / 400).toBeGreaterThan(0.86);
    expect(held.leastSquares / 400).toBeLessThan(0.94);
    expect(held.robust / 400).toBeGreaterThan(0.84);
  });

  test('one forgotten night in thirty pieces bends least squares, and the robust fit hardly', () => {
    const times = Array.from({ length: 30 }, (_, at) => 7 * (at + 1) ** learningExponent(0.8));
    times[27] = 900;
    near(learningCurve(times, { fit: 'robust' })?.rate, 0.8, 0.01);
    expect(learningCurve(times)?.rate).toBeGreaterThan(0.9);
  });

  test('thousands of pieces are thinned for the robust fit, not refused', () => {
    const times = Array.from({ length: 4000 }, (_, at) => 5 * (at + 1) ** -0.2);
    near(learningCurve(times, { fit: 'robust' })?.exponent, -0.2, 1e-9);
  });
});

describe('edges', () => {
  test('of one piece nothing is known yet', () => {
    expect(learningCurve([])).toBeUndefined();
    expect(learningCurve([7])).toBeUndefined();
    expect(learningCurve([7], { fit: 'robust' })).toBeUndefined();
    expect(learningCurve([0, 0, Number.NaN])).toBeUndefined();
  });

  test('whoever does not learn never comes down to a time', () => {
    expect(unitsToReach(5, law(10, 1))).toBeUndefined();
    expect(unitsToReach(10, law(10, 0.9))).toBe(1);
  });

  test('what is no rate, piece, time or level is refused', () => {
    expect(() => learningExponent(0)).toThrow(RangeError);
    expect(() => predictUnit(0, law(1, 0.8))).toThrow(RangeError);
    expect(() => cumulativeTotal(1.5, law(1, 0.8))).toThrow(RangeError);
    expect(() => unitsToReach(0, law(1, 0.8))).toThrow(RangeError);
    expect(() => learningCurve([1, 2], { level: 1 })).toThrow(RangeError);
  });
});
