import type { RegisterName } from '../set-up/register.ts';

/** A cell of a table. A number stays a number, so that a spreadsheet can reckon with it; null is nothing. */
export type Cell = string | number | null;

/** A table for people's own reckoning: columns by their ids, rows in their order, each as long as the columns. */
export interface Table<Column extends string = string> {
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
}

/** The name that the shop has for a set-up fact. */
export type Naming = (fact: { readonly register: RegisterName; readonly id: string }) => string;

export function tableOf<Column extends string>(
  columns: readonly Column[],
  records: readonly Readonly<Record<Column, Cell>>[],
): Table<Column> {
  return { columns, rows: records.map((record) => columns.map((column) => record[column])) };
}

/** A sum of minor units in major ones: 4850 is 48.5. */
export function majorUnits(minor: number | null): number | null {
  return minor === null ? null : minor / 100;
}
