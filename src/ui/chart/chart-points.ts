import type { AreaLabel } from './area-labels.ts';
import type { ChartPlan } from './chart-plan.ts';
import type { ChartLooks, ChartProps } from './chart-props.ts';
import { flaggedSeries, seriesLooks, shapePath } from './series-look.ts';

/** A canvas, its pixels to one of the page, and where values lie on it. */
export interface Pen {
  ink: CanvasRenderingContext2D;
  ratio: number;
  x: (value: number) => number;
  y: (value: number) => number;
}

/** Half the height of a point, px: large where there is room, less where points crowd. */
export const pointRadius = (count: number, widthPx: number): number =>
  Math.max(5, Math.min(8, widthPx / Math.max(1, count) / 2.5));

/** The points of all series, each with a rim of paper so that lines behind do not run into it. */
export const drawPoints = (pen: Pen, props: ChartProps, { field }: ChartPlan, looks: ChartLooks): void => {
  const { ink, ratio } = pen;
  const r = pointRadius(props.x.values.length, field.width) * ratio;
  const strange = new Set(props.flagged);
  const strangeIn = flaggedSeries(props.series);
  const styles = seriesLooks(props.series);
  ink.save();
  ink.lineJoin = 'round';
  ink.lineWidth = r / 4;
  ink.setLineDash([]);
  ink.strokeStyle = looks.paper;
  for (const [nth, { values, tone }] of props.series.entries()) {
    const shape = styles[nth]?.shape;
    if (!shape) continue;
    for (const [at, x] of props.x.values.entries()) {
      const value = values[at] ?? null;
      if (value === null || (props.y.scale === 'log' && value <= 0)) continue;
      const marked = nth === strangeIn && strange.has(at);
      const path = new Path2D(shapePath(marked ? 'strange' : shape, pen.x(x), pen.y(value), r));
      ink.fillStyle = looks[marked ? 'flaw' : tone];
      ink.fill(path);
      ink.stroke(path);
    }
  }
  ink.restore();
};

/** Names of bands, each with a rim of paper: lines of narrow bands may cross it. */
export const drawAreaLabels = (
  { ink, ratio }: Pen,
  labels: readonly AreaLabel[],
  looks: ChartLooks,
  fontPx: number,
): void => {
  ink.save();
  ink.font = `600 ${fontPx * ratio}px ${looks.family}`;
  ink.textAlign = 'center';
  ink.textBaseline = 'middle';
  ink.lineJoin = 'round';
  ink.lineWidth = 5 * ratio;
  ink.setLineDash([]);
  ink.strokeStyle = looks.paper;
  ink.fillStyle = looks.ink;
  for (const { text, x, y } of labels) {
    ink.strokeText(text, x * ratio, y * ratio);
    ink.fillText(text, x * ratio, y * ratio);
  }
  ink.restore();
};

/** Upright lines over the whole field, with their labels or numbers above it. */
export const drawMarks = (
  pen: Pen,
  props: ChartProps,
  { field, marksAs }: ChartPlan,
  looks: ChartLooks,
  fontPx: number,
): void => {
  const { ink, ratio } = pen;
  const top = field.top * ratio;
  ink.save();
  ink.strokeStyle = looks.copper;
  ink.fillStyle = looks.ink;
  ink.lineWidth = 3 * ratio;
  ink.textBaseline = 'middle';
  ink.textAlign = marksAs === 'labels' ? 'left' : 'center';
  ink.font = `700 ${fontPx * ratio}px ${looks.family}`;
  for (const [nth, { at, label }] of (props.marks ?? []).entries()) {
    const x = pen.x(at);
    ink.setLineDash([9 * ratio, 5 * ratio]);
    ink.beginPath();
    ink.moveTo(x, marksAs === 'labels' ? 0 : top - 4 * ratio);
    ink.lineTo(x, top + field.height * ratio);
    ink.stroke();
    const middle = (top - 4 * ratio) / 2;
    if (marksAs === 'labels') ink.fillText(label, x + 6 * ratio, middle);
    else ink.fillText(String(nth + 1), x, middle);
  }
  ink.restore();
};
