import type { LineProblem } from '../domain/plan/targets/judge-targets.ts';
import { inLanguage } from './language.ts';
import { numberProblemWords } from './problem-words.ts';

const columns = {
  batch: 'batch',
  variant: 'variant',
  good: 'good ones',
  due: 'due',
  chance: 'chance',
} as const;

export const targetProblemSentences = inLanguage('targetProblemSentences', {
  of: (problem: LineProblem): string => {
    switch (problem.kind) {
      case 'broken':
        return problem.how === 'quote'
          ? 'A quote is opened and not closed.'
          : 'It has more cells than there are headings: put a text with a comma in quotes.';
      case 'no-name':
        return `No ${columns[problem.column]} is named.`;
      case 'unknown':
        return `No ${columns[problem.column]} is called “${problem.name}”.`;
      case 'put-away':
        return `The ${columns[problem.column]} “${problem.name}” is put away.`;
      case 'two-of-name':
        return `Two are called “${problem.name}”: give one another name first.`;
      case 'said-before':
        return problem.column === 'good'
          ? `Line ${problem.line} says it of the same variant already.`
          : `Line ${problem.line} says another ${columns[problem.column]} for this batch.`;
      case 'number':
        return `${problem.column === 'good' ? 'Good ones' : 'Chance'}: ${numberProblemWords(problem.problem)}`;
      case 'separated':
        return `“${problem.text}” can be read in two ways. Write a whole number without points, commas or blanks.`;
      case 'no-day':
        return `“${problem.text}” is no day of the calendar. Write it as 2027-04-30.`;
      case 'which-day':
        return `“${problem.text}” can be two days. Write it as 2027-04-30.`;
    }
  },
});

/** Why a line of a table of targets is not understood. */
export const targetProblemWords = (problem: LineProblem): string => targetProblemSentences.of(problem);
