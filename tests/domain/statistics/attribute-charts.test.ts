import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/control-charts.json' with { type: 'json' };
import { cChart } from '../../../src/domain/statistics/c-chart.ts';
import type { ControlChart } from '../../../src/domain/statistics/control-chart.ts';
import { gChart } from '../../../src/domain/statistics/g-chart.ts';
import { pChart } from '../../../src/domain/statistics/p-chart.ts';
import { uChart } from '../../../src/domain/statistics/u-chart.ts';

/** Published points are counted from 1. */
const outside = ({ signals }: ControlChart) => signals.map(({ index }) => index + 1);

function expectLimits(
  chart: ControlChart,
  { centre, low, high, within }: { centre: number; low: number; high: number; within: number },
): void {
  expect(Math.abs((chart.centre ?? Number.NaN) - centre)).toBeLessThanOrEqual(within);
  for (const point of chart.points) {
    expect(Math.abs(point.low - low)).toBeLessThanOrEqual(within);
    expect(Math.abs(point.high - high)).toBeLessThanOrEqual(within);
  }
}

describe('the published charts', () => {
  test('30 wafers of 50 chips have two points outside 0.0524 and 0.4102 (NIST/SEMATECH 6.3.3.2)', () => {
    const { inputs, expected, tolerance } = cases['cc-nist-p'];
    const chart = pChart(
      inputs.fractions.map((fraction) => Math.round(fraction * inputs.n)),
      inputs.fractions.map(() => inputs.n),
    );
    expectLimits(chart, { centre: expected.pbar, low: expected.LCL, high: expected.UCL, within: tolerance });
    expect(outside(chart)).toEqual(expected.outside);
  });

  test('25 wafers have one point outside 4 and 28, and one of 28 that is not (NIST/SEMATECH 6.3.3.1)', () => {
    const { inputs, expected, tolerance } = cases['cc-nist-c'];
    const chart = cChart(inputs.counts);
    expectLimits(chart, { centre: expected.cbar, low: expected.LCL, high: expected.UCL, within: tolerance });
    expect(outside(chart)).toEqual(expected.strictly_outside);
    expect(chart.points[2]?.value).toBe(chart.points[2]?.high);
  });

  test('26 units of 100 boards: trial limits, and limits without the two outside (Montgomery 1991, pp. 173-175)', () => {
    const { inputs, expected, tolerance } = cases['cc-montgomery-c'];
    const trial = cChart(inputs.counts);
    expectLimits(trial, { centre: expected.cbar, low: expected.LCL, high: expected.UCL, within: tolerance });
    expect(outside(trial)).toEqual(expected.outside);
    const { cbar: centre, LCL: low, UCL: high } = expected.revised;
    const kept = inputs.counts.filter((_, at) => !inputs.drop.includes(at + 1));
    expectLimits(cChart(kept), { centre, low, high, within: tolerance });
  });

  test('20 samples of 5 computers: 1.93 flaws each, limits 0.07 and 3.79 (Montgomery 1991, pp. 181-182)', () => {
    const { inputs, expected, tolerance } = cases['cc-montgomery-u-const'];
    const chart = uChart(
      inputs.counts,
      inputs.counts.map(() => inputs.units),
    );
    expectLimits(chart, { centre: expected.ubar, low: expected.LCL, high: expected.UCL, within: tolerance });
    expect(chart.signals).toEqual([]);
  });
});

describe('samples of varying size', () => {
  test('a larger sample has narrower limits, and the centre weighs it more', () => {
    const { centre, points } = pChart([1, 20], [10, 100]);
    expect(centre).toBeCloseTo(21 / 110, 12);
    expect((points[0]?.high ?? 0) > (points[1]?.high ?? 1)).toBe(true);
  });

  test('a sample of no pieces gives no point, and the others keep their places', () => {
    const chart = pChart([1, 0, 9], [20, 0, 20]);
    expect(chart.points.map(({ index }) => index)).toEqual([0, 2]);
    expect(uChart([3, 0, 60], [20, 0, 20]).signals).toEqual([
      { index: 0, rule: 'beyond-limits' },
      { index: 2, rule: 'beyond-limits' },
    ]);
  });

  test('limits of a share stay between 0 and 1', () => {
    const { points } = pChart([0, 1, 3], [3, 3, 3]);
    expect(points.every(({ low, high }) => low === 0 && high === 1)).toBe(true);
  });

  test('a centre and a width that are known from before are used', () => {
    const [point] = pChart([2], [100], { centre: 0.5, sigmas: 2 }).points;
    expect(point).toEqual({ index: 0, value: 0.02, low: 0.4, high: 0.6 });
  });

  test('what is beyond two standard deviations is a signal where limits stand there', () => {
    expect(pChart([62], [100], { centre: 0.5, sigmas: 2 }).signals).toHaveLength(1);
    expect(pChart([62], [100], { centre: 0.5 }).signals).toHaveLength(0);
  });

  test('run rules are signals when asked for', () => {
    const counts = [5, 5, 5, 5, 5, 5, 5, 5, 4, 4, 4, 4, 4, 4, 4, 4];
    const chart = pChart(
      counts,
      counts.map(() => 100),
      { rules: ['eight-on-one-side'] },
    );
    expect(chart.signals.map(({ index }) => index)).toEqual([7, 15]);
  });
});

