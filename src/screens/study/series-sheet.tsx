import { marksOf } from '../../domain/study/marks.ts';
import type { SeriesName, SignalSeries } from '../../domain/study/signal-series.ts';
import { Means } from '../../ui/notice/means.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { signalsWords } from '../../words/signals-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { useShop } from '../parts/app-context.ts';
import { SavedChart } from '../parts/picture/saved-chart.tsx';
import { seriesInWords } from './series-name.ts';
import { markLines, seriesChart, topShare } from './signals-view.ts';

const words = signalsWords.chart;

interface SeriesSheetProps {
  name: SeriesName;
  /** undefined while it is being looked for; null where the log has none. */
  series: SignalSeries | null | undefined;
  /** When the rate has changed, ms UTC, if a signal says so. */
  changed: number | undefined;
  onClose: () => void;
}

/** The control chart of one rate, with the marks of its stage. */
export const SeriesSheet = ({ name, series, changed, onClose }: SeriesSheetProps) => {
  const { registers } = useShop();
  const title = seriesInWords(name, registers);
  return (
    <Sheet title={title} shape="whole" onClose={onClose} closeLabel={studyWords.close} testId="series">
      {series === undefined && <p role="status">{studyWords.working}</p>}
      {series === null && <p>{signalsWords.noSeries}</p>}
      {series && <SeriesChart title={title} series={series} changed={changed} />}
    </Sheet>
  );
};

interface SeriesChartProps extends Pick<SeriesSheetProps, 'changed'> {
  title: string;
  series: SignalSeries;
}

const SeriesChart = ({ title, series, changed }: SeriesChartProps) => {
  const { registers } = useShop();
  const chart = seriesChart(series);
  const { at, shares, centre, low, high, flagged, codes, counts } = chart;
  const change = changed === undefined ? [] : [{ at: changed, note: words.change }];
  const flawed = counts.reduce((sum, each) => sum + each.flawed, 0);
  const pieces = counts.reduce((sum, each) => sum + each.pieces, 0);
  return (
    <>
      <div class="study-line">
        <p class="study-verdict figures">{words.sum(flawed, pieces)}</p>
        <Means label={studyWords.means}>{words.means}</Means>
      </div>
      <SavedChart
        title={title}
        x={{ values: at, label: words.x, show: (place) => codes[place - 1] ?? '', scale: 'number' }}
        y={{ label: words.y, show: words.share, least: 0, most: topShare(chart) }}
        series={[
          { key: 'share', label: words.shares, values: shares, drawn: 'line-points', tone: 'flaw' },
          { key: 'centre', label: words.centre, values: centre, drawn: 'dashed', tone: 'plain' },
        ]}
        band={{ low, high, label: words.limits }}
        marks={markLines([...marksOf(registers, series), ...change], series)}
        flagged={flagged}
        tableHead={words.x}
        texts={{ ...studyWords.chart, asTable: studyWords.asTable, flagged: words.flagged }}
        testId="series-chart"
      />
    </>
  );
};
