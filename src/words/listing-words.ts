import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { pieces } from './pieces-words.ts';

const photos = (n: number) => (n === 1 ? '1 photo' : `${wholeNumber(n)} photos`);

export const listingWords = inLanguage('listingWords', {
  title: 'List for sale',
  lead: 'Choose what is to be listed, then take the listing sheet with its photos to where you sell.',
  toList: 'What to list',
  toListLead: 'What stands on the shelf and is not listed yet.',
  nothingToList: 'Nothing on the shelf is waiting to be listed.',
  all: 'All',
  none: 'None',
  choose: (line: string) => `List ${line}`,
  kind: (variant: string, grade: string) => `${variant}, ${grade}`,
  onShelf: (n: number) => `${wholeNumber(n)} on the shelf`,
  howMany: 'Pieces',
  fewer: 'Fewer',
  more: 'More',
  list: (n: number) => `List ${pieces(n)}`,
  chooseSome: 'Choose some pieces',

  sheet: 'Listing sheet',
  which: 'Which pieces?',
  last: 'Listed last',
  lastDetail: 'in one go, on this tablet',
  now: 'All that is listed',
  nowDetail: 'and not sold yet',
  count: (n: number) => pieces(n),
  emptyLast: 'Nothing was listed on this tablet lately.',
  emptyNow: 'Nothing is listed now.',
  columns: 'What it says of them',
  columnsLead: 'In this order, from the left. Kept on this tablet.',
  addColumn: (column: string) => `Add ${column.toLowerCase()}`,
  lastColumn: 'One has to stay.',
  saveTable: 'Save table',
  saveZip: 'Save with photos',
  zipDetail: (n: number) => (n === 0 ? 'no photo is here' : photos(n)),
  looking: 'Looking for the photos …',
  packing: 'Being packed …',
  saved: (file: string) => `Saved: ${file}`,
  shared: (file: string) => `Handed over: ${file}`,
  tapAgain: 'It is ready: tap once more.',
  failed: 'The photos could not be read. Try again.',
  photosFailed: 'The records of the photos could not be read, so the sheet has none.',
  missingTitle: (n: number) =>
    n === 1 ? '1 photo is not on this tablet' : `${wholeNumber(n)} photos are not on this tablet`,
  missing: 'They are on another tablet, or were let go. The sheet and its files are without them:',
  missingOf: (variant: string, n: number) => `${variant}: ${photos(n)}`,
  pictureless: 'Without a photo:',
  toFiles: 'Take photos in',
  most: (n: number) => `At most ${wholeNumber(n)} photos of each variant go with the sheet, its own first.`,

  print: 'To print',
  printLead: 'The printing of the browser also saves it as a PDF, which can be sent on.',
  printed: (moment: string) => `As of ${moment}.`,
  nothingToPrint: 'Nothing is listed',
  preview: 'As it will be printed',
});

/** Names of the files of a listing, with the shop day on which it was made. */
export const listingFileNames = inLanguage('listingFileNames', {
  table: (day: string) => `tallywright-listing-${day}.csv`,
  zip: (day: string) => `tallywright-listing-${day}.zip`,
  inside: 'listing.csv',
});
