import { dayTable } from '../domain/export/day-table.ts';
import { shelfTable } from '../domain/export/shelf-table.ts';
import { storesTable } from '../domain/export/stores-table.ts';
import type { Table } from '../domain/export/table.ts';
import { tapsTable } from '../domain/export/taps-table.ts';
import { targetsTable } from '../domain/export/targets-table.ts';
import { traysTable } from '../domain/export/trays-table.ts';
import { yieldTable } from '../domain/export/yield-table.ts';
import { eventWords } from '../words/event-words.ts';
import { nameOf } from '../words/names.ts';
import { type ColumnId, type TableName, tableFileName, tableInWords } from '../words/table-words.ts';
import { csvOf } from './csv.ts';
import type { Session } from './session.ts';

/** A table of the shop as a file for a spreadsheet. Rejects when the log cannot be read. */
export async function tableFile(table: TableName, session: Session): Promise<File> {
  const name = tableFileName(table, session.today());
  return new File([csvOf(tableInWords(await tableOf(table, session)))], name, { type: 'text/csv' });
}

async function tableOf(table: TableName, session: Session): Promise<Table<ColumnId>> {
  const { shop } = session.view.value;
  const naming: Parameters<typeof dayTable>[1] = (fact) => nameOf(shop.registers, fact);
  switch (table) {
    case 'trays':
      return traysTable(shop, naming);
    case 'yield':
      return yieldTable(shop, naming);
    case 'days':
      return dayTable(shop, naming);
    case 'stores':
      return storesTable(shop);
    case 'targets':
      return targetsTable(shop, naming);
    case 'shelf':
      return shelfTable(shop, naming);
    case 'taps':
      return tapsTable(await session.allEvents(), {
        shop,
        nameOf: naming,
        say: (event) => eventWords(event, shop.registers),
      });
  }
}
