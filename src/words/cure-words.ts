import { inLanguage } from './language.ts';
import { pieces as piecesWords } from './pieces-words.ts';

/** What is said when a cure is over. */
export const cureWords = inLanguage('cureWords', {
  over: ({ code, pieces, stage }: { code: string; pieces: number; stage: string }) =>
    `Cured: ${piecesWords(pieces)} of tray ${code} at ${stage}.`,
  /** At the edge of a stage screen, as short as can be. */
  sign: (codes: readonly string[]) => `Cured: ${codes.join(', ')}`,
  goThere: 'Go there',
  putAway: 'Put away',
});
