import { Panel } from '../../ui/panel/panel.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';
import { promiseRows, promiseWords as words } from '../../words/promise-words.ts';

/** What happens when something goes wrong, and what can be lost. */
export const PromisePanel = () => (
  <Panel title={words.title} lead={words.lead} testId="promise">
    <DataTable
      caption={words.title}
      captionUnseen
      rows={promiseRows}
      rowKey={({ fault }) => fault}
      columns={[
        { key: 'fault', head: words.fault, cell: ({ fault }) => fault },
        { key: 'happens', head: words.happens, cell: ({ happens }) => happens },
        { key: 'lost', head: words.lost, cell: ({ lost }) => lost },
      ]}
    />
    <p>{words.not}</p>
  </Panel>
);
