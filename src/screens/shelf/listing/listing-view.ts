import type { ShelfLine } from '../../../domain/command/command.ts';
import { readWholeNumber } from '../../../domain/command/whole-number.ts';
import type { ListingLine } from '../../../domain/export/listing-table.ts';
import { type PhotoFile, photoFiles } from '../../../domain/export/photo-files.ts';
import type { VariantId } from '../../../domain/log/ids.ts';
import { keyOf } from '../../../domain/log/key.ts';
import type { PhotoHash } from '../../../domain/log/photo-facts.ts';
import type { Shot } from '../../../domain/rollup/photos.ts';
import { type Kind, type ShelfRow, shelfStock } from '../../../domain/rollup/shelf-stock.ts';
import type { Shop } from '../../../domain/shop/shop.ts';

/** Photos of a variant that go with a listing sheet at most. */
export const mostPhotos = 12;

export const kindKey = ({ variant, grade }: Kind): string => keyOf(variant, grade);

/** What can be listed: all that stands on the shelf. */
export function rowsToList(shop: Shop): readonly ShelfRow[] {
  return shelfStock(shop).filter(({ at }) => at.shelf > 0);
}

/** What the maker has said of one kind: left out, or a count as it was typed. Of what nothing was said all is listed. */
export type Said = ReadonlyMap<string, { readonly chosen: boolean; readonly typed: string }>;

export interface LineToList {
  readonly row: ShelfRow;
  readonly chosen: boolean;
  readonly typed: string;
  /** undefined while what is typed is no count of pieces that are there. */
  readonly pieces: number | undefined;
}

export function linesToList(rows: readonly ShelfRow[], said: Said): readonly LineToList[] {
  return rows.map((row) => {
    const { chosen, typed } = said.get(kindKey(row)) ?? { chosen: true, typed: String(row.at.shelf) };
    const read = readWholeNumber(typed, { least: 1, most: row.at.shelf });
    return { row, chosen, typed, pieces: read.ok ? read.value : undefined };
  });
}

/** What is chosen as lines of one act; undefined while a count is wrong. */
export function chosenLines(lines: readonly LineToList[]): readonly ShelfLine[] | undefined {
  const chosen = lines.filter((line) => line.chosen);
  const asked = chosen.flatMap(({ row: { variant, grade }, pieces }) =>
    // Nothing is in the hand here. What counts is what the shop has when the tap is judged: a second tap finds it listed.
    pieces === undefined ? [] : [{ variant, grade, from: 'shelf' as const, pieces, shown: 0, price: null }],
  );
  return asked.length === chosen.length ? asked : undefined;
}

/** The photos that go with a listing sheet, and those that cannot. */
export interface ListingPhotos {
  readonly files: readonly PhotoFile[];
  /** Photos that the log tells of and this tablet has not. */
  readonly missing: readonly { readonly variant: VariantId; readonly photos: number }[];
  /** Variants of which nobody has taken a photo. */
  readonly without: readonly VariantId[];
  /** Some variant has more photos than go with it. */
  readonly more: boolean;
}

export function listingPhotos(
  lines: readonly ListingLine[],
  {
    shots,
    held,
    nameOf,
  }: {
    readonly shots: ReadonlyMap<VariantId, readonly Shot[]>;
    readonly held: ReadonlySet<PhotoHash>;
    readonly nameOf: (variant: VariantId) => string;
  },
): ListingPhotos {
  const variants = variantsOf(lines).map((variant) => {
    const all = [...new Set((shots.get(variant) ?? []).map(({ photo }) => photo.hash))];
    const here = all.filter((hash) => held.has(hash));
    return { variant, name: nameOf(variant), all: all.length, here };
  });
  return {
    files: photoFiles(
      variants.map(({ variant, name, here }) => ({ variant, name, photos: here.slice(0, mostPhotos) })),
    ),
    missing: variants
      .map(({ variant, all, here }) => ({ variant, photos: all - here.length }))
      .filter(({ photos }) => photos > 0),
    without: variants.filter(({ all }) => all === 0).map(({ variant }) => variant),
    more: variants.some(({ here }) => here.length > mostPhotos),
  };
}

export function variantsOf(lines: readonly Kind[]): readonly VariantId[] {
  return [...new Set(lines.map(({ variant }) => variant))];
}
