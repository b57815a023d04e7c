/** What a listing sheet can say of pieces for sale, in the order in which it is offered. */
export const listingColumns = [
  'name',
  'species',
  'ferrule',
  'grade',
  'pieces',
  'price',
  'blemishes',
  'photo-files',
  'batch',
] as const;
export type ListingColumn = (typeof listingColumns)[number];

/** What it says until the maker chooses otherwise: all but the batch, which is for the shop to know. */
const usualListingColumns: readonly ListingColumn[] = listingColumns.filter((id) => id !== 'batch');

/** The columns that a maker chose, as they were kept; the usual ones where that is no choice of this version. */
export function listingColumnsOf(kept: readonly string[] | null): readonly ListingColumn[] {
  const known = (kept ?? []).map((name) => listingColumns.find((column) => column === name));
  const chosen = known.filter((column) => column !== undefined);
  const isWhole =
    chosen.length > 0 && chosen.length === known.length && new Set(chosen).size === chosen.length;
  return isWhole ? chosen : usualListingColumns;
}
