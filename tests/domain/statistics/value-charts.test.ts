import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/control-charts.json' with { type: 'json' };
import { cusum } from '../../../src/domain/statistics/cusum.ts';
import { ewmaChart } from '../../../src/domain/statistics/ewma-chart.ts';
import { individualsChart } from '../../../src/domain/statistics/individuals-chart.ts';
import { shewhartArl } from '../../../src/domain/statistics/shewhart-arl.ts';

const values = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { maxLength: 20 });

describe('the chart of single values', () => {
  test('ten flow rates: mean 50.81, mean range 1.8778, limits 45.8159 and 55.8041 (NIST/SEMATECH 6.3.2.2)', () => {
    const { inputs, expected, tolerance } = cases['cc-nist-imr'];
    const chart = individualsChart(inputs.x);
    const near = (found: number | undefined, value: number) =>
      expect(Math.abs((found ?? Number.NaN) - value)).toBeLessThanOrEqual(tolerance);
    near(chart.centre, expected.xbar);
    near(chart.meanRange, expected.MRbar);
    near(chart.points[0]?.low, expected.LCL);
    near(chart.points[0]?.high, expected.UCL);
    for (const [at, range] of expected.moving_ranges.entries()) near(chart.movingRanges[at], range);
    expect(chart.signals).toEqual(expected.outside);
    expect(chart.rangeHigh).toBeCloseTo(3.267 * (chart.meanRange ?? 0), 12);
  });

  test('one value has a centre but no limits yet', () => {
    expect(individualsChart([5])).toEqual({
      centre: 5,
      points: [],
      signals: [],
      movingRanges: [],
      meanRange: undefined,
      rangeHigh: undefined,
    });
    expect(individualsChart([]).centre).toBeUndefined();
  });

  test('values that are all the same are all on the centre', () => {
    expect(individualsChart([0.1, 0.1, 0.1]).signals).toEqual([]);
  });
});

describe('the moving average', () => {
  test('20 values about 50 with λ 0.3: averages and asymptotic limits (NIST/SEMATECH 6.3.2.4)', () => {
    const { inputs, expected, tolerance } = cases['cc-nist-ewma'];
    const { target, s: sigma, lambda, k, x } = inputs;
    const chart = ewmaChart(x, { target, sigma, lambda, k, limits: 'asymptotic' });
    const averages = [target, ...chart.points.map(({ value }) => value)];
    for (const [at, average] of expected.ewma.entries()) {
      expect(Math.abs((averages[at] ?? Number.NaN) - average)).toBeLessThanOrEqual(tolerance.ewma);
    }
    expect(averages).toHaveLength(expected.ewma.length);
    for (const limits of [chart.asymptotic, chart.points[0], chart.points[19]]) {
      expect(Math.abs((limits?.low ?? 0) - expected.LCL)).toBeLessThanOrEqual(tolerance.limits);
      expect(Math.abs((limits?.high ?? 0) - expected.UCL)).toBeLessThanOrEqual(tolerance.limits);
    }
    expect(chart.signals).toEqual([]);
  });

  test('exact limits begin at k σ λ and come near the asymptotic ones', () => {
    const { points, asymptotic } = ewmaChart(
      Array.from({ length: 60 }, () => 0),
      {
        target: 0,
        sigma: 1,
        lambda: 0.25,
        k: 2,
      },
    );
    expect(points[0]?.high).toBeCloseTo(0.5, 12);
    expect(points[59]?.high).toBeCloseTo(asymptotic?.high ?? 0, 6);
  });

  test('a first value far away is a signal by the exact limits, not by the asymptotic ones', () => {
    const options = { target: 0, sigma: 1, lambda: 0.2 } as const;
    expect(ewmaChart([4], options).signals).toEqual([{ index: 0, rule: 'beyond-limits' }]);
    expect(ewmaChart([4], { ...options, limits: 'asymptotic' }).signals).toEqual([]);
  });

  test('with λ 1 and 3 σ it is the chart of single values', () => {
    fc.assert(
      fc.property(values, (list) => {
        const single = individualsChart(list);
        const average = ewmaChart(list, { lambda: 1 });
        expect(average.signals).toEqual(single.signals);
        expect(average.points).toHaveLength(single.points.length);
      }),
    );
  });
});

describe('the cumulative sum', () => {
  test('adds up what goes beyond the slack on either side, and says since when (by hand)', () => {
    const chart = cusum([0, 2, 2, 2, -1], { target: 0, sigma: 1, k: 0.5, h: 3 });
    expect(chart.sums.map(({ high }) => high)).toEqual([0, 1.5, 3, 4.5, 3]);
    expect(chart.sums.map(({ low }) => low)).toEqual([0, 0, 0, 0, 0.5]);
    expect(chart.signals).toEqual([{ index: 3, side: 'high', since: 1 }]);
  });

  test('a drift down is found as one up is', () => {
    fc.assert(
      fc.property(values, (list) => {
        const options = { target: 3, sigma: 7 };
        const up = cusum(list, options);
        const down = cusum(
          list.map((value) => 6 - value),
          options,
        );
        expect(down.sums.length).toBe(up.sums.length);
        for (const [at, { high, low }] of up.sums.entries()) {
          expect(down.sums[at]?.low).toBeCloseTo(high, 6);
          expect(down.sums[at]?.high).toBeCloseTo(low, 6);
        }
      }),
    );
  });
});

test('nothing, one value, and values that never differ give no NaN', () => {
  expect(ewmaChart([])).toEqual({ centre: undefined, points: [], signals: [], asymptotic: undefined });
  expect(ewmaChart([3]).points).toEqual([]);
  expect(ewmaChart([3, 3]).signals).toEqual([]);
  expect(cusum([])).toEqual({ centre: undefined, sums: [], signals: [] });
  expect(cusum([4, 4]).sums).toEqual([]);
});

test('what is no value, weight or limit is refused', () => {
  expect(() => individualsChart([Number.NaN])).toThrow(RangeError);
  expect(() => ewmaChart([1], { lambda: 0 })).toThrow(RangeError);
  expect(() => ewmaChart([1], { lambda: 1.1 })).toThrow(RangeError);
  expect(() => ewmaChart([1], { k: -1 })).toThrow(RangeError);
  expect(() => cusum([1], { sigma: 0 })).toThrow(RangeError);
  expect(() => cusum([1, 2], { h: -1 })).toThrow(RangeError);
  expect(() => shewhartArl(0, { sigmas: 0 })).toThrow(RangeError);
});
