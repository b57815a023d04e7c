/** The part of a chart that needs the drawing library: loaded on demand. */
import uPlot from 'uplot';
import { areaLabels } from './area-labels.ts';
import { looksOf } from './chart-looks.ts';
import { chartData, chartOptions } from './chart-options.ts';
import { nearestPoint, planChart } from './chart-plan.ts';
import { drawAreaLabels, drawMarks, drawPoints, type Pen } from './chart-points.ts';
import type { DrawChart } from './chart-props.ts';

/** How wide a text is in a font, px. */
const measureIn = (font: string): ((text: string) => number) => {
  const ink = document.createElement('canvas').getContext('2d');
  if (!ink) throw new Error('This browser draws on no canvas.');
  ink.font = font;
  return (text) => ink.measureText(text).width;
};

/** Draws a chart into a place, where it stands until it is closed. Throws where there is no canvas. */
export const drawChart: DrawChart = (place, { props, width, height, printed }) => {
  const looks = looksOf(place, printed);
  const fontPx = Math.round(Number.parseFloat(getComputedStyle(place).fontSize)) || 18;
  const frame = {
    width,
    height,
    fontPx,
    ratio: uPlot.pxRatio,
    widthOf: measureIn(`600 ${fontPx}px ${looks.family}`),
  };
  const plan = planChart(props, frame);
  const options = chartOptions(props, plan, frame, looks, uPlot.paths);
  const over = (plot: uPlot): void => {
    const pen: Pen = {
      ink: plot.ctx,
      ratio: uPlot.pxRatio,
      x: (value) => plot.valToPos(value, 'x', true),
      y: (value) => plot.valToPos(value, 'y', true),
    };
    drawAreaLabels(pen, areaLabels(props, plan, frame), looks, fontPx);
    drawMarks(pen, props, plan, looks, fontPx);
    drawPoints(pen, props, plan, looks);
  };
  const plot = new uPlot({ ...options, hooks: { draw: [over] } }, chartData(props), place);
  const xs = props.x.values;
  return {
    leftOf: (index) => plan.leftOf(xs[index] ?? 0),
    indexAt: (left) => nearestPoint(plan, xs, left),
    field: plan.field,
    marksAs: plan.marksAs,
    close: () => plot.destroy(),
  };
};
