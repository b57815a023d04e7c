import { about, share } from './fine-number-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { pieces } from './pieces-words.ts';
import { workTime } from './study-words.ts';

export const flawsWords = inLanguage('flawsWords', {
  pareto: 'What goes wrong most',
  paretoByPieces: 'What goes wrong most, by pieces',
  paretoByMinutes: 'What goes wrong most, by minutes lost',
  by: 'Counted by',
  byPieces: 'pieces',
  byMinutes: 'minutes',
  paretoMeans: {
    pieces:
      'The longest bar is the reason that most flawed pieces have. The running share tells how much of all flaws the reasons down to this one make up: the first two or three are usually most of it. A piece with two reasons counts under both.',
    minutes:
      'Minutes that had gone into pieces which were scrapped, and those that pieces which were sent back cost again, by the usual time of a piece. Seconds and mended pieces lose money, not minutes.',
  },
  noFlaws: 'No flaw has been tapped in what you look at.',
  noMinutes: 'No minutes are known to be lost in what you look at.',
  running: (upTo: number, isFirst: boolean) => `${about(upTo)} ${isFirst ? 'of all' : 'with those above'}`,
  flawed: (n: number) => pieces(n),
  lost: workTime,
  partly: (n: number) =>
    `The time of some stages is not known yet: ${pieces(n)} ${n === 1 ? 'costs' : 'cost'} more than stands here.`,
  all: (n: number, minutes: number) => `${pieces(n)} flawed in all, ${workTime(minutes)} lost.`,
  behind: (reason: string) => `${reason}: what became of it`,
  outcome: 'What became of it',
  pieces: 'Pieces',
  scrappedMinutes: 'Minutes in what was scrapped',
  againMinutes: 'Minutes to be worked again',
  heat: 'Where it goes wrong',
  heatLead: 'Flawed pieces of those that each stage has judged. Tap a field to see its trays.',
  heatPicture: 'Flawed pieces of those that each stage has judged, wood by wood.',
  heatMeans:
    'The fuller the bar and the darker the field, the larger the share of flawed pieces; a piece that comes again is judged again. Small numbers swing: one flaw in two pieces looks worse than it is.',
  corner: 'Stage',
  cellOf: (flawed: number, judged: number) => `${wholeNumber(flawed)} of ${wholeNumber(judged)}`,
  cell: (share_: number) => share(share_),
  cellName: (
    place: { wood: string; stage: string },
    { flawed, judged }: { flawed: number; judged: number },
  ) =>
    `${place.wood} at ${place.stage}: ${share(flawed / judged)}, ${wholeNumber(flawed)} of ${wholeNumber(judged)} flawed`,
  traysOf: (wood: string, stage: string) => `${wood} at ${stage}: trays with flaws`,
  trayDetail: (flawed: number, judged: number, when: string) =>
    `${wholeNumber(flawed)} of ${wholeNumber(judged)} · ${when}`,
  further: (n: number) =>
    n === 1 ? 'One more tray has flaws there.' : `${wholeNumber(n)} more trays have flaws there.`,
  noTrays: 'No piece of this wood was flawed at this stage.',
});
