import type { LabelReading } from '../domain/label/label-reading.ts';
import type { LabelSizeFact } from '../domain/set-up/facts.ts';
import { fixedNumber, roundNumber } from './fine-number-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { pieces } from './pieces-words.ts';

export const labelWords = inLanguage('labelWords', {
  sizes: 'Labels',
  sizesLead: 'Sizes of labels and how they lie on a sheet. Measure yours: shops sell many that look alike.',
  addSize: 'Add a size',
  editSize: 'A size of label',
  on: 'What they come on',
  onSheet: 'A sheet',
  onSheetDetail: 'many on a page',
  onRoll: 'A roll',
  onRollDetail: 'one after the other',
  width: 'Width of a label',
  height: 'Height of a label',
  sheetWidth: 'Width of the sheet',
  sheetHeight: 'Height of the sheet',
  columns: 'Labels across',
  rows: 'Labels down',
  left: 'From the left edge to the first label',
  top: 'From the top edge to the first label',
  acrossStep: 'From a label to the next, across',
  acrossStepHint: 'From left edge to left edge: the gap is part of it.',
  downStep: 'From a label to the next, down',
  mm: 'mm',
  badLength: (least: number, most: number) =>
    `A length in mm from ${roundNumber(least)} to ${roundNumber(most)}, such as 38.1.`,

  title: 'Labels, cards and sheets',
  back: 'Back',
  labels: 'Labels',
  cards: 'Route cards',
  what: 'What to print',
  whatLabels: 'for the trays to bear',
  whatCards: 'to tick with a pencil',
  which: 'Which trays',
  chosen: (n: number) => `${wholeNumber(n)} chosen`,
  all: 'All in work',
  newest: 'New today',
  none: 'None',
  noTrays: 'No trays yet',
  noTraysHelp: 'Make up a tray first: its label bears its code.',
  done: (n: number) => `Finished and empty trays (${wholeNumber(n)})`,
  size: 'Size of label',
  measures: (width: number, height: number) => `${width} × ${height} mm`,
  paper: 'Paper',
  a4: 'A4',
  letter: 'US Letter',
  firstFree: 'First free label on the sheet',
  firstFreeHint: (n: number) =>
    `1 is at the top left, counted along the rows; a full sheet has ${wholeNumber(n)}. Put a begun sheet in first.`,
  print: 'Print',
  chooseTrays: 'Choose a tray',
  whichFree: 'Say which is free',
  pages: (n: number) => (n === 1 ? '1 page' : `${wholeNumber(n)} pages`),
  page: (page: number, of: number) => `Page ${wholeNumber(page)} of ${wholeNumber(of)}`,
  preview: 'As it will be printed',
  before: 'Page before',
  after: 'Page after',
  atFullSize: 'Print at 100 %, without fitting to the page. Measure the first label against the sheet.',
  noSign: 'This shop has no sign yet',
  noSignHelp:
    'The symbol on a label says which shop it is of. Save the shop in Set-up once: that gives it a sign.',
  toShop: 'Open Set-up',
  setUpSizes: 'Change sizes',
  label: (code: string) => `Label of tray ${code}`,
  fewer: 'Fewer',
  more: 'More',

  onLabel: (n: number) => (n < 0 ? 'recount' : n === 0 ? 'no pieces' : pieces(n)),
  hereNow: 'Here',
  stage: 'Stage',
  passed: 'Passed: a stroke for each',
  passedCount: 'Sum',
  flawed: 'Flaws: count and what became of it',
  otherFlaw: 'other:',
  cardMeans: 'M mended here, B sent back (and where to), S second, X scrapped (XP: parts saved).',
  printedAt: (moment: string) => `The counts under Here are of ${moment}.`,
  caution: 'Caution',
  batch: 'Batch',
  route: 'Route card',

  printLabel: 'Label',
  printCard: 'Route card',
  enterCard: 'Enter a card',
  printLabels: 'Print labels',

  readable: 'The code can be read at 2 m.',
  tooSmall: (capitals: number) =>
    `Too small to read the code at 2 m: ${roundNumber(capitals)} mm capitals, where 11.6 are wanted.`,
  tooFaint: (module: number) =>
    `Its symbol has squares of ${fixedNumber(module, 2)} mm: some cameras will not read it.`,
  sheetRules: 'Safety data sheet rules.',
});

/** "70 × 37 mm". */
export function sizeWords({ width, height }: Pick<LabelSizeFact, 'width' | 'height'>): string {
  return labelWords.measures(width / 100, height / 100);
}

/** A length of hundredths of a millimetre as it is typed. */
export function millimetres(hundredths: number): string {
  return String(hundredths / 100);
}

/** What a size of label is good for: null when all of it can be read. */
export function readingWords(reading: LabelReading): string | null {
  const { capitals, fromAfar, module, scannable } = reading;
  const small = fromAfar ? null : labelWords.tooSmall(capitals);
  const faint = scannable ? null : labelWords.tooFaint(Math.floor(module * 100) / 100);
  return [small, faint].filter((each) => each !== null).join(' ') || null;
}

/**
 * The caution of a wood as it stands on a label: its first sentence, without what is in brackets. All of it stands at the
 * tray; and the data sheet rules over both.
 */
export function shortCaution(wood: string, caution: string): string {
  const [first = ''] = caution.replace(/\s*\([^()]*\)/g, '').split(/(?<=[.!?])\s/);
  return first === '' ? '' : `${wood}: ${first} ${labelWords.sheetRules}`;
}
