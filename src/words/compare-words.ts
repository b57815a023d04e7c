import { about } from './fine-number-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';

/** Hundredths of all pieces, with what they are called. */
const points = (value: number) => {
  const whole = Math.abs(Math.round(100 * value));
  return whole === 1 ? '1 in 100' : `${wholeNumber(whole)} in 100`;
};

/** A difference of shares as more or fewer pieces in a hundred. */
function moreOrFewer(value: number): string {
  if (Math.round(100 * value) === 0) return 'as many';
  return `${points(value)} ${value > 0 ? 'more' : 'fewer'}`;
}

/** The ends of an interval of differences, in pieces of a hundred. */
function likely([low, high]: readonly [number, number]): string {
  const [from, to] = [Math.round(100 * low), Math.round(100 * high)];
  const [least, most] = [Math.min(Math.abs(from), Math.abs(to)), Math.max(Math.abs(from), Math.abs(to))];
  if (most === 0) return 'likely less than 1 apart';
  if (from < 0 && to > 0) return `likely between ${wholeNumber(-from)} fewer and ${wholeNumber(to)} more`;
  return `likely ${wholeNumber(least)} to ${wholeNumber(most)} ${to > 0 ? 'more' : 'fewer'}`;
}

export const compareWords = inLanguage('compareWords', {
  what: 'What to hold against each other',
  kinds: {
    periods: 'Lately and before',
    day: 'Since a day',
    people: 'Two people',
    batches: 'Two batches',
    mark: 'A mark',
  },
  kindHints: {
    periods: 'The last days against as many before them.',
    day: 'All since a day against all before it.',
    people: 'What two people tapped.',
    batches: 'Two batches, each with all its pieces.',
    mark: 'Before and since something was changed: a tool, a set-up, a way of working.',
  },
  stretch: 'The last',
  stretches: { week: '7 days', month: '28 days', quarter: '91 days' },
  day: 'Since',
  first: 'First',
  second: 'Second',
  mark: 'Mark',
  noMarks: 'There is no mark yet. Set one on the page Signals when you change a tool or a way of working.',
  toSignals: 'Signals',
  choose: 'Choose',
  sameTwice: 'Choose two different ones.',
  lately: (days: string) => `the last ${days}`,
  earlier: (days: string) => `the ${days} before`,
  since: (when: string) => `since ${when}`,
  before: (when: string) => `before ${when}`,
  measure: 'Compare by',
  measures: { clean: 'flawless', kept: 'kept', firsts: 'still firsts' },
  measureMeans: {
    clean: 'Pieces that left the stage good at their first visit, of those whose first visit has ended.',
    kept: 'Pieces that the stage did not scrap, of those that it has done with. One that was sent back and came through is kept.',
    firsts: 'Pieces that came as firsts and left as firsts, of those that the stage has done with.',
  },
  overall: 'Over all stages',
  place: (stage: string, wood: string | null) => (wood === null ? stage : `${stage}, ${wood}`),
  byStage: 'Stage by stage',
  bySpecies: 'Wood by wood',
  byBoth: 'Each wood at each stage',
  lot: (name: string, k: number, n: number) =>
    n === 0 ? `${name}: no piece` : `${name}: ${about(k / n)}, ${wholeNumber(k)} of ${wholeNumber(n)}`,
  difference: (value: number | undefined, interval: readonly [number, number]) =>
    value === undefined ? 'not yet known' : `${moreOrFewer(value)} (${likely(interval)})`,
  verdict: ({ value, interval: [low, high], a, b }: Verdict): string => {
    if (value === undefined) return `Only one of the two has pieces: nothing can be held against it yet.`;
    if (low > 0) return `${capital(a)}: better than ${b}, and hardly by chance.`;
    if (high < 0) return `${capital(a)}: worse than ${b}, and hardly by chance.`;
    return `They differ by no more than chance would do.`;
  },
  fewer: (lot: string) => `fewer good: ${lot}`,
  more: (lot: string) => `more good: ${lot}`,
  flawless: (names: readonly string[]) => `Every piece of both was good: ${names.join(', ')}.`,
  standsOut: 'hardly chance',
  means:
    'The bar is the difference that was seen: to the right, the first of the two has the larger share of good pieces. The bracket is where the true difference lies nine times out of ten. One that crosses the middle may be nothing but chance.',
  overallMeans:
    'All stages together count a piece once at each stage. Whoever had more of a difficult wood or stage looks worse here: look at the woods and stages below before you judge.',
  manyMeans: (rows: number) =>
    `${wholeNumber(rows)} lines stand here. About one in ten misses the truth by chance alone, so one that stands out by itself proves little; the worst stand on top.`,
  nothing: 'Neither of the two has a piece that was judged',
  nothingHelp: 'Choose a longer stretch of time, or two others.',
  fewPeople:
    'Two people are compared by what each of them taps. Add the second one in Set-up, and say at the bench whose taps they are.',
  toPeople: 'People',
  fewBatches: 'There is only one batch yet. Two can be compared as soon as there is a second one.',
  stage: 'Stage',
  wood: 'Wood',
  differenceHead: 'Difference',
});

interface Verdict {
  readonly value: number | undefined;
  readonly interval: readonly [low: number, high: number];
  readonly a: string;
  readonly b: string;
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
