import type { ShelfLine } from '../../domain/command/command.ts';
import { type NumberProblem, readWholeNumber } from '../../domain/command/whole-number.ts';
import { type Grade, mostPieces } from '../../domain/log/place.ts';
import { type ShelfPlace, shelfPlaces } from '../../domain/log/shelf-facts.ts';
import type { ShelfRow } from '../../domain/rollup/shelf-stock.ts';
import { readPrice } from '../parts/money.ts';

/** A move while it is being said. */
export interface MoveDraft {
  readonly grade: Grade;
  readonly from: ShelfPlace;
  readonly to: ShelfPlace;
  readonly pieces: string;
  /** null until somebody types: the usual price stands there. */
  readonly price: string | null;
}

/** Where pieces can be taken from. */
export function placesWithPieces({ at }: ShelfRow): readonly ShelfPlace[] {
  return shelfPlaces.filter((place) => at[place] > 0);
}

/** The move that is most likely meant: what is listed is sold, what is on the shelf is listed. Undefined where nothing is. */
export function likelyMove(rows: readonly ShelfRow[], grade?: Grade): MoveDraft | undefined {
  const row = rows.find((each) => (grade ? each.grade === grade : placesWithPieces(each).length > 0));
  const [from] = row?.at.listed ? (['listed'] as const) : row ? placesWithPieces(row) : [];
  return row && from && { grade: row.grade, from, to: usuallyTo(from), pieces: '1', price: null };
}

/** Where pieces of a place usually go. */
export function usuallyTo(from: ShelfPlace): ShelfPlace {
  if (from === 'shelf') return 'listed';
  return from === 'listed' ? 'sold' : 'shelf';
}

/** Money changes hands when pieces are sold, or come back from a buyer. */
export function asksPrice({ from, to }: Pick<MoveDraft, 'from' | 'to'>): boolean {
  return (from === 'sold') !== (to === 'sold');
}

/** The move as a line of the command, or what is wrong with it. */
export function readMove(
  draft: MoveDraft,
  { row, usual }: { readonly row: ShelfRow; readonly usual: number | null },
): { readonly line: ShelfLine } | { readonly pieces?: NumberProblem; readonly price?: 'bad' } {
  const read = readWholeNumber(draft.pieces, { least: 1, most: mostPieces });
  const price = asksPrice(draft) ? (draft.price === null ? usual : readPrice(draft.price)) : null;
  if (!read.ok || price === undefined)
    return { ...(!read.ok && { pieces: read.problem }), ...(price === undefined && { price: 'bad' }) };
  const { grade, from } = draft;
  const shown = row.at[from];
  return { line: { variant: row.variant, grade, from, pieces: read.value, shown, price } };
}
