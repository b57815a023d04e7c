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
export const usualListingColumns: readonly ListingColumn[] = listingColumns.filter((id) => id !== 'batch');
