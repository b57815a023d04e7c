import type { PlanNote } from '../domain/plan/forecast/model-of-shop.ts';
import { dayWords, shortDayWords } from './date-words.ts';
import { about, fixedNumber, roundNumber, share } from './fine-number-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { pieces } from './pieces-words.ts';
import { workTime } from './study-words.ts';
import { duration } from './time-words.ts';

/** Words of the forecast. */
export const forecastWords = inLanguage('forecastWords', {
  batch: 'Batch',
  together: (names: string) =>
    `Reckoned together with what is due before it: ${names}. What is due later waits.`,
  goal: 'What counts as a good one',
  goals: { firsts: 'firsts alone', finished: 'firsts and seconds' },
  counting: 'Reckon with',
  countings: { starts: 'starts that are advised', 'in-work': 'what is in work alone' },
  startsAdded: (n: number) => `${pieces(n)} are still to be started, as Starts advises; here they start now.`,
  noStarts: 'Nothing more is to be started.',

  working: (done: number, of: number) =>
    `The plan is worked off ${wholeNumber(of)} times, each time with other luck: ${wholeNumber(done)} done.`,
  stop: 'Stop',
  reckon: 'Reckon',
  stopped: 'The forecast was stopped.',
  stoppedOld: 'The forecast was stopped: what stands here is of before.',
  failed: 'The forecast could not be worked out',
  failedHelp: 'Nothing is lost: it only reckons. Try again; the other pages work as ever.',
  again: 'Try again',

  done: 'When all is done',
  doneLead: 'Nothing is in work any more by then: each piece is finished or scrapped.',
  doneMeans:
    'The plan is worked off many times. Half of the times it is done by the first day, 85 of 100 times by the second, 95 of 100 times by the third. Chances, times and pace are drawn anew each time from what the taps tell, as wide as they are unsure.',
  dates: { at50: 'as likely as not by', at85: 'fairly sure by', at95: 'almost sure by' },
  percent: { at50: '50 %', at85: '85 %', at95: '95 %' },
  date: (day: string) => dayWords(day),
  beyond: 'not within two years',
  enough: (day: string) => `All that is wanted is there, as likely as not, by ${dayWords(day)}.`,
  enoughShare: (share: number, isBeyond: boolean) =>
    `In ${about(share)} of the cases every variant gets its good ones from this${isBeyond ? ' within two years' : ''}.`,
  late: (days: number) =>
    `Fairly sure is ${wholeNumber(days)} ${days === 1 ? 'day' : 'days'} after the due day.`,
  spare: (days: number) =>
    days === 0
      ? 'Fairly sure is the due day itself.'
      : `Fairly sure is ${wholeNumber(days)} ${days === 1 ? 'day' : 'days'} before the due day.`,
  strip: 'Calendar of the dates',
  weekdays: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'],
  weekOf: (day: string) => shortDayWords(day).replace(/^\w+,? /, ''),
  marks: { today: 'today', due: 'due', at50: '50 %', at85: '85 %', at95: '95 %' },

  fan: 'Good ones to come',
  fanLead: 'All variants together. The wider the fan, the less is known.',
  fanMeans:
    'At each day, nine of ten futures lie in the fan; the middle line has half of them above it. The dashed lines leave 15 of 100 below and above.',
  likely: 'nine of ten futures',
  middle: 'half of them have more',
  lower: '85 of 100 have more',
  higher: '15 of 100 have more',
  wanted: 'wanted',
  goodAxis: 'Good ones',
  dayAxis: 'Day',

  promise: 'Safe to promise',
  promiseLead: (chance: number) =>
    `So many good ones there are by then with a chance of at least ${chance} %.`,
  promiseMeans:
    'What is finished already is in it. Each promise holds for itself: that all of them hold at once is less likely, so promise the sum of all rather from the last line. Pieces come by the tray, so the chance of a number can be a good deal higher than the one that is wanted.',
  until: 'By the end of',
  badDay: 'Choose today or a day of the next 12 months.',
  asking: 'That day is being reckoned …',
  variant: 'Variant',
  wantedHead: 'Wanted',
  ready: 'Finished',
  safe: 'Safe to promise',
  chance: 'Chance of it',
  range: 'Nine of ten times',
  half: 'As likely as not',
  all: 'All together',
  between: (low: number, high: number) => `${wholeNumber(low)} to ${wholeNumber(high)}`,
  share: about,

  behind: 'What this rests on',
  behindLead: 'Hours, places, times, chances and pace, as the shop has them now.',
  hoursLine: (people: number, minutes: number) =>
    `${people === 1 ? '1 person works' : `${wholeNumber(people)} people work`} ${workTime(minutes)} in the next 7 days, breaks and days off taken out.`,
  unsaid: (names: string) => `Not counted, since their hours are not said: ${names}.`,
  pace: (factor: number, isPrior: boolean) =>
    isPrior
      ? `A minute of counted work takes ${fixedNumber(factor, 2)} minutes of the hours. That is a guess: too few days are over to tell.`
      : `A minute of counted work takes ${fixedNumber(factor, 2)} minutes of the hours, as on the days that are over.`,
  times: (of: number) => `Worked off ${wholeNumber(of)} times.`,
  places: 'Places',
  resource: 'Clamps or rack',
  capacity: 'Pieces at once',
  noLimit: 'no limit',
  cures: 'Cures',
  stages: 'Times and chances',
  stage: 'Stage',
  minutesEach: 'Minutes each',
  lost: 'Lost',
  back: 'Sent back',
  timed: 'Pieces timed',
  tried: 'Pieces tried',
  guess: 'guess',
  minutes: roundNumber,
  chanceShown: share,
  cureTime: (minutes: number) => duration(60_000 * minutes),
  toTimes: 'Times',
  toChances: 'Chances',
  rule: 'What is due first goes first; of that what is nearest to its end; a tray stays in one pair of hands. Days off beyond those of Set-up, machines that break, and missing parts are not in it.',
  allGuess:
    'Without a history of a stage its chance and time are guesses: they lean on the other stages, and make the dates wide.',

  cannot: {
    'no-history': {
      title: 'No time per piece is known yet',
      help: 'Nothing says how long a piece takes. Tap piece by piece at any stage for a while: a handful of pieces is enough to begin with.',
      act: 'To the bench',
    },
    nothing: {
      title: 'Nothing is in work',
      help: 'There is no piece to forecast: make up trays, or reckon with the starts that are advised.',
      act: 'Make trays',
    },
    'no-hands': {
      title: 'Nobody’s hours are said',
      help: 'A date needs hours. Say in Set-up when people work.',
      act: 'Hours of people',
    },
    'capacity-zero': {
      title: 'Clamps or a rack have no place',
      help: 'Pieces need a place that is not there. Say in Set-up how many it takes.',
      act: 'Clamps and racks',
    },
    'never-done': {
      title: 'This never comes to an end',
      help: 'Within the next two years not one try got all pieces through. Hours are too few for what is in work, or pieces are sent back for ever.',
      act: 'Hours of people',
    },
  },
  past: 'The due day is past',
  pastHelp: 'The dates below are what it takes all the same; say another due day under Targets.',
  toTargets: 'Targets',
  unplanned: (names: string) => `Left out, since their wood or route is not known: ${names}.`,
  tooMany: (names: string, most: number) =>
    `More than ${wholeNumber(most)} are wanted, so what is to be started is not reckoned: ${names}. Only what is in work counts.`,
  note: (note: PlanNote, { stage, variant }: { stage: string; variant: string }): string => {
    switch (note.kind) {
      case 'stage-without-time':
        return `${stage}: nobody has timed a piece here yet, so its time is a guess.`;
      case 'pieces-below-zero':
        return `${stage}, ${variant}: the count is below zero and is left out. It wants a recount.`;
      case 'not-on-route':
        return `${stage}, ${variant}: ${pieces(note.pieces)} are left out, since the route has that stage no more.`;
    }
  },
});
