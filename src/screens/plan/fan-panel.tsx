import type { Forecast } from '../../domain/plan/forecast/forecast.ts';
import type { PlanModel } from '../../domain/plan/forecast/plan-model.ts';
import type { BatchTargets } from '../../domain/rollup/batch-targets.ts';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { forecastWords as words } from '../../words/forecast-words.ts';
import { wholeNumber } from '../../words/number-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { SavedChart } from '../parts/picture/saved-chart.tsx';
import { dayOf } from './forecast-view.ts';

/** Days after the last date that the fan still shows. */
const beyond = 4 * 86_400_000;

/** Good ones over the days to come: what is likely, and what is wanted. */
export const FanPanel = ({
  forecast: { marks, done },
  plan: { variants },
  batch,
}: {
  forecast: Extract<Forecast, { kind: 'forecast' }>;
  plan: Pick<PlanModel, 'variants'>;
  batch: BatchTargets;
}) => {
  const shop = useShop();
  const zone = useSession().zone();
  const dueEnd = variants.reduce((end, { due }) => Math.max(end, due ?? 0), 0);
  const last = Math.max(done.at95 ?? done.at85 ?? done.at50 ?? Number.POSITIVE_INFINITY, dueEnd) + beyond;
  const shown = marks.filter(({ at }) => at <= last);
  const wanted = variants.reduce((sum, each) => sum + each.wanted, 0);
  const fan = shown.map(({ all }) => all.fan);
  const line = (at: 0 | 1 | 2 | 3 | 4) => fan.map((each) => each[at]);
  const inSight = (at: number | null) => at !== null && at <= (shown.at(-1)?.at ?? 0);
  const chartMarks = [
    ...(['at50', 'at85', 'at95'] as const).map((level) => ({
      at: done[level],
      label: words.marks[level],
    })),
    { at: batch.due === null ? null : dueEnd, label: words.marks.due },
  ]
    .flatMap(({ at, label }) => (at !== null && inSight(at) ? [{ at, label }] : []))
    .sort((a, b) => a.at - b.at);
  return (
    <Panel
      title={words.fan}
      lead={words.fanLead}
      actions={<Means label={studyWords.means}>{words.fanMeans}</Means>}
      testId="forecast-fan"
    >
      <SavedChart
        title={words.fan}
        lead={words.fanLead}
        x={{
          values: shown.map(({ at }) => at),
          label: words.dayAxis,
          show: (at) => words.weekOf(dayOf(shop, at, zone)),
          scale: 'time',
        }}
        y={{ label: words.goodAxis, show: wholeNumber, least: 0 }}
        band={{ low: line(0), high: line(4), label: words.likely }}
        series={[
          { key: 'middle', label: words.middle, values: line(2), drawn: 'line', tone: 'copper' },
          { key: 'lower', label: words.lower, values: line(1), drawn: 'dashed', tone: 'plain' },
          { key: 'higher', label: words.higher, values: line(3), drawn: 'dashed', tone: 'plain' },
          {
            key: 'wanted',
            label: words.wanted,
            values: shown.map(() => wanted),
            drawn: 'dashed',
            tone: 'saved',
          },
        ]}
        marks={chartMarks}
        texts={{ ...studyWords.chart, asTable: studyWords.asTable }}
        tableHead={words.dayAxis}
        testId="forecast-fan-chart"
      />
    </Panel>
  );
};
