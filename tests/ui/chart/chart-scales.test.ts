import { describe, expect, test } from 'vitest';
import type { ChartProps } from '../../../src/ui/chart/chart-props.ts';
import { placeBetween, xEnds, xTicks, yEnds, yTicks } from '../../../src/ui/chart/chart-scales.ts';
import { someChart, someFrame } from './some-chart.ts';

const line = (values: readonly (number | null)[], drawn: 'line' | 'bars' = 'line'): ChartProps['series'] => [
  { key: 'one', label: 'One', values, drawn, tone: 'plain' },
];
const yOf = (values: readonly (number | null)[], more: Partial<ChartProps['y']> = {}) =>
  yEnds(someChart({ series: line(values), y: { label: 'y', show: String, ...more } }));
const xOf = (values: readonly number[], scale: ChartProps['x']['scale'] = 'number'): ChartProps =>
  someChart({ x: { values, label: 'x', show: String, scale }, series: line(values) });

test('a value lies between the ends by its size, or by its times', () => {
  expect(placeBetween([10, 30], 20, false)).toBe(0.5);
  expect(placeBetween([1, 100], 10, true)).toBeCloseTo(0.5, 12);
});

describe('the ends of the y scale', () => {
  test('are round and hold every value', () => {
    expect(yOf([83, 97])).toEqual([80, 100]);
  });

  test('begin at nought where that costs less than half the room', () => {
    expect(yOf([40, 97])[0]).toBe(0);
    expect(yOf([60, 97])[0]).toBeGreaterThan(0);
  });

  test('begin at nought under bars: their lengths are compared', () => {
    expect(yEnds(someChart({ series: line([96, 97, 98], 'bars') }))[0]).toBe(0);
  });

  test('are those that are given', () => {
    expect(yOf([0.2, 0.4], { least: 0, most: 1 })).toEqual([0, 1]);
  });

  test('leave room where all values are one', () => {
    const [least, most] = yOf([5, 5]);
    expect(least).toBeLessThan(5);
    expect(most).toBeGreaterThan(5);
  });

  test('hold the band too', () => {
    const band = { low: [70, null], high: [130, null], label: 'Likely' };
    const [least, most] = yEnds(someChart({ series: line([100, 100]), band }));
    expect(least).toBeLessThanOrEqual(70);
    expect(most).toBeGreaterThanOrEqual(130);
  });

  test('stand even where nothing is known', () => {
    expect(yOf([null, null])).toEqual([0, 1.2]);
  });

  test('of a log scale leave out what is not above nought', () => {
    const [least, most] = yOf([0, 2, 8], { scale: 'log' });
    expect(least).toBeCloseTo(2 / 1.2, 12);
    expect(most).toBeCloseTo(9.6, 12);
  });
});

describe('the ends of the x scale', () => {
  test('leave half a bar at each end', () => {
    const [least, most] = xEnds(someChart({ series: line([1, 2, 3], 'bars') }));
    expect([least, most]).toEqual([4, 36]);
  });

  test.each(['number', 'time', 'log'] as const)('hold a single value of %s', (scale) => {
    const [least, most] = xEnds(xOf([7], scale));
    expect(least).toBeLessThan(7);
    expect(most).toBeGreaterThan(7);
  });

  test('are some even without any value', () => {
    expect(xEnds(xOf([])).every(Number.isFinite)).toBe(true);
  });
});

describe('ticks', () => {
  test('of y are round, and more where it is high', () => {
    const chart = someChart({ y: { label: 'y', show: String } });
    expect(yTicks(chart, [0, 100], 400, 18)).toEqual([0, 20, 40, 60, 80, 100]);
    expect(yTicks(chart, [0, 100], 120, 18)).toEqual([0, 50, 100]);
  });

  test('that would read alike stand once', () => {
    const chart = someChart({ y: { label: 'y', show: (value) => value.toFixed(0) } });
    const shown = yTicks(chart, [0, 1], 400, 18).map(chart.y.show);
    expect(new Set(shown).size).toBe(shown.length);
  });

  test('of a log scale stand at ones, twos and fives', () => {
    const chart = someChart({ y: { label: 'y', show: String, scale: 'log' } });
    expect(yTicks(chart, [0.9, 110], 600, 18)).toEqual([1, 2, 5, 10, 20, 50, 100]);
  });

  test('of a short log scale are round numbers: it holds too few ones, twos and fives', () => {
    const chart = someChart({ y: { label: 'y', show: String, scale: 'log' } });
    expect(yTicks(chart, [3, 9], 200, 18)).toEqual([4, 6, 8]);
  });

  test('of whole numbers are whole', () => {
    const chart = xOf([1, 2, 3]);
    expect(xTicks(chart, xEnds(chart), 800, someFrame)).toEqual([1, 2, 3]);
  });

  test('of time are moments of the data', () => {
    const moments = Array.from({ length: 50 }, (_, day) => 1_000 + 7 * day);
    const chart = xOf(moments, 'time');
    const ticks = xTicks(chart, xEnds(chart), 400, someFrame);
    expect(ticks.length).toBeGreaterThan(2);
    expect(ticks.every((tick) => moments.includes(tick))).toBe(true);
  });

  test.each([
    ['number', 300],
    ['number', 800],
    ['time', 300],
    ['time', 1200],
    ['log', 300],
    ['log', 800],
  ] as const)('of %s on %i px have room for their labels', (scale, width) => {
    const chart = xOf(
      Array.from({ length: 400 }, (_, nth) => nth + 1),
      scale,
    );
    const ends = xEnds(chart);
    const ticks = xTicks(chart, ends, width, someFrame);
    expect(ticks.length).toBeGreaterThan(1);
    for (const [nth, tick] of ticks.entries()) {
      const before = ticks[nth - 1];
      if (before === undefined) continue;
      const apart =
        width * (placeBetween(ends, tick, scale === 'log') - placeBetween(ends, before, scale === 'log'));
      expect(apart).toBeGreaterThan((someFrame.widthOf(`${tick}`) + someFrame.widthOf(`${before}`)) / 2);
    }
  });
});
