import { Panel } from '../../ui/panel/panel.tsx';
import { type TableName, tableWords as words } from '../../words/table-words.ts';
import { TableButton } from '../parts/table-button.tsx';

const tables: readonly TableName[] = ['trays', 'taps', 'yield', 'days', 'stores', 'targets', 'shelf'];

/** The shop's tables as files for a spreadsheet. */
export const TablesPanel = () => (
  <Panel title={words.title} lead={words.lead} testId="tables">
    <ul class="set-up-tables">
      {tables.map((table) => (
        <li key={table}>
          <TableButton table={table} label={words.names[table]} detail={words.details[table]} />
        </li>
      ))}
    </ul>
    <p>{words.guard}</p>
  </Panel>
);
