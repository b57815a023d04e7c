import type uPlot from 'uplot';
import { areaCover } from './area-labels.ts';
import { washed } from './chart-looks.ts';
import { type ChartPlan, tickLength } from './chart-plan.ts';
import type { ChartFrame, ChartLooks, ChartProps, ChartSeries } from './chart-props.ts';
import { seriesLooks } from './series-look.ts';

/** Widths of lines, px: to be seen at arm's length. */
export const lineWidth = 4;
export const edgeWidth = 2;
export const axisWidth = 3;

/** The columns that the chart is drawn from: x, then the low and the high line of the band, which lies under all else, then each series. */
export const chartData = ({ x, y, series, band }: ChartProps): uPlot.AlignedData => {
  const drawable = (values: readonly (number | null)[]) =>
    x.values.map((_, nth) => {
      const value = values[nth] ?? null;
      return value === null || (y.scale === 'log' && value <= 0) ? null : value;
    });
  return [
    [...x.values],
    ...(band ? [drawable(band.low), drawable(band.high)] : []),
    ...series.map((one) => drawable(one.values)),
  ];
};

const pathsOf = (
  drawn: ChartSeries['drawn'],
  paths: uPlot.Series.PathBuilderFactories,
): Pick<uPlot.Series, 'paths'> => {
  const path = {
    line: paths.linear?.(),
    'line-points': paths.linear?.(),
    area: paths.linear?.(),
    dashed: paths.linear?.(),
    steps: paths.stepped?.({ align: 1 }),
    bars: paths.bars?.({ size: [0.7, 72] }),
    points: () => null,
  }[drawn];
  return path ? { paths: path } : {};
};

/** The library takes widths in pixels of the page, and dashes in those of the canvas. */
const dashes = ({ ratio }: ChartFrame, lengths: readonly number[]): number[] =>
  lengths.map((length) => length * ratio);

const axisOf = (
  axis: {
    scale: 'x' | 'y';
    size: number;
    ends: ChartPlan['x'];
    ticks: readonly number[];
    show: (value: number) => string;
  },
  frame: ChartFrame,
  looks: ChartLooks,
): uPlot.Axis => {
  const [least, most] = axis.ends;
  return {
    scale: axis.scale,
    side: axis.scale === 'x' ? 2 : 3,
    size: axis.size,
    font: `600 ${frame.fontPx}px ${looks.family}`,
    gap: 4,
    stroke: looks.ink,
    // The ticks are laid out already: one step as long as the whole scale keeps the library from looking for another.
    incrs: [Math.max(5, most - least)],
    space: 1,
    splits: () => [...axis.ticks],
    filter: (_plot, splits) => splits,
    values: () => axis.ticks.map(axis.show),
    grid: {
      show: axis.scale === 'y',
      stroke: looks.rule,
      width: edgeWidth,
      dash: dashes(frame, [2, 6]),
      // The lowest line would lie on the axis and hide it.
      filter: (_plot, splits) => splits.map((tick) => (tick > least ? tick : null)),
    },
    ticks: { stroke: looks.ink, width: axisWidth, size: tickLength },
    border: { show: true, stroke: looks.ink, width: axisWidth },
  };
};

/** Planes between two lines: what is likely, and each area down to the one before it. Numbers are those of the columns. */
const bandsOf = ({ series, band }: ChartProps, looks: ChartLooks): uPlot.Band[] => {
  const first = band ? 3 : 1;
  const areas = series.flatMap(({ drawn, tone }, nth) =>
    drawn === 'area' ? [{ at: first + nth, tone }] : [],
  );
  return [
    ...(band ? [{ series: [2, 1] as [number, number], fill: looks.band }] : []),
    ...areas.slice(1).map(({ at, tone }, nth) => ({
      series: [at, areas[nth]?.at ?? at] as [number, number],
      fill: washed(looks[tone], areaCover(nth + 1)),
    })),
  ];
};

/** The chart as the drawing library takes it. Points and marks are drawn by hooks of the caller. */
export const chartOptions = (
  props: ChartProps,
  plan: ChartPlan,
  frame: ChartFrame,
  looks: ChartLooks,
  paths: uPlot.Series.PathBuilderFactories,
): uPlot.Options => {
  const { field } = plan;
  const styles = seriesLooks(props.series);
  const firstArea = props.series.findIndex(({ drawn }) => drawn === 'area');
  const foot = frame.height - field.top - field.height;
  const edge = (): uPlot.Series => ({
    stroke: looks.ink,
    width: edgeWidth,
    dash: dashes(frame, [2, 5]),
    points: { show: false },
  });
  return {
    width: frame.width,
    height: frame.height,
    padding: [field.top, frame.width - field.left - field.width, 0, 0],
    legend: { show: false },
    cursor: { show: false },
    scales: {
      x: { time: false, distr: props.x.scale === 'log' ? 3 : 1, range: () => [...plan.x] },
      y: { distr: props.y.scale === 'log' ? 3 : 1, range: () => [...plan.y] },
    },
    axes: [
      axisOf({ scale: 'x', size: foot, ends: plan.x, ticks: plan.xTicks, show: props.x.show }, frame, looks),
      axisOf(
        { scale: 'y', size: field.left, ends: plan.y, ticks: plan.yTicks, show: props.y.show },
        frame,
        looks,
      ),
    ],
    series: [
      {},
      ...(props.band ? [edge(), edge()] : []),
      ...props.series.map(
        ({ drawn, tone }, nth): uPlot.Series => ({
          stroke: looks[tone],
          width: drawn === 'area' ? edgeWidth : lineWidth,
          dash: dashes(frame, styles[nth]?.dash ?? []),
          points: { show: false },
          // Light inside: lines that cross the bars must be seen.
          ...(drawn === 'bars' ? { fill: washed(looks[tone], 0.3) } : {}),
          // The lowest band reaches to the foot; those above it, to the one below (see `bandsOf`).
          ...(nth === firstArea ? { fill: washed(looks[tone], areaCover(0)) } : {}),
          ...pathsOf(drawn, paths),
        }),
      ),
    ],
    bands: bandsOf(props, looks),
  };
};
