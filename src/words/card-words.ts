import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { pieces } from './pieces-words.ts';

export const cardWords = inLanguage('cardWords', {
  title: (code: string) => `Enter the card of ${code}`,
  lead: 'Type what the pencil says: the sums since the card was printed. All of it becomes one entry, or none of it.',
  back: 'To the tray',
  here: (n: number) => `${pieces(n)} here now`,
  passed: 'Passed',
  addFlaw: 'Add a flaw',
  addFlawAt: (stage: string) => `Add a flaw at ${stage}`,
  reason: 'What is wrong',
  chooseReason: 'Choose',
  outcome: 'What became of it',
  chooseOutcome: 'Choose',
  count: 'How many',
  outcomes: {
    mended: 'Mended here',
    second: 'Second',
    scrapped: 'Scrapped',
    'scrapped-saved': 'Scrapped, parts saved',
  },
  backTo: (stage: string) => `Sent back to ${stage}`,
  remove: 'Take off',
  removeAt: (stage: string) => `Take off the flaw at ${stage}`,
  save: 'Enter card',
  nothingEntered: 'Nothing was entered yet. What is typed stays: mend the marked line and enter it again.',
  done: 'The card is entered',
  doneDetail: (n: number) =>
    `${n === 1 ? '1 entry' : `${wholeNumber(n)} entries`} in the log, at the time of now.`,
  undo: 'Undo',
  undone: 'All of the card was taken back.',
  noCount: 'Enter how many.',
  noReason: 'Choose what is wrong.',
  noOutcome: 'Choose what became of it.',
  noRoute: 'The batch of this tray has no route: there is nothing to enter.',
});
