import type { StartsPoint } from '../../domain/plan/starts/good-by-starts.ts';
import { startsWords as words } from '../../words/starts-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { SavedChart } from '../parts/picture/saved-chart.tsx';

export interface StartChartsProps {
  readonly curve: readonly StartsPoint[];
  readonly wanted: number;
  readonly marks: readonly { readonly at: number; readonly label: string }[];
}

/** The chance of enough good ones, and those left over and short, against the number that is started now. */
export const StartCharts = ({ curve, wanted, marks }: StartChartsProps) => {
  const x = {
    values: curve.map(({ starts }) => starts),
    label: words.starts,
    show: words.startsShown,
    scale: 'number',
  } as const;
  const most = curve.at(-1)?.starts ?? 0;
  const inSight = marks.filter(({ at }) => at <= most);
  const common = { x, tableHead: words.starts, texts: { ...studyWords.chart, asTable: studyWords.asTable } };
  return (
    <>
      <h3>{words.chanceChart(wanted)}</h3>
      <SavedChart
        {...common}
        title={words.chanceChart(wanted)}
        y={{ label: words.chanceAxis, show: words.share, least: 0, most: 1 }}
        series={[
          {
            key: 'chance',
            label: words.chanceAxis,
            values: curve.map(({ chance }) => chance),
            drawn: 'line',
            tone: 'plain',
          },
        ]}
        marks={inSight}
        testId="start-chance-chart"
      />
      <h3>{words.overChart}</h3>
      <SavedChart
        {...common}
        title={words.overChart}
        y={{ label: words.piecesAxis, show: words.pieces, least: 0 }}
        series={[
          {
            key: 'over',
            label: words.over,
            values: curve.map(({ over }) => over),
            drawn: 'line',
            tone: 'copper',
          },
          {
            key: 'short',
            label: words.short,
            values: curve.map(({ short }) => short),
            drawn: 'dashed',
            tone: 'flaw',
          },
        ]}
        marks={inSight}
        testId="start-over-chart"
      />
    </>
  );
};
