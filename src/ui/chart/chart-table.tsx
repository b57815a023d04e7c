import { useState } from 'preact/hooks';
import { Disclosure } from '../notice/disclosure.tsx';
import { type Column, DataTable } from '../table/data-table.tsx';
import type { ChartProps } from './chart-props.ts';
import { chartColumns, pointName } from './chart-reading.ts';

/** The numbers of a chart, one tap away; made when they are first asked for, for there may be thousands. */
export const ChartTable = ({ props, open }: { props: ChartProps; open: boolean }) => {
  const [asked, setAsked] = useState(false);
  const flagged = new Set(props.flagged);
  const columns: readonly Column<number>[] = [
    { key: 'x', head: props.tableHead, cell: (index) => pointName(props, index) },
    ...chartColumns(props).map(({ key, head, shown }) => ({ key, head, cell: shown, numeric: true })),
  ];
  return (
    <div class="chart-table">
      <Disclosure summary={props.texts.asTable} open={open || undefined} onOpen={() => setAsked(true)}>
        {(asked || open) && (
          <DataTable
            caption={props.title}
            captionUnseen
            columns={columns}
            rows={props.x.values.map((_, index) => index)}
            rowKey={String}
            rowTone={(index) => (flagged.has(index) ? 'flaw' : undefined)}
          />
        )}
      </Disclosure>
    </div>
  );
};
