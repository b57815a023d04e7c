import './data-table.css';
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { Icon } from '../icon/icon.tsx';
import { rowsInOrder, type SortKey, type SortWay } from './row-order.ts';

/** One column: its head, what a cell shows, and what it sorts by where it can be sorted. */
export interface Column<Row> {
  key: string;
  head: string;
  cell: (row: Row) => ComponentChildren;
  /** Figures: set at the end side, digits of one width. */
  numeric?: boolean | undefined;
  sortBy?: ((row: Row) => SortKey) | undefined;
}

export interface DataTableProps<Row> {
  caption: string;
  columns: readonly Column<Row>[];
  rows: readonly Row[];
  rowKey: (row: Row) => string;
  /** Makes the first cell of each row a button. */
  onPick?: ((row: Row) => void) | undefined;
  /** The order at first; without it the rows stand as given. */
  sorted?: { key: string; way: SortWay } | undefined;
  /** Hides the caption from the eye where a panel's title says the same. */
  captionUnseen?: boolean | undefined;
  /** Shown instead of rows. */
  empty?: ComponentChildren | undefined;
  /** Marks a row at its start edge. */
  rowTone?: ((row: Row) => 'flaw' | 'warn' | 'saved' | undefined) | undefined;
  /** A last row, such as a total: one cell for each column. */
  foot?: readonly ComponentChildren[] | undefined;
  testId?: string | undefined;
}

type Sorted = { key: string; way: SortWay } | undefined;

const turned = (sorted: Sorted, key: string): Sorted => ({
  key,
  way: sorted?.key === key && sorted.way === 'ascending' ? 'descending' : 'ascending',
});

const Head = <Row,>({
  column,
  sorted,
  onSort,
}: {
  column: Column<Row>;
  sorted: Sorted;
  onSort: () => void;
}) => {
  const way = sorted?.key === column.key ? sorted.way : undefined;
  return (
    <th scope="col" data-numeric={column.numeric} aria-sort={column.sortBy && (way ?? 'none')}>
      {column.sortBy ? (
        <button type="button" class="table-sort" onClick={onSort}>
          <span>{column.head}</span>
          {way && (
            <span class="table-way">
              <Icon name={way === 'descending' ? 'down' : 'up'} size={24} />
            </span>
          )}
        </button>
      ) : (
        column.head
      )}
    </th>
  );
};

/** A captioned table. A wide one scrolls inside its own frame, never the page. */
export const DataTable = <Row,>(props: DataTableProps<Row>) => {
  const { columns, rowKey, onPick } = props;
  const [sorted, setSorted] = useState<Sorted>(props.sorted);
  const by = columns.find((column) => column.key === sorted?.key)?.sortBy;
  const rows = by && sorted ? rowsInOrder(props.rows, by, sorted.way) : props.rows;
  return (
    // biome-ignore lint/a11y/useSemanticElements: no set of fields, only a frame with a name
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a frame that scrolls must be reachable with the keyboard
    <div role="group" class="table-frame" data-testid={props.testId} aria-label={props.caption} tabIndex={0}>
      <table class="table">
        <caption class={props.captionUnseen ? 'unseen' : 'table-caption'}>{props.caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <Head
                key={column.key}
                column={column}
                sorted={sorted}
                onSort={() => setSorted(turned(sorted, column.key))}
              />
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={rowKey(row)} data-tone={props.rowTone?.(row)}>
              {columns.map((column, index) =>
                index === 0 ? (
                  <th
                    key={column.key}
                    scope="row"
                    data-numeric={column.numeric}
                    data-pick={onPick ? true : undefined}
                  >
                    {onPick ? (
                      <button type="button" class="table-pick" onClick={() => onPick(row)}>
                        {column.cell(row)}
                      </button>
                    ) : (
                      column.cell(row)
                    )}
                  </th>
                ) : (
                  <td key={column.key} data-numeric={column.numeric}>
                    {column.cell(row)}
                  </td>
                ),
              )}
            </tr>
          ))}
          {rows.length === 0 && props.empty !== undefined && (
            <tr>
              <td class="table-empty" colSpan={columns.length}>
                {props.empty}
              </td>
            </tr>
          )}
        </tbody>
        {props.foot && (
          <tfoot>
            <tr>
              {columns.map((column, index) => (
                <td key={column.key} data-numeric={column.numeric}>
                  {props.foot?.[index]}
                </td>
              ))}
            </tr>
          </tfoot>
        )}
      </table>
    </div>
  );
};
