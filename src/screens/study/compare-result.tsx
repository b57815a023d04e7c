import type { ComparedCell } from '../../domain/study/comparison.ts';
import { DifferenceBar } from '../../ui/chart/difference-bar.tsx';
import { Disclosure } from '../../ui/notice/disclosure.tsx';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';
import { InTurn } from '../../ui/turn/in-turn.tsx';
import { compareWords as words } from '../../words/compare-words.ts';
import { nameOf } from '../../words/names.ts';
import { studyWords } from '../../words/study-words.ts';
import { useShop } from '../parts/app-context.ts';
import type { LotNames } from './compare-names.ts';
import { type ComparedRow, comparedRows, isFlawless, type Measure, widest } from './compare-view.ts';

/** The difference of two lots: over all, by stage and by wood, and of each wood at each stage as a table. */
export const CompareResult = ({
  cells,
  measure,
  place,
  lots,
}: {
  cells: readonly ComparedCell[];
  measure: Measure;
  /** The one place that is compared; null for all of them. */
  place: string | null;
  lots: LotNames;
}) => {
  const { overall, stages, woods, both } = comparedRows(cells, measure);
  return (
    <>
      {overall && (
        <Panel
          title={place ?? words.overall}
          lead={words.measureMeans[measure]}
          actions={
            <Means label={studyWords.means}>
              {words.means} {place === null && words.overallMeans}
            </Means>
          }
          testId="compare-overall"
        >
          <p class="study-verdict">
            {words.verdict({
              ...lots,
              value: overall.share.of.difference,
              interval: overall.share.of.interval,
            })}
          </p>
          <Bar row={overall} lots={lots} label={place ?? words.overall} most={widest([overall])} isFirst />
        </Panel>
      )}
      {overall?.share.of.difference !== undefined && (
        <>
          <Bars title={words.byStage} rows={stages} lots={lots} />
          <Bars title={words.bySpecies} rows={woods} lots={lots} />
          <Disclosure summary={words.byBoth} testId="compare-both">
            <InTurn>
              <BothTable rows={both} lots={lots} />
            </InTurn>
          </Disclosure>
        </>
      )}
    </>
  );
};

interface BarsProps {
  title: string;
  rows: readonly ComparedRow[];
  lots: LotNames;
}

const Bars = ({ title, rows, lots }: BarsProps) => {
  const nameOfRow = useRowName();
  if (rows.length < 2) return null;
  const flawless = rows.filter(isFlawless);
  const telling = rows.filter((row) => !isFlawless(row));
  return (
    <Panel
      title={title}
      actions={
        <Means label={studyWords.means}>
          {words.means} {words.manyMeans(telling.length)}
        </Means>
      }
    >
      <ul class="study-bars">
        {telling.map((row, place) => (
          <li key={row.key}>
            <Bar row={row} lots={lots} label={nameOfRow(row)} most={widest(telling)} isFirst={place === 0} />
          </li>
        ))}
      </ul>
      {flawless.length > 0 && <p class="study-note">{words.flawless(flawless.map(nameOfRow))}</p>}
    </Panel>
  );
};

interface BarProps {
  row: ComparedRow;
  lots: LotNames;
  label: string;
  /** What half a bar stands for. */
  most: number;
  /** Stands above others of its kind: it alone says which side is which. */
  isFirst: boolean;
}

const Bar = ({ row, lots, label, most, isFirst }: BarProps) => {
  const { a, b, of } = row.share;
  return (
    <div class="study-compared" data-testid={`compared-${row.key}`}>
      {of.difference === undefined ? (
        <p>{label}</p>
      ) : (
        <DifferenceBar
          label={label}
          value={of.difference}
          low={of.interval[0]}
          high={of.interval[1]}
          most={most}
          shown={words.difference(of.difference, of.interval)}
          ends={isFirst ? { below: words.fewer(lots.a), above: words.more(lots.a) } : undefined}
          tone={row.standsOut ? 'copper' : 'plain'}
        />
      )}
      <p class="study-note">
        {words.lot(lots.a, a.k, a.n)} · {words.lot(lots.b, b.k, b.n)}
        {row.standsOut && <b> · {words.standsOut}</b>}
      </p>
    </div>
  );
};

const BothTable = ({ rows, lots }: Omit<BarsProps, 'title'>) => {
  const { registers } = useShop();
  return (
    <DataTable
      caption={words.byBoth}
      captionUnseen
      columns={[
        {
          key: 'stage',
          head: words.stage,
          cell: ({ stage }) => nameOf(registers, { register: 'stage', id: stage ?? '' }),
        },
        {
          key: 'species',
          head: words.wood,
          cell: ({ species }) => nameOf(registers, { register: 'species', id: species ?? '' }),
        },
        { key: 'a', head: lots.a, numeric: true, cell: ({ share: { a } }) => `${a.k} / ${a.n}` },
        { key: 'b', head: lots.b, numeric: true, cell: ({ share: { b } }) => `${b.k} / ${b.n}` },
        {
          key: 'difference',
          head: words.differenceHead,
          cell: ({ share: { of } }) => words.difference(of.difference, of.interval),
        },
      ]}
      rows={rows}
      rowKey={({ key }) => key}
      rowTone={({ standsOut }) => (standsOut ? 'warn' : undefined)}
    />
  );
};

function useRowName(): (row: ComparedRow) => string {
  const { registers } = useShop();
  return ({ stage, species }) =>
    stage === null
      ? nameOf(registers, { register: 'species', id: species ?? '' })
      : nameOf(registers, { register: 'stage', id: stage });
}
