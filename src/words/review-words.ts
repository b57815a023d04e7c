import type { Likely } from '../domain/plan/purchase/payback.ts';
import { dayWords } from './date-words.ts';
import { fixedNumber, money, share } from './fine-number-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { pieces } from './pieces-words.ts';
import { workTime } from './study-words.ts';

const days = (n: number) => (n === 1 ? '1 day' : `${wholeNumber(n)} days`);

/** Words of what a batch came to. */
export const reviewWords = inLanguage('reviewWords', {
  batch: 'Batch',
  putAway: (batch: string) => `${batch} (put away)`,
  print: 'Print on one page',
  printed: (batch: string, day: string) => `Review of ${batch}, ${dayWords(day)}`,
  atLeast: (text: string) => `at least ${text}`,
  notRecorded: 'no plan kept',
  beyond: 'not within two years',
  none: '–',
  notKnown: 'not known',
  money,
  share,
  count: wholeNumber,
  time: workTime,
  day: dayWords,

  planned: 'Planned against actual',
  plannedLead: (isDone: boolean) =>
    isDone ? 'Nothing of it is in work any more.' : 'Pieces are still in work: what follows is so far.',
  plannedMeans:
    'Firsts and the due day are held against the targets, all else against the forecast that was kept as the plan of the batch; where none was kept it cannot be known afterwards, since the batch itself has shaped what is believed. Yield is what came out, of either grade, of all that has come out or was scrapped. Hours are those between taps on its pieces, without stretches of more than a quarter of an hour and without the rest after a last tap. The cost is of what came out, with what was scrapped and what seconds bring in less.',
  what: 'What',
  plan: 'Planned',
  actual: 'Actual',
  rows: {
    started: 'Pieces made up',
    firsts: 'Firsts wanted',
    expected: 'Done, as forecast (85 %)',
    expectedFirsts: 'Firsts, as forecast',
    seconds: 'Seconds',
    scrapped: 'Scrapped',
    flying: 'In work',
    yield: 'Yield',
    hours: 'Hours worked',
    cost: 'Cost',
    begun: 'First worked on',
    done: 'Done',
  },
  firstsOut: 'Firsts',
  stillIn: 'still in work',
  notBegun: 'not begun',
  doneOn: (last: string, late: number | null) =>
    late === null || late === 0
      ? dayWords(last)
      : `${dayWords(last)}, ${days(Math.abs(late))} ${late > 0 ? 'late' : 'early'}`,
  noDue: 'no due day',

  losses: 'The largest losses',
  lossesLead: {
    money: 'The three causes that cost the most money.',
    pieces: 'The three causes that took the most pieces; what they cost is not known yet.',
  },
  lossesUnknown: (n: number) =>
    `${pieces(n)} more ${n === 1 ? 'was' : 'were'} lost, of which the money is not known.`,
  noLosses: 'Nothing was lost.',
  stage: 'Stage',
  reason: 'Reason',
  noReason: 'none given',
  pieces: 'Pieces',
  lost: 'Lost',

  next: 'What the next plan takes over',
  nextLead: 'Rates and times as they are believed now, all batches in them.',
  nextMeans:
    'What is believed of each stage is pooled across the woods, and rests on all that was ever tapped. Starts are those that would be enough for the firsts that were wanted, from nothing in work, with the chance that the batch asks for. Time is that of hands for one piece that comes out, work on lost ones and on what comes again in it.',
  variant: 'Variant',
  comesOut: 'Comes out',
  firstsOf: 'Firsts of those',
  timeEach: 'Time for one',
  wanted: 'Firsts wanted',
  starts: 'Starts enough',
  startsOutOfReach: (n: number) => `more than ${wholeNumber(n)}`,
  never: 'never certain',
  nothingWanted: 'This batch wants nothing, so nothing is to be started.',
  behind: 'What is behind it',
  visits: 'Visits for one',
  through: 'Comes through',
  minutesEach: 'Each takes',
  each: (minutes: number) => (minutes < 10 ? `${fixedNumber(minutes, 1)} min` : workTime(minutes)),

  fits: 'How large the next batch may be',
  fitsLead: 'For the hours that shall go into it, with the same variants in the same shares.',
  hoursAWeek: 'Hours a week',
  weeks: 'Weeks',
  badNumber: 'A whole number from 1 to 1,000.',
  fitsAnswer: ({ low, likely, high }: Likely) =>
    low === high
      ? `About ${pieces(likely)} that come out.`
      : `About ${pieces(likely)} that come out: ${wholeNumber(low)} to ${wholeNumber(high)}.`,
  fitsUnknown: (stages: string) => `Not known: nobody has timed ${stages} yet.`,
  fitsNothing: 'Not known: the batch wants nothing, or its route takes no hands.',
  fitsMeans:
    'Hours over the time that a piece takes which comes out. The range is that of the mean times, where enough taps are known; rates have a range too, which is not in it. Cures and places may hold you back before hands do: see the constraint.',

  compare: 'Batches side by side',
  compareLead:
    'Those that are put away too, the latest due first. Hours for one are told once nothing is in work.',
  mostBatches: (n: number) => `The ${wholeNumber(n)} latest are shown.`,
  perGood: 'Cost of one',
  hoursEach: 'Hours for one',
  moreRows: (n: number) => `${wholeNumber(n)} more are on the screen.`,
});
