import { about, share } from './fine-number-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { pieces } from './pieces-words.ts';
import { between } from './study-words.ts';

/** Why an estimate that leans on the other groups differs from the one that does not. */
export type Leaning = 'only-one' | 'a-guess' | 'not-through' | 'speaks-for-itself' | 'lifted' | 'lowered';

interface Estimate {
  readonly name: string;
  /** As many pieces of the whole route would tell as much as what was seen of the group alone. */
  readonly worth: number;
}

const asMany = (worth: number) => pieces(Math.max(1, Math.round(worth)));

export const chancesWords = inLanguage('chancesWords', {
  by: 'Told apart by',
  bySpecies: 'wood',
  byVariant: 'variant',
  others: { species: 'the other woods', variants: 'the other variants' },
  finished: 'Finished',
  firsts: 'As firsts',
  likely: (mean: number, interval: readonly [number, number]) =>
    `${about(mean)}, likely ${between(interval)}`,
  finishedMeans: (name: string, mean: number) =>
    `Of 100 pieces of ${name} that you start now, about ${wholeNumber(100 * mean)} come to the end of the route, as firsts or seconds. The bracket under the bar is where the true figure lies nine times out of ten.`,
  firstsMeans: (name: string, mean: number) =>
    `Of 100 pieces of ${name} that you start now, about ${wholeNumber(100 * mean)} come out as firsts. The bracket under the bar is where the true figure lies nine times out of ten.`,
  alone: 'Counted by itself',
  aloneIs: (raw: number, interval: readonly [number, number] | undefined) =>
    interval ? `${about(raw)}, likely ${between(interval)}` : about(raw),
  soFar: (stage: string, survival: number) => `${about(survival)} so far, up to ${stage}`,
  why: (leaning: Leaning, { name, worth, others }: Estimate & { readonly others: string }): string => {
    switch (leaning) {
      case 'only-one':
        return `There is nothing else to learn from yet: this rests on ${name} alone.`;
      case 'a-guess':
        return `Not every stage has judged a piece of ${name} yet, and there is nothing else to learn from: this is little more than a guess.`;
      case 'not-through':
        return `Not every stage has judged a piece of ${name} yet: what is missing is taken from ${others}.`;
      case 'speaks-for-itself':
        return `${name} has enough pieces to speak for itself: ${others} change nothing to speak of.`;
      case 'lifted':
        return `What was seen of ${name} weighs no more than ${asMany(worth)}: some of its losses may be bad luck, and as ${others} do better it is put nearer to them.`;
      case 'lowered':
        return `What was seen of ${name} weighs no more than ${asMany(worth)}: some of it may be good luck, and as ${others} do worse it is put nearer to them.`;
    }
  },
  route: (name: string) => `${name} along the route`,
  pictureTitle: 'What comes out, with how sure that is',
  pictureLead:
    'Of the pieces that are started now, the share that comes to the end of the route, and that does so as a first. The bracket under each bar is where the true figure lies nine times out of ten.',
  rolled: 'Through without any flaw',
  rolledIs: (value: number | undefined) => share(value ?? null),
  rolledMeans:
    'The chance of a piece to pass at the first go every stage that has judged one so far: the shares below multiplied. The worst stage stands first: mend that one first.',
  stage: 'Stage',
  passed: 'Good at the first go',
  lost: 'Scrapped',
  lowered: 'Lowered or scrapped',
  again: 'Came again',
  of: (k: number, n: number) => `${wholeNumber(k)} of ${wholeNumber(n)}`,
  stagesMeans:
    '“Scrapped” counts each piece once, when the stage has done with it; a piece that was sent back and comes through is not lost. “Lowered or scrapped” counts those that came as firsts and left as less.',
});
