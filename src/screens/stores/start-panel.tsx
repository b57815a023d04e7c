import { canStart } from '../../domain/rollup/can-start.ts';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';
import { nameOf } from '../../words/names.ts';
import { storesWords as words } from '../../words/stores-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { useShop } from '../parts/app-context.ts';

/** What can be started now of each variant, and the part that sets the number. */
export const StartPanel = () => {
  const shop = useShop();
  const partName = (id: string) => nameOf(shop.registers, { register: 'part', id });
  return (
    <Panel
      title={words.startTitle}
      lead={words.startLead}
      actions={<Means label={studyWords.means}>{words.startMeans}</Means>}
      testId="stores-start"
    >
      <DataTable
        caption={words.startTitle}
        captionUnseen
        columns={[
          {
            key: 'variant',
            head: words.variant,
            cell: ({ variant }) => nameOf(shop.registers, { register: 'variant', id: variant }),
          },
          {
            key: 'pieces',
            head: words.canStart,
            numeric: true,
            cell: ({ variant, pieces }) => (
              <b data-testid={`start-${variant}`}>{pieces === null ? words.unknown : words.count(pieces)}</b>
            ),
            sortBy: ({ pieces }) => pieces ?? -1,
          },
          {
            key: 'limit',
            head: words.limit,
            cell: ({ variant, limit, untold }) => (
              <span data-testid={`start-${variant}-limit`}>
                {[
                  limit ? partName(limit) : '',
                  untold.length > 0 ? words.untoldParts(untold.map(partName).join(', ')) : '',
                ]
                  .filter(Boolean)
                  .join(' · ')}
              </span>
            ),
          },
        ]}
        rows={canStart(shop)}
        rowKey={({ variant }) => variant}
        empty={words.noVariants}
      />
    </Panel>
  );
};
