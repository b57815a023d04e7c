import { fixedNumber, roundNumber } from './fine-number-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { pieces } from './pieces-words.ts';
import { duration } from './time-words.ts';

const grams = (n: number) => `${fixedNumber(n, 1)} g`;
const ml = (n: number) => `${fixedNumber(n, 1)} ml`;

/** The words of the page that says how much is mixed for a round. */
export const mixWords = inLanguage('mixWords', {
  title: (stage: string) => `Mix for ${stage}`,
  back: 'Back',
  nothing: 'Nothing to mix here',
  nothingDetail: 'Say at the stage in Set-up what is mixed, and how much a piece takes.',
  toSetUp: 'Open Set-up',
  pieces: 'Pieces of this round',
  oneFewer: '−1',
  oneFewerName: 'One piece fewer',
  oneMore: '+1',
  oneMoreName: 'One piece more',
  badPieces: 'Whole pieces, 1 to 9999.',
  free: (n: number) => `${wholeNumber(n)} places are free.`,
  secondsEach: 'Seconds to spread one piece',
  badSeconds: 'Whole seconds, 1 to 86400.',
  learnt: 'Ask my taps',
  learning: 'Being looked up …',
  notLearnt: 'Nothing is learnt yet of loading here, nor of the stage before.',
  rounds: (waiting: number, rounds: number, last: number) =>
    rounds === 1
      ? `${pieces(waiting)} wait: one round.`
      : `${pieces(waiting)} wait: ${rounds} rounds, the last of ${wholeNumber(last)}.`,
  oneMix: (n: number) => `One mix for ${pieces(n)}`,
  mixes: ({ first, mixes, pieces: n }: { first: number; mixes: number; pieces: number }) =>
    mixes === 1 ? `Mix ${first}: ${pieces(n)}` : `Mixes ${first} to ${first + mixes - 1}: ${pieces(n)} each`,
  mixed: (n: number) => `${grams(n)} in all`,
  resin: 'Resin',
  hardener: 'Hardener',
  grams,
  ml,
  notWeighed:
    'The ratio is by volume and no densities are known: it cannot be weighed. Measure it, or write the densities down in Set-up.',
  parts: (resin: number, hardener: number) =>
    `${roundNumber(resin)} : ${roundNumber(hardener)} parts by volume`,
  tooLittle: 'Too little for a scale that shows tenths of a gram',
  tooLittleDetail: 'One step of it is more than 5 % of the lesser part. Use a finer scale, or mix more.',
  tooSlow: 'One piece takes longer than the pot life. Take a slower adhesive, or spread faster.',
  sayTime: 'Say how long a piece takes, and the number of mixes stands here.',
  pot: 'Pot life',
  potOf: (minutes: number) => `${duration(minutes * 60_000)} from the mixing on`,
  begin: 'Mixed now',
  again: 'Mixed anew',
  clear: 'Done with it',
  left: 'left',
  over: 'over',
  potOver: (stage: string) => `Pot life is over: ${stage}. Spread no more of this mix.`,
  putAway: 'Put away',
  toMix: 'Go there',
  coat: (n: number) => `A coat for ${pieces(n)}`,
  coatIs: 'with what stays in cup and brush',
  recoat: 'Next coat',
  recoatFrom: (time: string) => `from ${time}`,
  recoatUntil: (time: string) => `until ${time}`,
  recoatAny: 'The data sheet says when: write it down in Set-up.',
  recoatNow: 'if this coat goes on now',
  cautions: 'Gloves on, air the room',
  glueCaution:
    'Resin and hardener on the skin can make you allergic. A full cup heats up by itself. The data sheet rules over these figures.',
  finishCaution:
    'Vapours and skin contact: the safety data sheet rules. Rags with oil finishes can catch fire by themselves: lay them flat or under water.',
  reckoned:
    'Weigh, do not trust the eye. Ratio, pot life and times are those of Set-up: check them against the tin.',
});

/** Minutes and seconds left: "29:59". */
export function countDown(ms: number): string {
  const seconds = Math.max(0, Math.ceil(ms / 1000));
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}
