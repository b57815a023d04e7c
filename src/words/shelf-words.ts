import type { Grade } from '../domain/log/place.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { pieces } from './pieces-words.ts';

/** A count that may have gone below zero. */
const count = (n: number) => wholeNumber(n).replace('-', '−');
const photos = (n: number) => (n === 1 ? '1 photo' : `${wholeNumber(n)} photos`);
const gradeNames: Readonly<Record<Grade, string>> = { first: 'Firsts', second: 'Seconds' };

export const shelfWords = inLanguage('shelfWords', {
  title: 'Shelf',
  lead: 'Finished pieces: what stands on the shelf, what is listed for sale, and where the others went.',
  toShelf: 'Shelf',
  toListing: 'List for sale',
  count,
  close: 'Close',
  grades: gradeNames,
  none: 'Nothing is finished yet',
  noneHelp: 'Pieces stand here once they have passed the last stage of their route.',
  toBench: 'To the bench',

  allTitle: 'All finished pieces',
  allMeans:
    'A piece is finished when it passes the last stage of its route. It stands on the shelf until somebody takes it down as listed, sold, given away or kept.',
  finished: 'Finished',
  finishedOf: (n: number) => `${count(n)} finished`,
  brought: 'Sold pieces brought',
  soldNone: '–',
  pricedOf: (priced: number, sold: number) =>
    priced === sold
      ? 'the price of each is known'
      : `the price is known of ${count(priced)} of ${count(sold)}`,

  variants: 'By variant',
  belowZero: 'Below zero: count',
  belowZeroDetail:
    'More went from here than came. Count what is there, then take back the move that was one too many.',
  ofOne: (variant: string) => `Open ${variant}`,

  unpicturedTitle: 'Without a photo',
  unpicturedLead: 'Variants that no photo shows as they are. Those with finished pieces come first.',
  unpicturedOf: (n: number) => (n > 0 ? count(n) : '–'),
  allPictured: 'Every variant in use has a photo.',
  variant: 'Variant',
  wood: 'Wood',

  goneTitle: 'This variant is not in the shop',
  goneHelp: 'It may come with the set-up of another tablet.',
  putAway: 'put away',
  whereTitle: 'Where its pieces are',
  move: 'Move pieces',
  usualPrice: 'Usual price',
  unknown: '–',
  noneFinished: 'No piece of it is finished yet.',
  noneOfGrade: 'None yet.',

  moveTitle: (variant: string) => `Move ${variant}`,
  grade: 'Which grade?',
  from: 'From where?',
  to: 'Where to?',
  thereNow: (n: number) => `${count(n)} there`,
  howMany: 'How many?',
  fewer: 'Fewer',
  more: 'More',
  priceEach: 'What each brought',
  priceBack: 'What each had brought',
  priceHint: 'The price of one, such as 48.50. Left empty it is not known.',
  badPrice: 'A price such as 48.50.',
  optional: 'may stay empty',
  moveNow: (n: number) => `Move ${pieces(n)}`,

  photosTitle: 'Photos',
  photosLead: 'Its own first, then those of its pieces that show no flaw.',
  morePhotos: (n: number) => `${photos(n)} more of its pieces: look at its older trays.`,
  blemishesTitle: 'What is to be seen on its seconds',
  blemish: 'Blemish',
  onHowMany: 'Pieces lowered for it',
  noBlemishes: 'No piece of it was lowered to a second.',
  noHistory: 'No piece of it was moved, and no photo was taken.',
});
