import './review-sheet.css';
import { reviewWords as words } from '../../words/review-words.ts';
import type { WordTable } from './review-tables.ts';

/** So many rows of a table fit on the page, whatever the shop has. */
const mostRows = 12;

export interface ReviewSheetProps {
  readonly title: string;
  readonly tables: readonly WordTable[];
  /** Lines under the tables. */
  readonly notes: readonly string[];
}

/** The review on paper: one page. */
export const ReviewSheet = ({ title, tables, notes }: ReviewSheetProps) => (
  <article class="print-page review-sheet">
    <h1 dir="auto">{title}</h1>
    {tables.map((table) => (
      <PaperTable key={table.caption} table={table} />
    ))}
    {notes.map((note) => (
      <p key={note}>{note}</p>
    ))}
  </article>
);

const PaperTable = ({ table: { caption, heads, texts, rows, empty } }: { table: WordTable }) => (
  <section>
    <table>
      <caption>{caption}</caption>
      <thead>
        <tr>
          {heads.map((head, at) => (
            <th key={head} scope="col" data-text={at < texts || undefined}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.slice(0, mostRows).map(({ key, cells: [name, ...cells] }) => (
          <tr key={key}>
            <th scope="row" dir="auto" data-text>
              {name}
            </th>
            {cells.map((cell, at) => (
              <td key={heads[at + 1]} data-text={at + 1 < texts || undefined}>
                {cell}
              </td>
            ))}
          </tr>
        ))}
        {rows.length === 0 && (
          <tr>
            <td colSpan={heads.length}>{empty}</td>
          </tr>
        )}
      </tbody>
    </table>
    {rows.length > mostRows && <p>{words.moreRows(rows.length - mostRows)}</p>}
  </section>
);
