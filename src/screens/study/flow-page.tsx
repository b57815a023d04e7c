import { batchTargets } from '../../domain/rollup/batch-targets.ts';
import type { FlowByDay } from '../../domain/study/flow-by-day.ts';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { shortDayWords } from '../../words/date-words.ts';
import { flowWords as words } from '../../words/flow-words.ts';
import { nameOf } from '../../words/names.ts';
import { studyWords } from '../../words/study-words.ts';
import { useShop } from '../parts/app-context.ts';
import { SavedChart } from '../parts/picture/saved-chart.tsx';
import { burnUp, cumulativeFlow, noonOf } from './flow-view.ts';
import type { PageProps } from './study-page-props.ts';

const dayAxis = {
  label: words.day,
  show: (at: number) => shortDayWords(new Date(at).toISOString().slice(0, 10)),
  scale: 'time',
} as const;
const common = {
  tableHead: words.day,
  texts: { ...studyWords.chart, asTable: studyWords.asTable },
} as const;

/** How pieces came along their routes day by day, and how many came through. */
export const FlowPage = ({ study: { flow }, questions: { filter } }: PageProps) => (
  <>
    {filter.person !== undefined && <p class="study-note">{words.ofEverybody}</p>}
    {flow.days.length === 0 ? (
      <p>{words.none}</p>
    ) : (
      <>
        <Cumulative flow={flow} />
        <BurnUpPanel flow={flow} batch={filter.batch} />
      </>
    )}
  </>
);

const Cumulative = ({ flow }: { flow: FlowByDay }) => {
  const { registers } = useShop();
  return (
    <Panel
      title={words.cumulative}
      lead={words.cumulativeLead}
      actions={<Means label={studyWords.means}>{words.cumulativeMeans}</Means>}
      testId="cumulative-flow"
    >
      <SavedChart
        {...common}
        title={words.cumulative}
        lead={words.cumulativePicture}
        x={{ ...dayAxis, values: flow.days.map(noonOf) }}
        y={{ label: words.pieces, show: words.count, least: 0 }}
        series={cumulativeFlow(flow, (id) => nameOf(registers, { register: 'stage', id }))}
        testId="cumulative-flow-chart"
      />
    </Panel>
  );
};

const BurnUpPanel = ({ flow, batch }: { flow: FlowByDay; batch: string | undefined }) => {
  const shop = useShop();
  const all = batchTargets(shop, { retired: true });
  const chosen = all.length === 1 ? all[0] : all.find((each) => each.batch === batch);
  const target = chosen && {
    wanted: chosen.variants.reduce((sum, { wanted }) => sum + wanted, 0),
    due: chosen.due,
  };
  const { at, series } = burnUp(flow, target);
  const due = target?.due ? noonOf(target.due) : undefined;
  const inSight = due !== undefined && due >= (at[0] ?? 0) && due <= (at.at(-1) ?? 0);
  return (
    <Panel
      title={words.burnUp}
      lead={words.burnUpLead}
      actions={<Means label={studyWords.means}>{words.burnUpMeans}</Means>}
      testId="burn-up"
    >
      {!target && <p class="study-note">{words.ofAllBatches}</p>}
      <SavedChart
        {...common}
        title={words.burnUp}
        x={{ ...dayAxis, values: at }}
        y={{ label: words.pieces, show: words.count, least: 0 }}
        series={series}
        marks={inSight ? [{ at: due, label: words.due }] : []}
        testId="burn-up-chart"
      />
    </Panel>
  );
};
