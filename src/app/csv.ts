import Papa from 'papaparse';
import type { Cell, Table } from '../domain/export/table.ts';

/** Spreadsheets take a file that begins with it for UTF-8, and read accents right. */
const byteOrderMark = '\ufeff';
const lineEnd = '\r\n';

/**
 * Text that a spreadsheet could take for a formula: it begins with one of the signs of the OWASP page on CSV injection
 * (`= + - @`, tab, CR, LF, and the full-width forms of the signs) or with the null of ASVS 5.0 1.2.10. Some programs
 * drop blanks at the front, so blanks before a sign count too. Apostrophes before all that are the guard itself.
 */
const formula = /^'*(?:[\t\r\n\0]|\s*[=+\-@＝＋－＠])/u;

/**
 * A table as CSV (RFC 4180) for spreadsheets: UTF-8 with a byte order mark, CRLF, a line of headings, every cell in
 * quotes. Text that could be taken for a formula gets an apostrophe in front (papaparse's own guard knows no LF and
 * gives up at a line end inside); numbers have none, so that they stay numbers. Nothing is an empty cell.
 */
export function csvOf({ columns, rows }: Table): string {
  const lines = [columns, ...rows].map((row) => row.map(written));
  return byteOrderMark + Papa.unparse(lines, { quotes: true, newline: lineEnd }) + lineEnd;
}

function written(cell: Cell): string {
  if (cell === null) return '';
  return typeof cell === 'number' ? String(cell) : formula.test(cell) ? `'${cell}` : cell;
}

/** The cells of a CSV that `csvOf` wrote, headings first, the guard taken off. Cells come back as text. */
export function cellsOf(csv: string): readonly (readonly string[])[] {
  const text = csv.startsWith(byteOrderMark) ? csv.slice(byteOrderMark.length) : csv;
  const { data } = Papa.parse<string[]>(text, { delimiter: ',', newline: lineEnd });
  const lines = text.endsWith(lineEnd) ? data.slice(0, -1) : data;
  return lines.map((line) => line.map(unguarded));
}

/** A cell without the apostrophe that `csvOf` puts in front of what could be taken for a formula. */
export function unguarded(cell: string): string {
  return cell.startsWith("'") && formula.test(cell) ? cell.slice(1) : cell;
}
