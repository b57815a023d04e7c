import type { CheapestStart } from '../domain/plan/starts/cheapest-start.ts';
import type { StartsPoint } from '../domain/plan/starts/good-by-starts.ts';
import { money, roundNumber, share } from './fine-number-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { goodOnes, pieces } from './pieces-words.ts';

/** A chance: never said to be certain, and never none, where it is neither. */
const chanceWords = (chance: number): string => {
  if (chance > 0.995 && chance < 1) return 'over 99 %';
  if (chance < 0.005 && chance > 0) return 'under 1 %';
  return `${wholeNumber(100 * chance)} %`;
};

/** Words of how many to start. */
export const startsWords = inLanguage('startsWords', {
  batch: 'Batch',
  goal: 'What counts as a good one',
  goals: { firsts: 'firsts alone', finished: 'firsts and seconds' },
  goalSaid: {
    firsts: 'Seconds do not count as good ones here.',
    finished: 'Seconds count as good ones here.',
  },
  chance: chanceWords,

  table: (batch: string) => `What to start for ${batch}`,
  tableLead: (chance: number) =>
    `So that the chance of enough good ones is ${wholeNumber(chance)} %. A tap on a variant tells more.`,
  means:
    'The chance at each stage is learnt from this wood and from the others, with how sure that is. From it follows how many of the pieces in work and of new ones come out good, and the smallest number of new ones for which enough do in the wanted share of cases.',
  variant: 'Variant',
  wanted: 'Wanted',
  good: 'Good so far',
  flying: 'In work',
  start: 'Start now',
  without: 'Chance without',
  counting: 'being reckoned …',
  startNow: (n: number) => wholeNumber(n),
  done: 'done',
  enough: 'none',
  outOfReach: 'out of reach',
  noWood: 'its wood is not known',
  noRoute: 'the batch has no route',
  noneWanted: 'none wanted',
  tooMany: (most: number) => `not reckoned beyond ${wholeNumber(most)}`,

  first: (n: number, { wanted, chance }: Said) =>
    `Start ${pieces(n)}: then at least ${goodOnes(wanted)} come${wanted === 1 ? 's' : ''} out with a chance of ${chance}.`,
  more: (n: number, { wanted, chance }: Said) =>
    `Start ${wholeNumber(n)} more now: then, with what is in work, at least ${goodOnes(wanted)} come${wanted === 1 ? 's' : ''} out with a chance of ${chance}.`,
  none: ({ wanted, chance }: Said) =>
    `Start none: what is in work gives at least ${goodOnes(wanted)} with a chance of ${chance}.`,
  isDone: (wanted: number) =>
    `${wanted === 1 ? 'The one good one is' : `All ${goodOnes(wanted)} are`} finished: nothing is to be started.`,
  beyond: (most: number, chance: string, wanted: number) =>
    `Not even ${wholeNumber(most)} new pieces make ${goodOnes(wanted)} sure enough: the chance is then ${chance}. Too little is known of the chance to pass, or it is too low. Start some, and ask again when they were judged.`,
  never: 'No number of pieces makes certain.',
  average: ({ good, over, short }: StartsPoint) =>
    `On average ${roundNumber(good)} good ones come out: ${roundNumber(over)} left over, ${roundNumber(short)} short.`,
  inFlight: (chance: string) => `With nothing more started the chance is ${chance}.`,
  guess: 'A guess: no piece has been judged yet',
  guessHelp:
    'Without a history the whole route is taken for a toss-up: half of the pieces come out, and it could be nearly any other share. So the number is large. It falls as soon as pieces are tapped off; until then start a few to learn from.',
  partGuess: (stages: string) =>
    `Nothing has been judged yet at ${stages}: that part is a guess, which makes the number larger.`,
  past: 'The due day is past',
  pastHelp: 'The numbers below are what it takes all the same; say another due day under Targets.',

  chanceChart: (wanted: number) => `Chance of at least ${goodOnes(wanted)}`,
  overChart: 'Good ones left over and short, on average',
  starts: 'Started now',
  chanceAxis: 'Chance',
  over: 'left over',
  short: 'short',
  piecesAxis: 'Pieces',
  share: (value: number) => share(Math.round(1000 * value) / 1000),
  pieces: roundNumber,
  startsShown: (n: number) => wholeNumber(n),
  markWanted: (chance: number) => `${wholeNumber(chance)} %`,
  markCheapest: 'cheapest',

  costs: 'What is cheapest',
  costsLead: 'Where one knows what a piece too few and a piece too many costs, the sums name the number.',
  perStart: 'To start one costs',
  perStartHint: 'Its wood, parts and work. Empty counts as nothing.',
  perShort: 'One short costs',
  perShortHint: 'The sale that is lost, a customer let down.',
  perOver: 'One left over costs',
  perOverHint: 'Beside what its start cost: to store it, to sell it off.',
  badCost: 'A cost is a number such as 24 or 24.50.',
  forget: 'Empty the costs',
  noCosts: 'Say what one short and one left over costs.',
  cheapest: (answer: CheapestStart): string => {
    switch (answer.kind) {
      case 'the-more-the-better':
        return 'Neither to start one nor to have one left over costs anything: the more, the better.';
      case 'best-so-far':
        return `Cheapest as far as was looked: ${cheapestIs(answer)}`;
      case 'starts':
        return `Cheapest: ${cheapestIs(answer)}`;
    }
  },

  behind: 'What this rests on',
  flightTable: 'In work, by the stage that judges it next',
  nothingFlies: 'Nothing of it is in work.',
  stage: 'Stage',
  firsts: 'Firsts',
  seconds: 'Seconds',
  back: 'Of these sent back',
  count: 'Counted',
  flightMeans: 'What was sent back stands at the stage that sent it: that one has not done with it.',
  beliefTable: 'Chance to come through each stage as a good one',
  judged: 'Counted',
  pooled: 'Taken as',
  from: 'Learnt from',
  of: (k: number, n: number) => (n === 0 ? '–' : `${wholeNumber(k)} of ${wholeNumber(n)}`),
  sources: { own: 'this wood and the others', 'other-woods': 'other woods alone', prior: 'nothing yet' },
  beliefMeans:
    'Counted is what was seen of this wood. Taken as leans on the other woods where that is little. Each piece counts once at a stage, whatever was mended or sent back.',
});

interface Said {
  readonly wanted: number;
  readonly chance: string;
}

function cheapestIs({ point, cost }: Exclude<CheapestStart, { kind: 'the-more-the-better' }>): string {
  return `start ${wholeNumber(point.starts)}. The chance is then ${chanceWords(point.chance)}, and all costs together come to ${money(cost)} on average.`;
}
