import { expect, test } from 'vitest';
import type { ChartSeries } from '../../../src/ui/chart/chart-props.ts';
import { flaggedSeries, type PointShape, seriesLooks, shapePath } from '../../../src/ui/chart/series-look.ts';

const drawn = (...ways: ChartSeries['drawn'][]) => ways.map((way) => ({ drawn: way }));

test('two series of one kind differ by dash or by shape, whatever their colours', () => {
  for (const way of ['line', 'dashed', 'points', 'line-points', 'steps'] as const) {
    const looks = seriesLooks(drawn(way, way, way)).map((look) => JSON.stringify(look));
    expect(new Set(looks).size).toBe(3);
  }
});

test('shapes go on through all that have points', () => {
  expect(seriesLooks(drawn('points', 'line', 'line-points')).map(({ shape }) => shape)).toEqual([
    'disc',
    undefined,
    'square',
  ]);
});

test('an only line is unbroken, and a dashed one is not', () => {
  const [line, dashed] = seriesLooks(drawn('line', 'dashed'));
  expect(line?.dash).toEqual([]);
  expect(dashed?.dash.length).toBeGreaterThan(0);
});

test('flagged points belong to the first series that has points', () => {
  expect(flaggedSeries(drawn('line', 'points', 'line-points'))).toBe(1);
  expect(flaggedSeries(drawn('line', 'bars'))).toBe(-1);
});

test('each shape has a closed outline of its own', () => {
  const shapes: readonly PointShape[] = ['disc', 'square', 'triangle', 'cross', 'strange'];
  const paths = shapes.map((shape) => shapePath(shape, 10, 20, 5));
  expect(new Set(paths).size).toBe(5);
  expect(paths.every((path) => path.startsWith('M') && path.endsWith('Z'))).toBe(true);
});

test('a strange point is larger than the others', () => {
  const top = (shape: PointShape): number =>
    Number(/^M\S+ (\S+?)[A-Za-z]/.exec(shapePath(shape, 0, 0, 10))?.[1]);
  expect(top('strange')).toBe(-18);
  expect(top('square')).toBe(-10);
});
