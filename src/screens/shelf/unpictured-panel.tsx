import { unpictured } from '../../domain/rollup/unpictured.ts';
import { Panel } from '../../ui/panel/panel.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';
import { nameOf } from '../../words/names.ts';
import { shelfWords as words } from '../../words/shelf-words.ts';
import { goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';

/** Variants that are still to be photographed; each leads to its page. */
export const UnpicturedPanel = () => {
  const shop = useShop();
  const rows = unpictured(shop);
  return (
    <Panel title={words.unpicturedTitle} lead={words.unpicturedLead} testId="unpictured">
      {rows.length === 0 ? (
        <p>{words.allPictured}</p>
      ) : (
        <DataTable
          caption={words.unpicturedTitle}
          captionUnseen
          rows={rows}
          rowKey={({ variant }) => variant}
          onPick={({ variant }) => goTo('shelf', variant)}
          columns={[
            {
              key: 'variant',
              head: words.variant,
              cell: ({ variant }) => (
                <span dir="auto" data-testid={`unpictured-${variant}`}>
                  {nameOf(shop.registers, { register: 'variant', id: variant })}
                </span>
              ),
            },
            {
              key: 'finished',
              head: words.finished,
              numeric: true,
              cell: ({ finished }) => words.unpicturedOf(finished),
            },
          ]}
        />
      )}
    </Panel>
  );
};
