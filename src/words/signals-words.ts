import { share } from './fine-number-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { pieces } from './pieces-words.ts';

interface Told {
  /** What is counted: a reason, or scrap. */
  readonly what: string;
  /** null for all woods of the stage. */
  readonly wood: string | null;
  readonly stage: string;
}

interface Halves {
  readonly before: { readonly flawed: number; readonly pieces: number };
  readonly after: { readonly flawed: number; readonly pieces: number };
  /** When the change came, in words. */
  readonly when: string;
}

export const signalsWords = inLanguage('signalsWords', {
  list: 'What has changed',
  scrap: 'Scrap',
  series: ({ what, wood, stage }: Told) =>
    wood === null ? `${what} at ${stage}, all woods` : `${what} in ${wood} at ${stage}`,
  counts: ({ before, after, when }: Halves) =>
    `${wholeNumber(before.flawed)} in ${wholeNumber(before.pieces)} before ${when}, ${wholeNumber(after.flawed)} in ${wholeNumber(after.pieces)} since`,
  worse: 'worse',
  better: 'better',
  expected: (expected: number, all: number) =>
    `Without a change, about ${wholeNumber(Math.round(expected))} of the ${wholeNumber(all)} would have come since.`,
  none: 'Nothing has changed by more than chance would do',
  tooFew:
    'There are too few pieces yet to tell a change from chance. Rates are watched by themselves once there are more.',
  watched: (watched: number, falseAlarm: number) =>
    `${watched === 1 ? 'One rate is' : `${wholeNumber(watched)} rates are`} watched. While nothing changes, at least ${wholeNumber(100 - Math.round(100 * falseAlarm))} looks in 100 find this list empty.`,
  watchedMeans:
    'A rate stands here when its pieces before and since differ by more than chance makes the pieces of any rate in the whole list differ. Its false alarms are bounded over the whole list (Holm’s step-down with Tarone’s bound). That holds for one look: who looks every day will see a false alarm now and then. Small changes in small numbers stay unseen, so an empty list does not say that all is well.',
  means: (p: number) =>
    `A shop in which nothing changes shows something as strange as this, anywhere in its list, in ${oftenWords(p)}.`,
  showChart: 'Chart',
  answer: 'Answer',
  answerName: (series: string) => `Answer: ${series}`,
  chartName: (series: string) => `Chart: ${series}`,
  answerTitle: 'What did you do about it?',
  answerHint: 'The signal then leaves the list, and your note stands as a mark on the charts.',
  note: 'Note',
  noteHint: 'Such as “re-ground the gouge” or “new glue”.',
  marks: 'Marks',
  marksLead:
    'What was changed, and when. A mark stands on the charts of its stage and can be compared before and since.',
  noMarks: 'No mark yet. Set one when you change a tool, a glue or a way of working.',
  earlierMarks: (n: number) => (n === 1 ? 'One earlier mark' : `${wholeNumber(n)} earlier marks`),
  addMark: 'New mark',
  editMark: 'Mark',
  stage: 'Stage',
  wood: 'Wood',
  allWoods: 'all woods',
  when: 'Day',
  hour: 'Time',
  whenWrong: 'A day and a time that are on the calendar.',
  whenLater: 'This is still to come.',
  putAway: 'put away',
  lookAt: 'Look at any rate',
  lookAtLead: 'The chart of a reason, or of scrap, at a stage.',
  what: 'What',
  show: 'Show',
  noSeries: 'No piece of this was judged there yet.',
  chart: {
    x: 'Tray',
    y: 'Flawed',
    shares: 'Flawed of each tray',
    centre: 'On average',
    limits: 'Where chance alone keeps nearly all trays',
    share: (value: number) => share(value),
    flagged: 'outside of chance',
    change: 'likely change',
    means:
      'Each dot is a tray, in the order of the work: the share of its pieces that were flawed at their first visit. The band is where a tray of its size falls by chance alone, nearly always, if all trays are alike; a diamond lies outside of it. One tray outside may still be chance; a run of dots on one side says more.',
    sum: (flawed: number, all: number) => `${wholeNumber(flawed)} flawed of ${pieces(all)}`,
  },
});

/** How often a chance of p comes true, in words that read well for small ones. */
function oftenWords(p: number): string {
  if (p < 0.001) return 'less than one look in a thousand';
  return p < 0.01 ? `about ${looks(1000 * p)} in a thousand` : `about ${looks(100 * p)} in a hundred`;
}

function looks(often: number): string {
  const whole = Math.max(1, Math.round(often));
  return whole === 1 ? 'one look' : `${wholeNumber(whole)} looks`;
}
