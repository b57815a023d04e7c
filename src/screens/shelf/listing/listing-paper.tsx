import type { Photos } from '../../../app/photos.ts';
import type { ListingColumn } from '../../../domain/export/listing-columns.ts';
import type { PhotoFile } from '../../../domain/export/photo-files.ts';
import type { Table } from '../../../domain/export/table.ts';
import type { VariantId } from '../../../domain/log/ids.ts';
import { usePicture } from '../../parts/photos/use-picture.ts';

/** What stands on the paper of a listing sheet. */
export interface Paper {
  readonly title: string;
  readonly said: string;
  /** In words; `columns` beside it says what each is. */
  readonly table: Table;
  readonly columns: readonly ListingColumn[];
  /** The variant of each row. */
  readonly variants: readonly VariantId[];
  readonly files: readonly PhotoFile[];
  readonly store: Photos | null;
}

/** A listing sheet to hang up, to pin to a stall or to send on. */
export const ListingPaper = ({ paper }: { paper: Paper }) => {
  const { title, said, table, columns } = paper;
  return (
    <article class="listing-paper">
      <header>
        <p class="listing-title" dir="auto">
          {title}
        </p>
        <p>{said}</p>
      </header>
      <table>
        <thead>
          <tr>
            {table.columns.map((head, at) => (
              <th key={head} scope="col" data-column={columns[at]}>
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row, line) => (
            <tr key={`${line}`}>
              {row.map((cell, at) => (
                <td key={columns[at]} data-column={columns[at]} dir="auto">
                  {columns[at] === 'photo-files' ? (
                    <Pictures paper={paper} variant={paper.variants[line]} />
                  ) : columns[at] === 'price' && typeof cell === 'number' ? (
                    cell.toFixed(2)
                  ) : (
                    cell
                  )}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </article>
  );
};

const Pictures = ({ paper: { files, store }, variant }: { paper: Paper; variant: VariantId | undefined }) => {
  const its = files.filter((file) => file.variant === variant);
  if (!store || its.length === 0) return null;
  return (
    <ul class="listing-pictures">
      {its.map((file) => (
        <li key={file.name}>
          <Picture store={store} file={file} />
          <span>{file.name}</span>
        </li>
      ))}
    </ul>
  );
};

const Picture = ({ store, file }: { store: Photos; file: PhotoFile }) => {
  const address = usePicture(file.photo, store.small);
  return address ? <img src={address} alt="" /> : null;
};
