import { useState } from 'preact/hooks';
import type { ShopDay, StageId } from '../../domain/log/ids.ts';
import type { Study } from '../../domain/study/study.ts';
import { HeatTable } from '../../ui/chart/heat-table.tsx';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import type { PictureTable } from '../../ui/picture/picture.ts';
import { dayWords, shortDayWords } from '../../words/date-words.ts';
import { nameOf } from '../../words/names.ts';
import { studyWords } from '../../words/study-words.ts';
import { timeStudyWords as words } from '../../words/time-study-words.ts';
import { useShop } from '../parts/app-context.ts';
import { SavePicture } from '../parts/picture/save-picture.tsx';
import { SavedChart } from '../parts/picture/saved-chart.tsx';
import { type HoursGrid, hoursGrid } from './time-view.ts';

type By = 'days' | 'weeks';

/** More columns than these are too narrow to read across a bench. */
const mostShown: Readonly<Record<By, number>> = { days: 14, weeks: 12 };

/** Worked time by day or by week: all stages as a chart, each stage as a table. */
export const HoursPanel = ({ worked, route }: { worked: Study['worked']; route: readonly StageId[] }) => {
  const [by, setBy] = useState<By>('days');
  const grid = hoursGrid(worked[by], { route, most: mostShown[by] });
  return (
    <Panel
      title={words.hours}
      lead={words.hoursLead(mostShown[by], by === 'days' ? words.byDay : words.byWeek)}
      actions={<Means label={studyWords.means}>{words.hoursMeans}</Means>}
      testId="hours"
    >
      <ChoiceRow
        label={words.hoursBy}
        choices={[
          { value: 'days', label: words.byDay },
          { value: 'weeks', label: words.byWeek },
        ]}
        value={by}
        onChoose={setBy}
        testId="hours-by"
      />
      {grid.days.length === 0 ? <p>{words.noHours}</p> : <Hours grid={grid} by={by} />}
    </Panel>
  );
};

const Hours = ({ grid: { days, totals, stages, minutesAt, most }, by }: { grid: HoursGrid; by: By }) => {
  const { registers } = useShop();
  const stageName = (id: string) => nameOf(registers, { register: 'stage', id });
  const head = by === 'days' ? words.day : words.week;
  const dayAt = (place: number): ShopDay | undefined => days[Math.round(place) - 1];
  const table: PictureTable = {
    tone: 'plain',
    corner: words.corner,
    rows: stages.map((id) => ({ id, label: stageName(id) })),
    cols: days.toReversed().map((id) => ({ id, label: shortDayWords(id) })),
    most,
    cell: (stage, day) => {
      const minutes = minutesAt(stage, day);
      if (minutes === 0) return null;
      return {
        share: minutes,
        shown: words.hoursOf(minutes),
        name: words.hourCell(stageName(stage), dayWords(day), minutes),
      };
    },
  };
  return (
    <>
      <SavedChart
        title={words.hours}
        x={{
          values: days.map((_, place) => place + 1),
          label: head,
          show: (place) => shortDayWords(dayAt(place) ?? ''),
          scale: 'number',
        }}
        y={{ label: words.worked, show: words.hoursAxis, least: 0 }}
        series={[
          {
            key: 'worked',
            label: words.worked,
            values: totals.map((minutes) => minutes / 60),
            drawn: 'bars',
            tone: 'copper',
          },
        ]}
        tableHead={head}
        texts={{ ...studyWords.chart, asTable: studyWords.asTable }}
        testId="hours-chart"
      />
      {/* The newest day stands beside the names of the stages, where a phone shows it. */}
      <HeatTable {...table} caption={words.hours} captionUnseen />
      <SavePicture
        picture={() => ({ title: words.hoursByStage, body: { kind: 'table', table } })}
        testId="hours-table-picture"
      />
    </>
  );
};
