import { areaCover, areaLabels } from '../chart/area-labels.ts';
import { axisWidth, edgeWidth, lineWidth } from '../chart/chart-options.ts';
import { type ChartPlan, planChart, tickLength } from '../chart/chart-plan.ts';
import { pointRadius } from '../chart/chart-points.ts';
import type { ChartProps, ChartSeries } from '../chart/chart-props.ts';
import { reading } from '../chart/chart-reading.ts';
import { placeBetween } from '../chart/chart-scales.ts';
import { flaggedSeries, seriesLooks, shapePath } from '../chart/series-look.ts';
import { chartKey } from './chart-key.ts';
import { type DrawnBody, type Tools, textSize } from './picture.ts';
import { boxPath, type Stroke } from './strokes.ts';

/** Height of the plot, px. */
const plotHeight = 440;
/** More points than these would make the words longer than anyone listens to. */
const mostSaid = 60;

interface Pen extends Tools {
  readonly chart: ChartProps;
  readonly plan: ChartPlan;
  readonly top: number;
  readonly xAt: (place: number) => number;
  /** Nothing for what is not known or cannot be drawn. */
  readonly yAt: (value: number | null | undefined) => number | undefined;
}

/** Stretches of neighbouring points that are known, as places on the paper. */
const stretches = ({ chart, xAt, yAt }: Pen, values: readonly (number | null)[]): [number, number][][] => {
  const all: [number, number][][] = [[]];
  for (const place of chart.x.values.keys()) {
    const y = yAt(values[place]);
    if (y === undefined) all.push([]);
    else all.at(-1)?.push([xAt(place), y]);
  }
  return all.filter(({ length }) => length > 0);
};

const straight = (points: readonly [number, number][]): string =>
  points.map(([x, y], nth) => `${nth === 0 ? 'M' : 'L'}${x} ${y}`).join('');

/** A value holds until the next one comes. */
const stepped = (points: readonly [number, number][]): string =>
  points.map(([x, y], nth) => (nth === 0 ? `M${x} ${y}` : `H${x}V${y}`)).join('');

const bandStrokes = (pen: Pen): Stroke[] => {
  const { band, x } = pen.chart;
  if (!band) return [];
  const both = (values: readonly (number | null)[], other: readonly (number | null)[]) =>
    x.values.map((_, place) => ((other[place] ?? null) === null ? null : (values[place] ?? null)));
  const highs = stretches(pen, both(band.high, band.low));
  const lows = stretches(pen, both(band.low, band.high));
  const planes = highs.map((high, nth) => {
    const back = lows[nth]?.toReversed().map(([left, y]) => `L${left} ${y}`) ?? [];
    return `${straight(high)}${back.join('')}Z`;
  });
  const edge = { kind: 'path', line: pen.looks.ink, width: edgeWidth, dash: [2, 5] } as const;
  return [
    { kind: 'path', d: planes.join(''), fill: pen.looks.ink, cover: 0.13 },
    { ...edge, d: highs.map(straight).join('') },
    { ...edge, d: lows.map(straight).join('') },
  ];
};

const barPaths = (pen: Pen, values: readonly (number | null)[]): string => {
  const { chart, plan, top, xAt, yAt } = pen;
  const places = [...chart.x.values.keys()].map(xAt);
  const gaps = places.slice(1).map((left, nth) => left - (places[nth] ?? 0));
  const width = Math.min(72, 0.7 * Math.min(plan.field.width, ...gaps));
  const foot = top + plan.field.top + plan.field.height;
  return places
    .flatMap((left, place) => {
      const y = yAt(values[place]);
      return y === undefined
        ? []
        : [boxPath({ left: left - width / 2, top: y, width, height: Math.max(0, foot - y) })];
    })
    .join('');
};

