import { about } from './fine-number-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { duration } from './time-words.ts';

/** The ends of an interval of shares: "81 to 92 %". */
export function between([low, high]: readonly [low: number, high: number]): string {
  return studyWords.between(wholeNumber(100 * low), about(high));
}

/** Time at work: a day of it is no day of the calendar, so hours stay hours; a little is more than none. */
export function workTime(minutes: number): string {
  if (minutes > 0 && minutes < 1) return studyWords.seconds(Math.ceil(60 * minutes));
  return minutes < 24 * 60 ? duration(60_000 * minutes) : studyWords.hours(minutes / 60);
}

export const studyWords = inLanguage('studyWords', {
  between: (low: string, high: string) => `${low} to ${high}`,
  seconds: (n: number) => `${wholeNumber(n)} s`,
  hours: (n: number) => `${wholeNumber(n)} h`,
  back: 'Yield',
  rack: 'What the taps tell',
  pages: {
    chances: { title: 'Chances', lead: 'How many of the pieces that are started come out, wood by wood.' },
    flow: { title: 'Flow', lead: 'How pieces came along day by day, and how many came through.' },
    flaws: { title: 'Flaws', lead: 'What goes wrong, where, and what it costs in minutes.' },
    signals: { title: 'Signals', lead: 'What has changed, for worse or better, and what you did about it.' },
    time: { title: 'Time', lead: 'How long a piece takes, and where the hours go.' },
    compare: { title: 'Compare', lead: 'Two stretches of time, people, batches or ways of working.' },
  },
  filter: 'What to look at',
  stretch: 'Look back',
  stretches: { all: 'all days', week: '7 days', month: '28 days', quarter: '91 days' },
  person: 'Tapped by',
  everybody: 'everybody',
  nobody: 'nobody in particular',
  batch: 'Batch',
  allBatches: 'all',
  working: 'All taps are being read …',
  workingAgain: 'What stands here is being worked out anew …',
  failed: 'The taps could not be read for this page',
  failedHelp: 'Nothing is lost: every tap is where it was. Try again; the other places work as ever.',
  again: 'Try again',
  nothing: 'Nothing to judge yet',
  nothingHelp:
    'No piece has left a stage in what you look at. This page fills by itself as pieces are tapped off.',
  doubtful: (n: number) =>
    n === 1
      ? 'One piece was tapped while the clock was in doubt: its day may be another.'
      : `${wholeNumber(n)} pieces were tapped while the clock was in doubt: their days may be others.`,
  notYet: 'not yet known',
  means: 'What this means',
  close: 'Close',
  asTable: 'The same as a table',
  chart: {
    move: 'Arrow keys or a tap move along the points.',
    loading: 'The chart is coming …',
    failed: 'The chart could not be drawn. Its numbers stand below.',
  },
});
