import { inLanguage } from './language.ts';
import { ofGrade } from './outcome-words.ts';
import { pieces } from './pieces-words.ts';

/** Raising seconds back to firsts after rework. */
export const raiseWords = inLanguage('raiseWords', {
  open: 'Raise',
  openDetail: 'to firsts',
  openName: 'Raise seconds to firsts',
  title: (what: string) => `Raise seconds of ${what}`,
  lead: 'For seconds whose blemish was worked out. They stay where they are and go on as firsts; the listing no longer tells of the blemish.',
  stands: 'In the yields they stay lowered: rework does not make the first try good.',
  which: 'Which pieces?',
  finished: (n: number) => `Finished: ${ofGrade(n, 'second')} on the shelf`,
  none: 'No second stands here. What is listed comes off the list first.',
  howMany: 'How many are firsts again?',
  gone: 'What can be seen no longer?',
  goneNone: 'No reason is noted for its seconds.',
  goneMissing: 'Choose what is gone, or that none of these is.',
  noneOfThese: 'None of these',
  save: (n: number) => `Raise ${pieces(n)}`,
  fewer: 'Fewer',
  more: 'More',
  close: 'Close',
});
