import { holdRounds } from '../../domain/hold/rounds.ts';
import type { ConstraintStudy, LoadName } from '../../domain/plan/constraint/constraint-study.ts';
import { Panel } from '../../ui/panel/panel.tsx';
import { type Column, DataTable } from '../../ui/table/data-table.tsx';
import { constraintWords as words } from '../../words/constraint-words.ts';
import type { ConstraintNames } from './constraint-names.ts';
import { type BehindRow, behindLoad } from './constraint-view.ts';

export interface LoadBehindProps {
  readonly study: ConstraintStudy;
  readonly name: LoadName;
  /** Variants whose work is counted. */
  readonly keys: readonly string[];
  readonly names: ConstraintNames;
}

/** What one load is made up of: pieces, and what each takes. */
export const LoadBehind = ({ study, name, keys, names }: LoadBehindProps) => {
  const rows = behindLoad(study, { name, keys });
  const offer = study.offers.find(({ key }) => key === name);
  const ahead = (stage: string) =>
    rows.reduce((sum, row) => (row.stage === stage ? sum + row.pieces : sum), 0);
  return (
    <Panel title={words.behind(names.resource(name))} lead={words.behindLead} testId="constraint-behind">
      {offer?.stages.map(({ stage, fits }) => {
        const pieces = Math.ceil(ahead(stage));
        const { rounds } = holdRounds(pieces, offer.capacity);
        return (
          <p key={stage} class="plan-note" data-testid={`constraint-rounds-${stage}`}>
            {words.rounds(pieces, rounds, offer.capacity, fits, names.stage(stage))}
          </p>
        );
      })}
      <DataTable
        caption={words.behind(names.resource(name))}
        captionUnseen
        columns={columnsOf(names, name)}
        rows={rows}
        rowKey={({ key, stage }) => `${key} ${stage}`}
        empty={words.nothing}
        foot={[
          words.all,
          '',
          words.pieces(rows.reduce((sum, { pieces }) => sum + pieces, 0)),
          '',
          words.timeOf(
            name,
            rows.reduce((sum, { pieces, each }) => sum + pieces * (each ?? 0), 0),
          ),
        ]}
      />
    </Panel>
  );
};

const columnsOf = (names: ConstraintNames, name: LoadName): readonly Column<BehindRow>[] => [
  { key: 'variant', head: words.variant, cell: ({ key }) => names.variant(key) },
  { key: 'stage', head: words.stage, cell: ({ stage }) => names.stage(stage) },
  { key: 'pieces', head: words.visits, numeric: true, cell: ({ pieces }) => words.pieces(pieces) },
  {
    key: 'each',
    head: words.one,
    numeric: true,
    cell: ({ each }) => (each === undefined ? words.notKnown : words.each(each)),
  },
  {
    key: 'all',
    head: words.inAll,
    numeric: true,
    cell: ({ pieces, each }) => (each === undefined ? words.notKnown : words.timeOf(name, pieces * each)),
  },
];
