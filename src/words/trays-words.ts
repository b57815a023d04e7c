import type { Grade } from '../domain/log/place.ts';
import type { Mistyped } from '../domain/tray/mistyped-code.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { ofGrade } from './outcome-words.ts';
import { pieces } from './pieces-words.ts';

export const traysWords = inLanguage('traysWords', {
  mistyped: {
    empty: 'Type the code on the tray.',
    strange: (character: string) => `No code has a ${character}.`,
    checkFails: 'This code does not add up: one character is wrong, or two have changed places.',
    suspect: (character: string, place: number) =>
      `This code does not add up. Look at the ${character} again (place ${place}).`,
    noSuchTray: 'The code is well formed, but no tray in work has it.',
  },
  title: 'Trays',
  find: 'Find a tray by its code',
  findLabel: 'Code',
  open: 'Open',
  erase: 'Erase',
  offers: 'Perhaps one of these',
  scan: 'Scan',
  makeUp: 'Make up trays',
  live: (n: number) => `Trays in work (${wholeNumber(n)})`,
  done: (n: number) => `Finished and empty trays (${wholeNumber(n)})`,
  none: 'No trays yet',
  noneHelp: 'Make up the first tray. It gets a code to chalk on it, and its pieces wait at the first stage.',
  noVariant: 'Nothing to make yet',
  noVariantHelp: 'A tray holds pieces of one variant. Add a wood and a variant in Set-up first.',
  toSetUp: 'Open Set-up',
  code: 'Code',
  variant: 'Variant',
  wood: 'Wood',
  where: 'Where its pieces are',
  age: 'Made up',
  filterWood: 'Wood',
  filterStage: 'Stage',
  all: 'All',
  noMatch: 'No tray in work matches.',

  newTitle: 'Make up trays',
  whatPieces: 'What will the pieces be?',
  whichBatch: 'Batch',
  perTray: 'Pieces on each tray',
  howMany: 'How many trays',
  prized: 'One prized piece',
  prizedDetail: 'a tray of one',
  make: 'Make up',
  madeTitle: 'Chalk these codes on the trays',
  madeEach: (n: number) => `${pieces(n)} each`,
  more: 'Make more',
  undo: 'Undo',
  toTrays: 'All trays',
  toBench: 'To the bench',
  fewer: 'Fewer',
  moreOne: 'More',

  tray: (code: string) => `Tray ${code}`,
  batch: 'Batch',
  goneTitle: 'This tray is not in the log',
  goneHelp: 'Its making was taken back, or it came from another shop.',
  counts: 'Where its pieces are',
  finished: (n: number, grade: Grade) => `${ofGrade(n, grade)} finished`,
  scrapped: (n: number) => `${wholeNumber(n)} scrapped`,
  nowhere: 'No piece of this tray is in work.',
  waiting: (n: number, grade: Grade) => `${ofGrade(n, grade)} waiting`,
  held: (n: number, grade: Grade) => `${ofGrade(n, grade)} curing`,
  workHere: 'Work here',
  toCheck: 'Recount',
  split: 'Split',
  join: 'Join',
  recount: 'Recount',
  caution: 'Caution',
  close: 'Close',
  cancel: 'Cancel',

  whichSpot: 'Which pieces?',
  splitTitle: (code: string) => `Split ${code}`,
  splitHelp: 'The pieces get a tray and a code of their own.',
  splitPieces: 'Pieces for the new tray',
  splitSave: 'Split off',
  splitDone: 'Chalk this code on the new tray',
  joinTitle: (code: string) => `Join ${code} to another tray`,
  joinHelp: 'All pieces go over, and this code ends.',
  joinNone: 'No other tray of this variant and batch is in work.',
  joinWhich: 'To which tray?',
  joinSave: (code: string) => `Join to ${code}`,
  joinSaveNone: 'Join',
  joinChoose: 'Choose a tray.',
  recountTitle: (code: string) => `Recount ${code}`,
  recountHelp: (n: number) => `The log says ${wholeNumber(n).replace('-', '−')}.`,
  recountCounted: 'How many are there?',
  recountWhy: 'Why?',
  recountWhyMissing: 'Choose why.',
  recountDifference: (n: number) =>
    n === 0 ? 'No difference.' : `Difference: ${n > 0 ? '+' : '−'}${wholeNumber(Math.abs(n))}`,
  recountSave: 'Correct the count',
});

/** What is wrong with a typed code. */
export function mistypedWords({ fault, suspect }: Mistyped, typed: string): string {
  const { mistyped } = traysWords;
  switch (fault) {
    case 'empty':
      return mistyped.empty;
    case 'strange-character':
      return mistyped.strange(suspect === null ? '' : typed.charAt(suspect));
    case 'check-fails':
      return suspect === null ? mistyped.checkFails : mistyped.suspect(typed.charAt(suspect), suspect + 1);
    case 'no-such-tray':
      return mistyped.noSuchTray;
  }
}
