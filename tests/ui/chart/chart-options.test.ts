import type uPlot from 'uplot';
import { describe, expect, test } from 'vitest';
import { chartData, chartOptions } from '../../../src/ui/chart/chart-options.ts';
import { nearestPoint, planChart } from '../../../src/ui/chart/chart-plan.ts';
import type { ChartProps } from '../../../src/ui/chart/chart-props.ts';
import { someChart, someFrame, someLooks } from './some-chart.ts';

const builder = (): uPlot.Series.PathBuilder => () => null;
const paths = { linear: builder(), stepped: builder(), bars: builder() };
const optionsOf = (props: ChartProps) =>
  chartOptions(props, planChart(props, someFrame), someFrame, someLooks, {
    linear: () => paths.linear,
    stepped: () => paths.stepped,
    bars: () => paths.bars,
  });
const band = { low: [50, 60, 70], high: [70, 80, 95], label: 'Likely' };

describe('a plan', () => {
  test('leaves room for what is written at the axes, and none of it lies outside', () => {
    const { field } = planChart(someChart(), someFrame);
    // '100 %' is five letters of 10 px.
    expect(field.left).toBeGreaterThanOrEqual(50);
    expect(field.top + field.height).toBeLessThanOrEqual(someFrame.height - 18);
    expect(field.left + field.width + 15 / 2).toBeLessThanOrEqual(someFrame.width);
  });

  test('a point is found by where it lies', () => {
    const plan = planChart(someChart(), someFrame);
    const xs = [10, 20, 30];
    for (const [index, x] of xs.entries()) expect(nearestPoint(plan, xs, plan.leftOf(x) + 20)).toBe(index);
    expect(nearestPoint(plan, xs, -1000)).toBe(0);
    expect(nearestPoint(plan, xs, 5000)).toBe(2);
  });

  test.each([
    ['labels', [{ at: 10, label: 'Short' }]],
    [
      'labels',
      [
        { at: 10, label: 'Short' },
        { at: 20, label: 'Short' },
      ],
    ],
    [
      'numbers',
      [
        { at: 10, label: 'A label of many letters, too many of them' },
        { at: 20, label: 'Short' },
      ],
    ],
    ['numbers', [{ at: 30, label: 'Over the edge' }]],
  ] as const)('marks carry %s', (as, marks) => {
    expect(planChart(someChart({ marks }), someFrame).marksAs).toBe(as);
  });
});

describe('what the library draws', () => {
  test('is x, the band under all else, and each series', () => {
    expect(chartData(someChart({ band }))).toEqual([
      [10, 20, 30],
      [50, 60, 70],
      [70, 80, 95],
      [60, null, 90],
      [80, 80, 80],
    ]);
    const options = optionsOf(someChart({ band }));
    expect(options.series).toHaveLength(5);
    expect(options.bands).toEqual([{ series: [2, 1], fill: someLooks.band }]);
  });

  test('has no value where there is none, and on a log scale none that is not above nought', () => {
    const series = [{ key: 'a', label: 'A', values: [0, 5], drawn: 'line', tone: 'plain' }] as const;
    const y = { label: 'y', show: String };
    expect(chartData(someChart({ series, y }))[1]).toEqual([0, 5, null]);
    expect(chartData(someChart({ series, y: { ...y, scale: 'log' } }))[1]).toEqual([null, 5, null]);
  });

  test('is scaled and written at its axes as it was planned', () => {
    const props = someChart({ x: { ...someChart().x, scale: 'log' } });
    const plan = planChart(props, someFrame);
    const { scales, axes = [], padding } = optionsOf(props);
    expect([scales?.x?.distr, scales?.y?.distr]).toEqual([3, 1]);
    expect(axes.map(({ values }) => (values as () => string[])())).toEqual([
      plan.xTicks.map((tick) => `w${tick}`),
      plan.yTicks.map((tick) => `${tick} %`),
    ]);
    expect(axes.map(({ size }) => size)).toEqual([
      someFrame.height - plan.field.top - plan.field.height,
      plan.field.left,
    ]);
    expect(padding).toEqual([plan.field.top, someFrame.width - plan.field.left - plan.field.width, 0, 0]);
  });

  test('is written in type of 18 px or more, in lines of 3 px or more', () => {
    const { axes = [], series } = optionsOf(someChart());
    expect(axes.map(({ font }) => font)).toEqual(['600 18px Face', '600 18px Face']);
    expect(axes.every(({ border }) => (border?.width ?? 0) >= 3)).toBe(true);
    expect(series.slice(1).every(({ width }) => (width ?? 0) >= 3)).toBe(true);
  });

  test('has a path for each way of drawing, and a colour for each tone', () => {
    const drawn = ['line', 'dashed', 'steps', 'points', 'bars', 'line-points'] as const;
    const series = drawn.map((way) => ({
      key: way,
      label: way,
      values: [1],
      drawn: way,
      tone: 'flaw' as const,
    }));
    const made = optionsOf(someChart({ series })).series.slice(1);
    expect(made.map((one) => one.paths).filter((path) => path === paths.linear)).toHaveLength(3);
    expect(made[2]?.paths).toBe(paths.stepped);
    expect(made[4]?.paths).toBe(paths.bars);
    expect(made[3]?.paths?.({} as uPlot, 1, 0, 0)).toBeNull();
    expect(made.every(({ stroke }) => stroke === someLooks.flaw)).toBe(true);
    expect(made.map(({ fill }) => fill)).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
      'rgba(5, 5, 5, 0.3)',
      undefined,
    ]);
  });

  test('has no line of the grid upon its lowest axis', () => {
    const y = { label: 'y', show: String, least: 0, most: 100 };
    const grid = optionsOf(someChart({ y })).axes?.[1]?.grid;
    expect(grid?.filter?.({} as uPlot, [0, 50, 100], 1, 0, 0)).toEqual([null, 50, 100]);
  });

  test('dashes are given in pixels of the canvas', () => {
    expect(optionsOf(someChart()).series[2]?.dash).toEqual([24, 16]);
  });
});
