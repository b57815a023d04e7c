import type { ChartFrame, ChartProps } from './chart-props.ts';
import { type Ends, placeBetween, xEnds, xTicks, yEnds, yTicks } from './chart-scales.ts';

/** Length of the strokes at the axes, px. */
export const tickLength = 8;

/** Everything about a chart that follows from its props and its size alone. */
export interface ChartPlan {
  x: Ends;
  y: Ends;
  xTicks: readonly number[];
  yTicks: readonly number[];
  /** The field inside the axes, px. */
  field: { left: number; top: number; width: number; height: number };
  /** Distance of a value of x from the start of the plot, px. */
  leftOf: (x: number) => number;
  marksAs: 'labels' | 'numbers';
}

/** Whether every mark's label, written to the right of its line, ends before the next line and the edge. */
const labelsFit = ({ marks = [] }: ChartProps, leftOf: (x: number) => number, frame: ChartFrame): boolean =>
  marks.every(({ at, label }, nth) => {
    const next = marks[nth + 1];
    const end = next ? leftOf(next.at) - frame.fontPx / 2 : frame.width;
    return leftOf(at) + 6 + frame.widthOf(label) <= end;
  });

/** Lays a chart out: its scales, what is written at its axes, and how much room that leaves. */
export const planChart = (props: ChartProps, frame: ChartFrame): ChartPlan => {
  const { width, height, fontPx, widthOf } = frame;
  const x = xEnds(props);
  const y = yEnds(props);
  const top = Math.ceil(fontPx * (props.marks?.length ? 1.8 : 0.8));
  const foot = Math.ceil(tickLength + 1.7 * fontPx);
  const fieldHeight = Math.max(1, height - top - foot);
  const levels = yTicks(props, y, fieldHeight, fontPx);
  const side = Math.ceil(
    Math.max(fontPx, ...levels.map((tick) => widthOf(props.y.show(tick)))) + tickLength + 8,
  );
  const lastX = props.x.values.at(-1) ?? 0;
  const margin = Math.ceil(Math.max(fontPx / 2, widthOf(props.x.show(lastX)) / 2 - 6));
  const field = { left: side, top, width: Math.max(1, width - side - margin), height: fieldHeight };
  const leftOf = (value: number) =>
    field.left + field.width * placeBetween(x, value, props.x.scale === 'log');
  return {
    x,
    y,
    xTicks: xTicks(props, x, field.width, frame),
    yTicks: levels,
    field,
    leftOf,
    marksAs: labelsFit(props, leftOf, frame) ? 'labels' : 'numbers',
  };
};

/** The point whose x lies nearest to a distance from the start of the plot; x ascending. */
export const nearestPoint = (plan: ChartPlan, xs: readonly number[], left: number): number =>
  xs.reduce(
    (best, value, nth) =>
      Math.abs(plan.leftOf(value) - left) < Math.abs(plan.leftOf(xs[best] ?? value) - left) ? nth : best,
    0,
  );
