import { money, roundNumber } from './fine-number-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { pieces } from './pieces-words.ts';

const days = (n: number) => `${roundNumber(n)} ${n === 1 ? 'day' : 'days'}`;

const away = 'no difference';

/** Words of what-if questions. */
export const whatIfWords = inLanguage('whatIfWords', {
  change: 'What would be different',
  changeLead: 'Fill in one or several. The plan of the shop stays as it is: nothing is written.',
  nothing: 'nothing',
  resource: 'Clamps or rack',
  places: 'Places then',
  hold: 'Cure of',
  cureHours: 'Hours of cure then',
  cureHint: 'The data sheet rules: a shorter cure than it allows is no plan.',
  stage: 'A stage is faster',
  percent: 'Faster by',
  saturday: 'A helper on Saturdays',
  saturdayHint: 'Hours, from 9 o’clock on',
  variant: 'Fewer of a variant',
  fewer: 'Pieces fewer',
  price: 'Price of what is bought',
  priceHint: 'A machine, clamps. It is held against the hours that it saves.',
  monthly: 'Good pieces a month',
  monthlyHint: 'How many you will make with it.',
  ask: 'Reckon it',
  forget: 'Empty the fields',
  bad: {
    places: 'A whole number from 1 to 9999.',
    cure: 'Hours from 0 to 2160.',
    percent: 'A number from 1 to 95.',
    hours: 'Hours from 0.5 to 14.',
    fewer: 'A whole number from 1 on.',
    price: 'A price with at most two decimals.',
    monthly: 'A whole number from 0 on.',
  },
  noRate: 'No rate of an hour is said, so no money can be told.',
  toRate: 'Rate of an hour',

  result: 'What would come of it',
  resultLead: 'Both plans meet the same luck, so the difference is of the change alone.',
  means:
    'Nine of ten times the difference lies in the range. A difference whose range has both signs is not sure to be one. With more of anything a busy shop can, now and then, end a little later: what comes to hand first is taken first.',
  none: 'Fill in a change above.',
  reckoned: 'The changed plan is being reckoned …',
  date: 'All is done',
  now: 'Now',
  afterwards: 'Then',
  fair: 'fairly sure by',
  hours: 'Hours of hands',
  cost: 'Cost of those hours',
  sooner: (low: number, middle: number, high: number): string =>
    `${signedDays(middle)}; nine of ten times ${signedDays(low)} to ${signedDays(high)}`,
  hoursDiffer: (low: number, middle: number, high: number) =>
    `${signed(middle)} h; nine of ten times ${signed(low)} to ${signed(high)} h`,
  moneyDiffer: (low: number, middle: number, high: number) =>
    `${money(middle)}; nine of ten times ${money(low)} to ${money(high)}`,
  noDate: 'One of the two does not come to an end in two years, at least now and then.',
  cannot: 'With that change there is no end: a place or the hours are missing.',

  payback: 'Pays for itself',
  paybackMeans:
    'Price over the money that is saved on each good piece: no interest, no wear, no value left in the end.',
  never: 'Never: even at best it saves no hours.',
  after: (soonest: number, likely: number | null, latest: number | null) =>
    `After ${likely === null ? 'no number that is likely' : pieces(likely)}; ${wholeNumber(soonest)} at the soonest, ${latest === null ? 'at the latest never' : `${wholeNumber(latest)} at the latest`}.`,
  months: (soonest: number, likely: number | null, latest: number | null) =>
    `In months: ${likely === null ? 'not likely ever' : roundNumber(likely)}; ${roundNumber(soonest)} at the soonest, ${latest === null ? 'at the latest never' : `${roundNumber(latest)} at the latest`}.`,

  fits: 'How large a batch fits the hours',
  fitsLead: 'A new batch from its first stage on, of the same variants in the same proportion.',
  fitsMeans:
    'Minutes of people’s hours for one good piece, by what is known of times, chances and pace: work on lost pieces, and on those that go back, is in it. Waiting for cures is not.',
  weekHours: 'Hours a week',
  weeks: 'Weeks',
  badNumber: 'A number above 0.',
  eachTakes: (low: number, likely: number, high: number) =>
    `A good piece takes ${roundNumber(likely)} minutes of your hours; ${roundNumber(low)} to ${roundNumber(high)} nine of ten times.`,
  fit: (low: number, likely: number, high: number) =>
    `${pieces(likely)} ${likely === 1 ? 'fits' : 'fit'}; ${wholeNumber(low)} to ${wholeNumber(high)} nine of ten times.`,
});

function signedDays(n: number): string {
  const whole = Math.round(10 * n) / 10;
  return whole === 0 ? away : `${days(Math.abs(whole))} ${whole < 0 ? 'sooner' : 'later'}`;
}

function signed(n: number): string {
  const shown = roundNumber(Math.abs(n));
  return shown === '0' ? '0' : `${n > 0 ? '+' : '−'}${shown}`;
}