const seriesStrokes = (pen: Pen, one: ChartSeries, dash: readonly number[]): Stroke[] => {
  if (one.drawn === 'points' || one.drawn === 'area') return [];
  const line = { kind: 'path', line: pen.looks[one.tone], width: lineWidth, dash } as const;
  if (one.drawn === 'bars')
    return [{ ...line, d: barPaths(pen, one.values), fill: pen.looks[one.tone], cover: 0.3 }];
  const along = one.drawn === 'steps' ? stepped : straight;
  return [{ ...line, d: stretches(pen, one.values).map(along).join('') }];
};

/** Each area down to the one before it; its upper edge is drawn as a line. */
const areaStrokes = (pen: Pen): Stroke[] => {
  const areas = pen.chart.series.filter(({ drawn }) => drawn === 'area');
  return areas.flatMap(({ values, tone }, nth): Stroke[] => {
    const edge = stretches(pen, values).flat();
    const below = areas[nth - 1]?.values ?? values.map(() => pen.plan.y[0]);
    const back = stretches(pen, below).flat().toReversed();
    const plane = `${straight(edge)}${back.map(([x, y]) => `L${x} ${y}`).join('')}Z`;
    return [
      { kind: 'path', d: plane, fill: pen.looks[tone], cover: areaCover(nth) },
      { kind: 'path', d: straight(edge), line: pen.looks[tone], width: edgeWidth },
    ];
  });
};

const areaNames = ({ chart, plan, looks, top, widthOf }: Pen): Stroke[] =>
  areaLabels(chart, plan, {
    fontPx: textSize,
    widthOf: (text) => widthOf(text, textSize, 600),
  }).map(({ text, x, y }) => ({
    ...{ kind: 'text', x, y: top + y + textSize / 3, text, size: textSize, weight: 600 },
    ...{ fill: looks.ink, rim: looks.paper, at: 'middle' },
  }));

const pointStrokes = (pen: Pen): Stroke[] => {
  const { chart, plan, looks, xAt, yAt } = pen;
  const r = pointRadius(chart.x.values.length, plan.field.width);
  const strange = new Set(chart.flagged);
  const strangeIn = flaggedSeries(chart.series);
  const styles = seriesLooks(chart.series);
  return chart.series.flatMap(({ values, tone }, nth) => {
    const shape = styles[nth]?.shape;
    if (!shape) return [];
    return [...chart.x.values.keys()].flatMap((place): Stroke[] => {
      const y = yAt(values[place]);
      if (y === undefined) return [];
      const marked = nth === strangeIn && strange.has(place);
      const d = shapePath(marked ? 'strange' : shape, xAt(place), y, r);
      return [{ kind: 'path', d, fill: looks[marked ? 'flaw' : tone], line: looks.paper, width: r / 4 }];
    });
  });
};

const axisStrokes = ({ chart, plan, looks, top, yAt }: Pen): Stroke[] => {
  const { left, width, height } = plan.field;
  const head = top + plan.field.top;
  const foot = head + height;
  const text = { kind: 'text', size: textSize, weight: 600, fill: looks.ink } as const;
  const line = { kind: 'path', line: looks.ink, width: axisWidth } as const;
  const levels = plan.yTicks.flatMap((tick): Stroke[] => {
    const y = yAt(tick);
    if (y === undefined) return [];
    const across = { kind: 'path', line: looks.rule, width: edgeWidth, dash: [2, 6] } as const;
    return [
      // The lowest line would lie on the axis and hide it.
      ...(tick > plan.y[0] ? [{ ...across, d: `M${left} ${y}H${left + width}` }] : []),
      { ...line, d: `M${left - tickLength} ${y}H${left}` },
      { ...text, x: left - tickLength - 6, y: y + textSize / 3, text: chart.y.show(tick), at: 'end' },
    ];
  });
  const along = plan.xTicks.flatMap((tick): Stroke[] => {
    const x = plan.leftOf(tick);
    return [
      { ...line, d: `M${x} ${foot}V${foot + tickLength}` },
      { ...text, x, y: foot + tickLength + 1.2 * textSize, text: chart.x.show(tick), at: 'middle' },
    ];
  });
  return [...levels, ...along, { ...line, d: `M${left} ${head}V${foot}H${left + width}` }];
};

