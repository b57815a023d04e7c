import { DataTable } from '../../ui/table/data-table.tsx';
import type { WordTable } from './review-tables.ts';

/** A table in words on the screen; its panel has the title. */
export const WordDataTable = ({ table, testId }: { table: WordTable; testId: string }) => (
  <DataTable
    caption={table.caption}
    captionUnseen
    columns={table.heads.map((head, at) => ({
      key: head,
      head,
      numeric: at >= table.texts || undefined,
      cell: ({ key, cells }) =>
        at > 0 ? <span data-testid={`${testId}-${key}-${at}`}>{cells[at]}</span> : cells[at],
    }))}
    rows={table.rows}
    rowKey={({ key }) => key}
    empty={table.empty}
    testId={testId}
  />
);
