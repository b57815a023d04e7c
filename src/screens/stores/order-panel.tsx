import { toOrder } from '../../domain/rollup/to-order.ts';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';
import { nameOf } from '../../words/names.ts';
import { storesWords as words } from '../../words/stores-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { useShop } from '../parts/app-context.ts';

/** What to order for the plan and the low marks. */
export const OrderPanel = () => {
  const shop = useShop();
  return (
    <Panel
      title={words.orderTitle}
      lead={words.orderLead}
      actions={<Means label={studyWords.means}>{words.orderMeans}</Means>}
      testId="stores-order"
    >
      <DataTable
        caption={words.orderTitle}
        captionUnseen
        columns={[
          {
            key: 'part',
            head: words.part,
            cell: ({ part, toClean }) => (
              <>
                {nameOf(shop.registers, { register: 'part', id: part })}
                {toClean > 0 && <small class="stores-fewer">{words.fewerOnceCleaned(toClean)}</small>}
              </>
            ),
          },
          {
            key: 'order',
            head: words.order,
            numeric: true,
            cell: ({ part, order }) => <b data-testid={`order-${part}`}>{words.count(order)}</b>,
            sortBy: ({ order }) => order,
          },
          { key: 'plan', head: words.forPlan, numeric: true, cell: ({ forPlan }) => words.count(forPlan) },
          { key: 'mark', head: words.lowMark, numeric: true, cell: ({ lowMark }) => words.count(lowMark) },
          { key: 'free', head: words.free, numeric: true, cell: ({ free }) => words.count(free) },
        ]}
        rows={toOrder(shop)}
        rowKey={({ part }) => part}
        empty={words.nothingToOrder}
      />
    </Panel>
  );
};