const markStrokes = ({ chart, plan, looks, top }: Pen): Stroke[] =>
  (chart.marks ?? []).flatMap(({ at, label }, nth): Stroke[] => {
    const x = plan.leftOf(at);
    const head = top + plan.field.top;
    const labelled = plan.marksAs === 'labels';
    const text = { kind: 'text', size: textSize, weight: 700, fill: looks.ink, y: head - 12 } as const;
    return [
      {
        kind: 'path',
        d: `M${x} ${labelled ? top : head - 4}V${head + plan.field.height}`,
        line: looks.copper,
        width: 3,
        dash: [9, 5],
      },
      labelled
        ? { ...text, x: x + 6, text: label, at: 'start' }
        : { ...text, x, text: String(nth + 1), at: 'middle' },
    ];
  });

const wordsOf = (chart: ChartProps): readonly string[] => {
  const count = chart.x.values.length;
  const every = Math.max(1, Math.ceil(count / mostSaid));
  const places = [...chart.x.values.keys()].filter((place) => place % every === 0 || place === count - 1);
  return [
    `${chart.y.label} / ${chart.x.label}`,
    ...(chart.marks ?? []).map(({ at, label }) => `${label}: ${chart.x.show(at)}`),
    ...places.map((place) => {
      const { at, values } = reading(chart, place);
      return `${at}: ${values}`;
    }),
  ];
};

/** A chart as the screen draws it, with its key above and its marks in words below. */
export const chartBody = (chart: ChartProps, tools: Tools): DrawnBody => {
  const { width, looks, widthOf } = tools;
  const key = chartKey(chart, tools);
  const top = key.height + 1.6 * textSize;
  const plan = planChart(chart, {
    ...{ width, height: plotHeight, fontPx: textSize, ratio: 1 },
    widthOf: (text) => widthOf(text, textSize, 600),
  });
  const log = chart.y.scale === 'log';
  const pen: Pen = {
    ...{ ...tools, chart, plan, top },
    xAt: (place) => plan.leftOf(chart.x.values[place] ?? 0),
    yAt: (value) =>
      value === null || value === undefined || (log && value <= 0)
        ? undefined
        : top + plan.field.top + plan.field.height * (1 - placeBetween(plan.y, value, log)),
  };
  const styles = seriesLooks(chart.series);
  const within = { ...plan.field, top: top + plan.field.top };
  const inField = [
    ...bandStrokes(pen),
    ...areaStrokes(pen),
    ...chart.series.flatMap((one, nth) => seriesStrokes(pen, one, styles[nth]?.dash ?? [])),
  ].map((stroke) => (stroke.kind === 'path' ? { ...stroke, within } : stroke));
  const text = { kind: 'text', size: textSize, weight: 600, fill: looks.ink } as const;
  const foot = top + plotHeight + 1.4 * textSize;
  const listed = plan.marksAs === 'numbers' ? (chart.marks ?? []) : [];
  return {
    width,
    height: foot + (listed.length + 0.4) * 1.5 * textSize,
    said: wordsOf(chart),
    strokes: [
      ...key.strokes,
      { ...text, x: 0, y: top - 0.4 * textSize, text: chart.y.label, at: 'start' },
      ...axisStrokes(pen),
      ...inField,
      ...areaNames(pen),
      ...markStrokes(pen),
      ...pointStrokes(pen),
      { ...text, x: width, y: foot, text: chart.x.label, at: 'end' },
      ...listed.map(
        ({ at, label }, nth): Stroke => ({
          ...text,
          x: 0,
          y: foot + (nth + 1) * 1.5 * textSize,
          text: `${nth + 1}  ${label} (${chart.x.show(at)})`,
          at: 'start',
        }),
      ),
    ],
  };
};
