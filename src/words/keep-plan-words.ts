import { dayWords } from './date-words.ts';
import { money } from './fine-number-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { pieces } from './pieces-words.ts';
import { workTime } from './study-words.ts';

interface PlanSaid {
  readonly started: number;
  readonly firsts: number;
  readonly seconds: number;
  /** Minutes. */
  readonly minutes: number;
  /** Minor units. */
  readonly cost: number | null;
  readonly done: string | null;
}

/** Words of a forecast that is kept as a plan. */
export const keepPlanWords = inLanguage('keepPlanWords', {
  title: 'The plan of this batch',
  lead: 'Keep what is expected now, and Review holds it against what came of it.',
  means:
    'All pieces of the batch are in it, with what is finished or scrapped already. Firsts, seconds, hours and money are those on average, the day is the one that is fairly sure (85 %). Hours are those of work on the pieces, without what goes into none. Keep it when the batch begins; kept anew, the new plan takes the place of the one before.',
  sentence: ({ started, firsts, seconds, minutes, cost, done }: PlanSaid) =>
    [
      `${pieces(started)} made up, ${wholeNumber(firsts)} firsts and ${wholeNumber(seconds)} seconds`,
      `${workTime(minutes)} of work`,
      cost === null ? 'cost not known' : `${money(cost)} of cost`,
      done === null ? 'no day within two years' : `done by ${dayWords(done)}`,
    ].join(' · '),
  kept: (day: string, sentence: string) => `Kept on ${dayWords(day)}: ${sentence}.`,
  keep: 'Keep as the plan',
  keepInstead: 'Keep this instead',
});
