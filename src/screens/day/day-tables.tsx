import type { Compared, DayFlaw, DayReport, StageDay } from '../../domain/rollup/day-report.ts';
import { Panel } from '../../ui/panel/panel.tsx';
import { type Column, DataTable } from '../../ui/table/data-table.tsx';
import { dayWords as words } from '../../words/day-words.ts';
import { nameOf } from '../../words/names.ts';
import { outcomeWords } from '../../words/outcome-words.ts';
import { useShop } from '../parts/app-context.ts';
import { type DayMeasure, dayLines, inMinutes, stagesInOrder } from './day-view.ts';

const testNames: Record<DayMeasure, string> = {
  firsts: 'firsts',
  secondsFinished: 'seconds-finished',
  scrapped: 'scrapped',
  seconds: 'seconds',
  made: 'made',
  minutes: 'minutes',
};

/** A day's number with its raw figures for whoever reads the page by program. */
const Figure = ({ testId, compared }: { testId: string; compared: Compared }) => (
  <b
    data-testid={testId}
    data-day={compared.day}
    data-before={compared.before}
    data-average={compared.average ?? ''}
  >
    {words.number(compared.day)}
  </b>
);

export const DayFigures = ({ report }: { report: DayReport }) => (
  <Panel title={words.sum}>
    <DataTable
      caption={words.sum}
      captionUnseen
      columns={[
        { key: 'what', head: words.measure, cell: ([measure]) => words[measure] },
        {
          key: 'day',
          head: words.day,
          numeric: true,
          cell: ([measure, compared]) => <Figure testId={`day-${testNames[measure]}`} compared={compared} />,
        },
        {
          key: 'before',
          head: words.dayBefore,
          numeric: true,
          cell: ([, { before }]) => words.number(before),
        },
        {
          key: 'average',
          head: words.average,
          numeric: true,
          cell: ([, { average }]) => words.mean(average),
        },
      ]}
      rows={dayLines(report)}
      rowKey={([measure]) => measure}
    />
  </Panel>
);

export const DayStages = ({ report }: { report: DayReport }) => {
  const shop = useShop();
  const columns: Column<StageDay>[] = [
    {
      key: 'stage',
      head: words.stage,
      cell: ({ stage }) => nameOf(shop.registers, { register: 'stage', id: stage }),
    },
    {
      key: 'passed',
      head: words.passed,
      numeric: true,
      cell: ({ stage, passed }) => <Figure testId={`day-passed-${stage}`} compared={passed} />,
    },
    {
      key: 'passed-before',
      head: words.passedBefore,
      numeric: true,
      cell: ({ passed }) => words.number(passed.before),
    },
    {
      key: 'passed-average',
      head: words.passedAverage,
      numeric: true,
      cell: ({ passed }) => words.mean(passed.average),
    },
    {
      key: 'minutes',
      head: words.stageMinutes,
      numeric: true,
      cell: ({ stage, worked }) => <Figure testId={`day-minutes-${stage}`} compared={inMinutes(worked)} />,
    },
    {
      key: 'minutes-before',
      head: words.minutesBefore,
      numeric: true,
      cell: ({ worked }) => words.number(inMinutes(worked).before),
    },
    {
      key: 'minutes-average',
      head: words.minutesAverage,
      numeric: true,
      cell: ({ worked }) => words.mean(inMinutes(worked).average),
    },
  ];
  return (
    <Panel title={words.stages}>
      <DataTable
        caption={words.stages}
        captionUnseen
        columns={columns}
        rows={stagesInOrder(shop, report)}
        rowKey={({ stage }) => stage}
        empty={words.nothingDone}
      />
    </Panel>
  );
};

export const DayFlaws = ({ report }: { report: DayReport }) => {
  const { registers } = useShop();
  const key = ({ stage, species, reason, outcome }: DayFlaw) => `${stage}-${species}-${reason}-${outcome}`;
  return (
    <Panel title={words.flaws}>
      <DataTable
        caption={words.flaws}
        captionUnseen
        columns={[
          {
            key: 'reason',
            head: words.reason,
            cell: ({ reason }) => nameOf(registers, { register: 'reason', id: reason }),
          },
          {
            key: 'stage',
            head: words.stage,
            cell: ({ stage }) => nameOf(registers, { register: 'stage', id: stage }),
          },
          {
            key: 'wood',
            head: words.wood,
            cell: ({ species }) => nameOf(registers, { register: 'species', id: species }),
          },
          { key: 'outcome', head: words.outcome, cell: ({ outcome }) => outcomeWords[outcome] },
          {
            key: 'pieces',
            head: words.pieces,
            numeric: true,
            cell: (flaw) => <b data-testid={`day-flaw-${key(flaw)}`}>{flaw.pieces}</b>,
          },
        ]}
        rows={report.flaws.toSorted((a, b) => b.pieces - a.pieces)}
        rowKey={key}
        rowTone={({ outcome }) => (outcome === 'scrapped' ? 'flaw' : undefined)}
        empty={words.noFlaws}
      />
    </Panel>
  );
};
