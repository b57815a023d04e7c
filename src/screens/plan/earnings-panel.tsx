import type { ConstraintStudy, LoadName } from '../../domain/plan/constraint/constraint-study.ts';
import type { Amount } from '../../domain/plan/cost/amount.ts';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { type Column, DataTable } from '../../ui/table/data-table.tsx';
import { constraintWords as words } from '../../words/constraint-words.ts';
import { studyWords } from '../../words/study-words.ts';
import type { ConstraintNames } from './constraint-names.ts';
import { type EarningRow, earningRows } from './constraint-view.ts';

export interface EarningsPanelProps {
  readonly study: ConstraintStudy;
  readonly name: LoadName;
  readonly names: ConstraintNames;
}

/** Variants by what an hour of the constraint earns with them: which to make more of. */
export const EarningsPanel = ({ study, name, names }: EarningsPanelProps) => (
  <Panel
    title={words.earnings(names.resource(name))}
    lead={words.earningsLead}
    actions={<Means label={studyWords.means}>{words.earningsMeans}</Means>}
    testId="constraint-earnings"
  >
    <DataTable
      caption={words.earnings(names.resource(name))}
      captionUnseen
      columns={columnsOf(names)}
      rows={earningRows(study, name)}
      rowKey={({ demand }) => demand.key}
    />
  </Panel>
);

const sum = (amount: Amount) => (amount.kind === 'known' ? words.money(amount.money) : words.notKnown);

const columnsOf = (names: ConstraintNames): readonly Column<EarningRow>[] => [
  { key: 'variant', head: words.variant, cell: ({ demand }) => names.variant(demand.key) },
  {
    key: 'per-hour',
    head: words.perHour,
    numeric: true,
    cell: ({ demand, earning }) => <b data-testid={`earns-${demand.variant}`}>{perHour(earning)}</b>,
  },
  { key: 'contribution', head: words.contribution, numeric: true, cell: (row) => sum(row.contribution) },
  { key: 'price', head: words.price, numeric: true, cell: ({ demand }) => sum(demand.price) },
  { key: 'parts', head: words.parts, numeric: true, cell: ({ demand }) => sum(demand.parts) },
  {
    key: 'takes',
    head: words.takes,
    numeric: true,
    cell: ({ minutes }) => (minutes === undefined ? words.notKnown : words.each(minutes)),
  },
];

function perHour(earning: EarningRow['earning']): string {
  if (!earning) return words.notKnown;
  return earning.perHour === undefined ? words.needsNone : words.money(earning.perHour);
}
