import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';

export const pieceCountWords = inLanguage('pieceCountWords', {
  pieces: (n: number) => (n === 1 ? '1 piece' : `${wholeNumber(n)} pieces`),
  goodOnes: (n: number) => (n === 1 ? '1 good one' : `${wholeNumber(n)} good ones`),
});

/** "1 piece", "7 pieces". */
export const pieces = pieceCountWords.pieces;

/** "1 good one", "7 good ones". */
export const goodOnes = pieceCountWords.goodOnes;
