import { dayWords } from './date-words.ts';
import { fixedNumber, money } from './fine-number-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { pieces } from './pieces-words.ts';
import { workTime } from './study-words.ts';

const percent = (ratio: number) =>
  ratio === Number.POSITIVE_INFINITY ? 'more than there is' : `${wholeNumber(100 * ratio)} %`;

/** Words of what holds a shop back. */
export const constraintWords = inLanguage('constraintWords', {
  money,
  percent,
  minutes: workTime,
  /** Hands have minutes of work, clamps and racks those of one place. */
  timeOf: (resource: string, minutes: number) =>
    resource.startsWith('hands') ? workTime(minutes) : `${wholeNumber(minutes / 60)} place hours`,
  dash: '–',
  notKnown: 'not known',
  pieces: (n: number) => wholeNumber(Math.ceil(n)),
  each: (minutes: number) =>
    minutes < 10 && minutes > 0 ? `${fixedNumber(minutes, 1)} min` : workTime(minutes),
  atLeast: (text: string) => `at least ${text}`,
  horizon: 'Until this batch is due',
  horizonHint: 'Counts this batch and those that are due before it.',
  dueOn: (batch: string, day: string | null) => `${batch}: ${day === null ? 'no due day' : dayWords(day)}`,

  hands: 'All hands together',
  handsAt: (stage: string) => `Hands at ${stage}`,
  placesOf: (stage: string) => `Places of ${stage}`,
  ofBatch: (variant: string, batch: string) => `${variant} (${batch})`,

  loads: 'Load against capacity',
  loadsLead: 'The most loaded first. Tap one to see what is behind it, and what an hour of it earns.',
  loadsMeans:
    'Wanted are the visits that the pieces in work, and those still to be started, will make on average, what comes again with them, times the minutes that a piece has taken. Hands have the hours of all people until the due day; each stage is held against all of them, since anybody may work there. Clamps and racks have their rounds: each is loaded, cured and emptied while somebody is there. A place hour is an hour of one place, the wait for somebody to empty and fill it among it. What cures now counts as one more round; places without a limit hold nothing back.',
  noDue: 'This batch has no due day, so there is nothing to hold the work against.',
  toTargets: 'Targets',
  noHours: 'Nobody’s hours are said, so there is nothing to hold the work against.',
  toPeople: 'Hours of people',
  tooFar: 'The due day is more than ten years off.',
  nothing: 'Nothing is left to do for it.',
  most: (name: string, load: string, isTooMuch: boolean) =>
    isTooMuch
      ? `What holds you back: ${name}, loaded with ${load} of what there is.`
      : `Most loaded: ${name}, with ${load} of what there is.`,
  mostAt: (stage: string, share: string) => `Of hands, most go to ${stage} (${share}).`,
  noTimeFirst: (name: string) => `${name}: there is work, and no time is left for it.`,
  fits: 'All that is wanted fits.',
  fitsNot: 'Not all that is wanted fits: more hours, fewer pieces, or a later day.',
  fitsUnknown: 'What has no time yet comes on top: see below.',
  resource: 'What is loaded',
  wanted: 'Wanted',
  available: 'There is',
  load: 'Load',

  behind: (name: string) => `Behind it: ${name}`,
  behindLead: 'What each variant still wants of it.',
  rounds: (n: number, rounds: number, places: number, fits: number, stage: string) =>
    `${stage}: ${pieces(n)} are ${rounds === 1 ? '1 round' : `${wholeNumber(rounds)} rounds`} of ${wholeNumber(places)}; until then ${wholeNumber(fits)} could cure there, had it the places alone.`,
  variant: 'Variant',
  stage: 'Stage',
  visits: 'Pieces ahead',
  one: 'Each takes',
  inAll: 'In all',
  all: 'All',

  earnings: (name: string) => `What an hour earns: ${name}`,
  earningsLead: 'With the variants that stand first, you make the most of it.',
  earningsMeans:
    'Of a piece that comes out: the price, of firsts and seconds as they have come; less parts and consumables, also of pieces that are lost on the way, as if nothing were saved from them. Work is not taken off, since its hours are paid either way. Time is that of all visits which one piece that comes out makes needed. The ranking is right for one thing that holds you back; the mix below minds them all.',
  price: 'Price',
  parts: 'Parts',
  contribution: 'Brings in',
  takes: 'Takes of it',
  perHour: 'An hour earns',
  needsNone: 'takes none of it',

  mix: 'The best mix',
  mixLead: 'How many of each variant bring in the most in a stretch of time, in whole pieces.',
  mixMeans:
    'Found by linear programming: hands, clamps and racks are limits, and each piece is made from its start to its end. Of what is wanted so many count as can still be sold as firsts. What is in work already is not taken off.',
  time: 'For',
  times: { week: 'the next 7 days', until: 'until it is due', own: 'hours of my own' },
  own: 'Hours',
  ownHint: 'Of all hands together. Clamps and racks get their share of a usual week.',
  badOwn: 'Whole hours from 1 to 10,000.',
  sells: 'You can sell',
  sellsOf: { wanted: 'what is wanted', any: 'any number' },
  noMixTime: 'Not known: hours of people, or a due day, are not said. Hours of your own need neither.',
  noPlaces: 'Hours of people are not said, so clamps and racks are left out.',
  brings: (money: string, n: number) => `${pieces(n)}, which bring in ${money}.`,
  brings0: 'None: nothing of what can be sold brings in more than it takes, or nothing is wanted.',
  firstsOf: 'Firsts among them',
  make: 'Make',
  leftOut: (names: string) => `Left out, since something of them is not known: ${names}.`,
  notProven: (most: string) =>
    `The search ended early: this is the best it found, and none brings in more than ${most}.`,
  limits: 'What the mix takes',
  used: 'Taken',
  left: 'Left',
  worth: 'An hour more brings in',
  mixProblems: {
    'not-possible': 'No mix fits.',
    'without-limit': 'Nothing limits how many are made: say what can be sold.',
    'not-found': 'No mix of whole pieces was found. Try a shorter stretch.',
  },
});
