import { about, roundNumber } from './fine-number-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { pieces } from './pieces-words.ts';
import { workTime } from './study-words.ts';

/** Minutes of one piece: "45 s", "2.5 min". */
function pieceMinutesWords(minutes: number): string {
  return minutes < 1 ? `${wholeNumber(60 * minutes)} s` : `${roundNumber(minutes)} min`;
}

/** The ends of an interval of minutes. */
function likely([low, high]: readonly [number, number]): string {
  if (low < 1 && high >= 1) return `likely ${pieceMinutesWords(low)} to ${pieceMinutesWords(high)}`;
  return `likely ${high < 1 ? wholeNumber(60 * low) : roundNumber(low)} to ${pieceMinutesWords(high)}`;
}

export const timeStudyWords = inLanguage('timeStudyWords', {
  perPiece: 'Minutes per piece',
  perPieceLead: 'Half of the pieces take no longer than this. Tap a field for more.',
  perPiecePicture:
    'Half of the pieces take no longer than this. Below it stands what is likely, nine times out of ten.',
  perPieceMeans:
    'Learnt from the time between two taps inside a spell of work. Taps of several pieces count for all of them; breaks and forgotten pauses are told by their length and left out.',
  corner: 'Stage',
  loading: (stage: string) => `${stage}: loading`,
  none: 'No time is known yet: it is learnt from pieces that are tapped off one after the other.',
  minutes: pieceMinutesWords,
  likely: (interval: readonly [number, number] | undefined) => (interval ? likely(interval) : 'few pieces'),
  cellName: (wood: string, stage: string, minutes: number, interval: readonly [number, number] | undefined) =>
    `${wood} at ${stage}: ${pieceMinutesWords(minutes)}, ${interval ? likely(interval) : 'few pieces'}`,
  timeOf: (wood: string, stage: string) => `${wood} at ${stage}: time`,
  median: 'Half of the pieces take at most',
  mean: 'A piece takes on average',
  counted: 'Learnt from',
  countedIs: (n: number, minutes: number) => `${pieces(n)} in ${workTime(minutes)}`,
  breaks: 'Left out as breaks',
  breaksAre: (stretches: number, minutes: number) =>
    stretches === 0 ? 'none' : `${wholeNumber(stretches)}, ${workTime(minutes)} in all`,
  spread: 'Pieces differ by',
  spreadIs: (cv: number) => `about ${about(cv)} to either side`,
  learning: 'Getting quicker',
  learningLead:
    'Whether the same work goes quicker with practice. Over all days and batches, whatever is chosen above.',
  noLearning:
    'Too few pieces have a known time yet. Tap pieces off one after the other, and a curve comes by itself.',
  curve: 'Whose work',
  curveName: (stage: string, person: string) => `${stage} · ${person}`,
  rate: (rate: number, interval: readonly [number, number] | undefined) => {
    const ends = interval ? `, likely ${wholeNumber(100 * interval[0])} to ${about(interval[1])}` : '';
    return `Each time the number made doubles, a piece takes ${about(rate)} of what it took${ends}.`;
  },
  quicker: 'It goes quicker with every piece, and hardly by chance.',
  slower: 'It goes slower: something stands in the way, or the pieces have become harder.',
  steady: 'No clear change: practised hands, or too few pieces to tell.',
  learningMeans:
    'The curve is the usual one of practice: the time falls by the same share each time the number of pieces doubles. Dots are half-way times of stretches of pieces; the line is the curve that fits them best.',
  made: 'Pieces made',
  dots: 'Half of them take at most',
  fitted: 'Curve of practice',
  piecesUpTo: (n: number) => `piece ${wholeNumber(Math.round(n))}`,
  hours: 'Where the hours go',
  hoursLead: (most: number, by: string) =>
    `Work inside spells, stage by stage: the newest ${wholeNumber(most)} ${by} that had any.`,
  hoursByStage: 'Where the hours go, stage by stage',
  hoursBy: 'By',
  byDay: 'days',
  byWeek: 'weeks',
  hoursMeans:
    'From the first tap of a spell to its end. More than a quarter of an hour without a tap counts as a break. Work that nobody taps is not in it.',
  noHours: 'No worked time is known in what you look at.',
  worked: 'Worked',
  day: 'Day',
  week: 'Week from',
  hoursOf: (minutes: number) => `${roundNumber(minutes / 60)} h`,
  hoursAxis: (hours: number) => `${roundNumber(hours)} h`,
  hourCell: (stage: string, day: string, minutes: number) => `${stage}, ${day}: ${workTime(minutes)}`,
  all: 'All stages',
  lost: 'Time in what was scrapped',
  lostIs: about,
  lostOf: (scrapped: number, all: number) =>
    `Pieces that were scrapped had taken ${workTime(scrapped)}; all that was judged took ${workTime(all)}.`,
  lostMeans:
    'Reckoned with the usual minutes of a piece at each stage of its route up to where it was scrapped. The later a piece is lost, the more goes with it.',
});
