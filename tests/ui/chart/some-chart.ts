import type { ChartFrame, ChartLooks, ChartProps } from '../../../src/ui/chart/chart-props.ts';

/** A chart of three weeks, changed as a test wants it. */
export const someChart = (more: Partial<ChartProps> = {}): ChartProps => ({
  title: 'Good at once',
  x: { values: [10, 20, 30], label: 'Week', show: (x) => `w${x}`, scale: 'number' },
  y: { label: 'Share', show: (value) => `${value} %` },
  series: [
    { key: 'good', label: 'Good', values: [60, null, 90], drawn: 'line-points', tone: 'plain' },
    { key: 'aim', label: 'Aim', values: [80, 80, 80], drawn: 'dashed', tone: 'copper' },
  ],
  texts: { move: 'Use the arrow keys', asTable: 'In numbers', loading: 'Drawing', failed: 'Not drawn' },
  tableHead: 'Week of',
  ...more,
});

/** Every letter 10 px wide. */
export const someFrame: ChartFrame = {
  width: 800,
  height: 400,
  fontPx: 18,
  ratio: 2,
  widthOf: (text) => 10 * text.length,
};

export const someLooks: ChartLooks = {
  ink: 'rgb(1, 1, 1)',
  paper: 'rgb(2, 2, 2)',
  rule: 'rgb(3, 3, 3)',
  band: 'rgba(1, 1, 1, 0.13)',
  family: 'Face',
  plain: 'rgb(4, 4, 4)',
  flaw: 'rgb(5, 5, 5)',
  saved: 'rgb(6, 6, 6)',
  copper: 'rgb(7, 7, 7)',
};
