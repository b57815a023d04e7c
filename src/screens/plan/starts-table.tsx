import { type Column, DataTable } from '../../ui/table/data-table.tsx';
import { nameOf } from '../../words/names.ts';
import { wholeNumber } from '../../words/number-words.ts';
import { startsWords as words } from '../../words/starts-words.ts';
import { useShop } from '../parts/app-context.ts';
import type { StartRow } from './starts-view.ts';

export interface StartsTableProps {
  readonly rows: readonly StartRow[];
  readonly picked: string | undefined;
  readonly onPick: (key: string) => void;
  readonly name: string;
}

/** What to start of each variant of a batch. */
export const StartsTable = ({ rows, picked, onPick, name }: StartsTableProps) => {
  const { registers } = useShop();
  return (
    <DataTable
      caption={words.table(name)}
      captionUnseen
      columns={columnsOf((id) => nameOf(registers, { register: 'variant', id }))}
      rows={rows}
      rowKey={({ key }) => key}
      rowTone={({ key }) => (key === picked ? 'saved' : undefined)}
      onPick={({ key }) => onPick(key)}
    />
  );
};

function columnsOf(variantName: (id: string) => string): readonly Column<StartRow>[] {
  return [
    { key: 'variant', head: words.variant, cell: ({ target }) => variantName(target.variant) },
    {
      key: 'start',
      head: words.start,
      numeric: true,
      cell: ({ target, start, instead }) => (
        <b data-testid={`start-${target.variant}`} data-start={start}>
          {start === undefined ? instead : words.startNow(start)}
        </b>
      ),
    },
    {
      key: 'without',
      head: words.without,
      numeric: true,
      cell: ({ answer, target }) => (answer && target.wanted > 0 ? words.chance(answer.none.chance) : '–'),
    },
    { key: 'wanted', head: words.wanted, numeric: true, cell: ({ target }) => wholeNumber(target.wanted) },
    { key: 'good', head: words.good, numeric: true, cell: ({ good }) => wholeNumber(good) },
    { key: 'flying', head: words.flying, numeric: true, cell: ({ flying }) => wholeNumber(flying) },
  ];
}
