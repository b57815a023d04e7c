import type { CostStudy } from '../../domain/plan/cost/cost-study.ts';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';
import { costWords as words } from '../../words/cost-words.ts';
import { nameOf } from '../../words/names.ts';
import { wholeNumber } from '../../words/number-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { useShop } from '../parts/app-context.ts';

/** Money lost by stage and reason. */
export const LossesPanel = ({ losses: { cells, whole, unknown } }: { losses: CostStudy['losses'] }) => {
  const { registers } = useShop();
  return (
    <Panel
      title={words.losses}
      lead={words.lossesLead(whole)}
      actions={<Means label={studyWords.means}>{words.lossesMeans}</Means>}
      testId="cost-losses"
    >
      <DataTable
        caption={words.losses}
        captionUnseen
        columns={[
          {
            key: 'stage',
            head: words.stage,
            cell: ({ stage }) => nameOf(registers, { register: 'stage', id: stage }),
          },
          {
            key: 'reason',
            head: words.reason,
            cell: ({ reason }) =>
              reason === null ? words.noReason : nameOf(registers, { register: 'reason', id: reason }),
          },
          { key: 'pieces', head: words.pieces, numeric: true, cell: ({ pieces }) => wholeNumber(pieces) },
          { key: 'lost', head: words.lost, numeric: true, cell: ({ money }) => words.money(money) },
        ]}
        rows={cells}
        rowKey={({ stage, reason }) => `${stage}|${reason ?? ''}`}
        empty={words.noLosses}
      />
      {unknown.pieces > 0 && <p class="plan-note">{words.unknownLosses(unknown.pieces)}</p>}
    </Panel>
  );
};
