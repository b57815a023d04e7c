import {
  type ListingColumn,
  listingColumns,
  listingColumnsOf,
} from '../../../domain/export/listing-columns.ts';
import { Disclosure } from '../../../ui/notice/disclosure.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { listingWords as words } from '../../../words/listing-words.ts';
import { columnWords } from '../../../words/table-words.ts';
import { useApp } from '../../parts/app-context.ts';
import { moved } from '../../parts/order/moved.ts';
import { OrderButtons, useSteadyRow } from '../../parts/order/order-rows.tsx';

/** What the sheet says of each kind of piece, and in what order. */
export const ColumnChoice = () => {
  const { listing } = useApp().preferences;
  const columns = listingColumnsOf(listing.value);
  const steady = useSteadyRow(columns.join(' '));
  const elements = new Map<ListingColumn, Element | null>();
  return (
    <Disclosure summary={words.columns} testId="listing-columns">
      <p>{words.columnsLead}</p>
      <p role="status">{columns.length === 1 && words.lastColumn}</p>
      <ol class="listing-columns" data-testid="listing-columns-chosen">
        {columns.map((column) => (
          <li key={column} ref={(element) => void elements.set(column, element)}>
            <span>{columnWords[column]}</span>
            <OrderButtons
              id={column}
              name={columnWords[column]}
              kind="listing"
              onMove={(by) => {
                steady(elements.get(column) ?? null);
                listing.value = moved(columns, { thing: column, by });
              }}
              onRemove={() => {
                if (columns.length > 1) listing.value = columns.filter((each) => each !== column);
              }}
            />
          </li>
        ))}
      </ol>
      <div class="listing-others">
        {listingColumns
          .filter((column) => !columns.includes(column))
          .map((column) => (
            <PressButton
              key={column}
              icon="plus"
              label={words.addColumn(columnWords[column])}
              onAct={() => {
                listing.value = [...columns, column];
              }}
              testId={`listing-add-${column}`}
            />
          ))}
      </div>
    </Disclosure>
  );
};