describe("Laney's correction", () => {
  test('huge samples that vary beyond chance get limits as wide as they vary (by hand)', () => {
    // Shares 0.1, 0.2, 0.1 of 10,000 each: centre 0.1333, σ 0.0034, both moving ranges 0.1, so σ′ is 0.1 ÷ 1.128.
    const counts = [1000, 2000, 1000];
    const sizes = [10_000, 10_000, 10_000];
    expect(pChart(counts, sizes).signals).toHaveLength(3);
    const chart = pChart(counts, sizes, { laney: true });
    expect(chart.signals).toEqual([]);
    expect(chart.points[0]?.high).toBeCloseTo(4 / 30 + (3 * 0.1) / 1.128, 12);
    expect(uChart(counts, sizes, { laney: true }).points[0]?.high).toBeCloseTo(
      4 / 30 + (3 * 0.1) / 1.128,
      12,
    );
  });

  test('changes nothing where it cannot be told: one sample, or nothing flawed', () => {
    expect(pChart([2], [20], { laney: true })).toEqual(pChart([2], [20]));
    expect(pChart([0, 0], [20, 30], { laney: true })).toEqual(pChart([0, 0], [20, 30]));
  });
});

describe('the g chart', () => {
  test('3-sigma limits are mean ± 3 √(mean (mean + 1)), cut at 0', () => {
    const { centre, points } = gChart([10, 30, 20]);
    expect(centre).toBe(20);
    expect(points[0]?.low).toBe(0);
    expect(points[0]?.high).toBeCloseTo(20 + 3 * Math.sqrt(420), 12);
  });

  test('with a stated chance, a gap is beyond when one as long or as short is rarer than half of it', () => {
    const centre = 999;
    const good = 1 - 1 / (centre + 1);
    const isBeyond = (gap: number) => gChart([gap], { centre, falseAlarm: 0.01 }).signals.length > 0;
    for (const gap of [0, 3, 4, 5, 6, 1000, 5295, 5296, 5297, 9000]) {
      const asShort = 1 - good ** (gap + 1);
      const asLong = good ** gap;
      expect(isBeyond(gap)).toBe(Math.min(asShort, asLong) < 0.005);
    }
  });

  test('flaws in each piece leave no room at all', () => {
    expect(gChart([0, 0, 0], { falseAlarm: 0.01 })).toEqual({
      centre: 0,
      points: [0, 1, 2].map((index) => ({ index, value: 0, low: 0, high: 0 })),
      signals: [],
    });
  });
});

describe('edges', () => {
  test('of nothing there is no centre yet', () => {
    const nothing = { centre: undefined, points: [], signals: [] };
    expect([pChart([], []), pChart([0], [0]), uChart([], []), cChart([]), gChart([])]).toEqual(
      Array.from({ length: 5 }, () => nothing),
    );
  });

  test('what cannot have been counted is refused', () => {
    expect(() => pChart([3], [2])).toThrow(RangeError);
    expect(() => pChart([1], [])).toThrow(RangeError);
    expect(() => uChart([-1], [2])).toThrow(RangeError);
    expect(() => cChart([Number.NaN])).toThrow(RangeError);
    expect(() => gChart([Number.POSITIVE_INFINITY])).toThrow(RangeError);
    expect(() => gChart([1], { falseAlarm: 1 })).toThrow(RangeError);
  });

  test('no chart of anything countable holds what is no number, and no point without a signal lies outside', () => {
    const samples = fc.array(
      fc.nat(1_000_000).chain((size) => fc.record({ size: fc.constant(size), count: fc.nat(size) })),
      { maxLength: 12 },
    );
    fc.assert(
      fc.property(samples, fc.boolean(), (list, laney) => {
        const counts = list.map(({ count }) => count);
        const sizes = list.map(({ size }) => size);
        const charts = [pChart, uChart].map((chart) => chart(counts, sizes, { laney }));
        for (const chart of [
          ...charts,
          cChart(counts),
          gChart(counts),
          gChart(counts, { falseAlarm: 0.003 }),
        ]) {
          const beyond = new Set(chart.signals.map(({ index }) => index));
          for (const { index, value, low, high } of chart.points) {
            expect([value, low, high].every(Number.isFinite)).toBe(true);
            expect(low).toBeLessThanOrEqual(high);
            const slack = 1e-9 * Math.max(1, high);
            if (!beyond.has(index)) expect(value > low - slack && value < high + slack).toBe(true);
            else expect(value < low || value > high).toBe(true);
          }
        }
      }),
    );
  });
});
