import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { planChart } from '../../../src/ui/chart/chart-plan.ts';
import { drawMarks, drawPoints, type Pen, pointRadius } from '../../../src/ui/chart/chart-points.ts';
import type { ChartProps } from '../../../src/ui/chart/chart-props.ts';
import { shapePath } from '../../../src/ui/chart/series-look.ts';
import { someChart, someFrame, someLooks } from './some-chart.ts';

class PathOfText {
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
}

beforeEach(() => void vi.stubGlobal('Path2D', PathOfText));
afterEach(() => void vi.unstubAllGlobals());

/** A pen that writes down what it fills, in which colour, and which dashes it has then. */
const recording = () => {
  const filled: { path: string; colour: string }[] = [];
  const written: string[] = [];
  const dashes: number[][] = [];
  const ink = {
    fillStyle: '',
    save: () => undefined,
    restore: () => undefined,
    beginPath: () => undefined,
    moveTo: () => undefined,
    lineTo: () => undefined,
    setLineDash: (dash: number[]) => dashes.push(dash),
    stroke: () => undefined,
    fill: (path: PathOfText) => filled.push({ path: path.text, colour: ink.fillStyle }),
    fillText: (text: string) => written.push(text),
  };
  const pen: Pen = { ink: ink as unknown as CanvasRenderingContext2D, ratio: 1, x: (x) => x, y: (y) => -y };
  return { pen, filled, written, dashes };
};
const drawn = (props: ChartProps) => {
  const record = recording();
  const plan = planChart(props, someFrame);
  drawMarks(record.pen, props, plan, someLooks, 18);
  drawPoints(record.pen, props, plan, someLooks);
  return record;
};

test('points stand where values are known, in the shape and the colour of their series', () => {
  expect(drawn(someChart()).filled).toEqual([
    { path: shapePath('disc', 10, -60, 8), colour: someLooks.plain },
    { path: shapePath('disc', 30, -90, 8), colour: someLooks.plain },
  ]);
});

test('a flagged point has the strange shape and the colour of a flaw', () => {
  const [first, last] = drawn(someChart({ flagged: [2] })).filled;
  expect(first?.colour).toBe(someLooks.plain);
  expect(last).toEqual({ path: shapePath('strange', 30, -90, 8), colour: someLooks.flaw });
});

test('the rims of points are unbroken, whatever was drawn before', () => {
  const { dashes } = drawn(someChart({ marks: [{ at: 10, label: 'New gouge' }] }));
  expect(dashes.at(-1)).toEqual([]);
});

test('marks are written with their labels, or with numbers where those would overlap', () => {
  const short = [{ at: 10, label: 'New gouge' }];
  expect(drawn(someChart({ marks: short })).written).toEqual(['New gouge']);
  const long = ['a', 'b'].map((label, nth) => ({ at: 28 + nth, label: label.repeat(60) }));
  expect(drawn(someChart({ marks: long })).written).toEqual(['1', '2']);
});

test('points are large, and no smaller than 10 px across where they crowd', () => {
  expect(pointRadius(3, 800)).toBe(8);
  expect(pointRadius(5000, 300)).toBe(5);
});
