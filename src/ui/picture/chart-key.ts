import { edgeWidth, lineWidth } from '../chart/chart-options.ts';
import type { ChartProps, ChartSeries } from '../chart/chart-props.ts';
import { flaggedSeries, type SeriesLook, seriesLooks, shapePath } from '../chart/series-look.ts';
import { type DrawnBody, type Tools, textSize } from './picture.ts';
import { boxPath, type Stroke } from './strokes.ts';

/** A sample, drawn to the right of its corner; 26 px high. */
interface Entry {
  readonly label: string;
  readonly width: number;
  readonly sample: (x: number, y: number) => readonly Stroke[];
}

const lineHeight = 34;

const seriesSample =
  ({ drawn }: ChartSeries, colour: string, paper: string, { dash, shape }: SeriesLook): Entry['sample'] =>
  (x, y) => {
    const line = { kind: 'path', line: colour, width: lineWidth, dash } as const;
    const middle = drawn === 'points' ? x + 14 : x + 28;
    const strokes: Stroke[] = [];
    if (drawn === 'bars') {
      const bars = [
        [6, 12],
        [22, 4],
        [38, 16],
      ] as const;
      const d = bars.map(([left, top]) =>
        boxPath({ left: x + left, top: y + top, width: 12, height: 25 - top }),
      );
      strokes.push({ kind: 'path', d: d.join(''), fill: colour, cover: 0.3, line: colour, width: 3 });
    } else if (drawn === 'steps') strokes.push({ ...line, d: `M${x + 2} ${y + 21}h18v-8h18v-8h16` });
    else if (drawn !== 'points') strokes.push({ ...line, d: `M${x} ${y + 13}h56` });
    if (shape)
      strokes.push({
        ...{ kind: 'path', d: shapePath(shape, middle, y + 13, 8), fill: colour },
        ...{ line: paper, width: 2 },
      });
    return strokes;
  };

const bandSample =
  (ink: string): Entry['sample'] =>
  (x, y) => [
    { kind: 'path', d: boxPath({ left: x, top: y + 4, width: 56, height: 18 }), fill: ink, cover: 0.13 },
    { kind: 'path', d: `M${x} ${y + 4}h56M${x} ${y + 22}h56`, line: ink, width: edgeWidth, dash: [2, 5] },
  ];

const entriesOf = ({ series, band, flagged, texts }: ChartProps, looks: Tools['looks']): readonly Entry[] => {
  const styles = seriesLooks(series);
  const strange = texts.flagged && flagged?.length && flaggedSeries(series) >= 0 ? texts.flagged : undefined;
  return [
    ...series.flatMap((one, nth) =>
      one.drawn === 'area'
        ? []
        : [
            {
              label: one.label,
              width: one.drawn === 'points' ? 28 : 56,
              sample: seriesSample(
                one,
                looks[one.tone],
                looks.paper,
                styles[nth] ?? { dash: [], shape: undefined },
              ),
            },
          ],
    ),
    ...(band ? [{ label: band.label, width: 56, sample: bandSample(looks.ink) }] : []),
    ...(strange
      ? [
          {
            label: strange,
            width: 28,
            sample: (x: number, y: number): Stroke[] => [
              { kind: 'path', d: shapePath('strange', x + 14, y + 13, 7), fill: looks.flaw },
            ],
          },
        ]
      : []),
  ];
};

/** Which line is which, in as many rows as it needs. */
export const chartKey = (chart: ChartProps, { width, looks, widthOf }: Tools): Omit<DrawnBody, 'said'> => {
  const strokes: Stroke[] = [];
  let [x, y] = [0, 0];
  for (const { label, width: sampled, sample } of entriesOf(chart, looks)) {
    const needed = sampled + 8 + widthOf(label, textSize, 600);
    if (x > 0 && x + needed > width) [x, y] = [0, y + lineHeight];
    strokes.push(...sample(x, y), {
      ...{ kind: 'text', x: x + sampled + 8, y: y + 19, text: label },
      ...{ size: textSize, weight: 600, fill: looks.ink, at: 'start' },
    });
    x += needed + 24;
  }
  return { width, height: strokes.length > 0 ? y + lineHeight : 0, strokes };
};
