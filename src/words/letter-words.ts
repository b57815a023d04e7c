import { inLanguage } from './language.ts';

interface Changed {
  readonly from: string;
  readonly to: string;
  readonly owner: string;
}

/** The words of a tablet that gives way in its letter. */
export const letterWords = inLanguage('letterWords', {
  changed: ({ to }: Changed) => `The codes of new trays begin with ${to} here from now on.`,
  why: ({ from, owner }: Changed) =>
    `Two tablets of the shop had the letter ${from}; ${owner} had it first. Trays that have their codes keep them.`,
  putAway: 'Put away',
});
