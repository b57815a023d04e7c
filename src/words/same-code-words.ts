import { inLanguage } from './language.ts';
import { pieces } from './pieces-words.ts';

/** The words of trays that carry one code. */
export const sameCodeWords = inLanguage('sameCodeWords', {
  title: (trays: number, code: string) => `${trays} trays carry ${code}`,
  which: 'Two tablets had one letter before they knew of each other. Which tray is it?',
  pieces: (n: number, where: string) => (where ? `${pieces(n)} at ${where}` : 'nothing in work'),
  made: (age: string) => `made ${age}`,
  recode: 'New code',
  recodeDetail: (variant: string) => `for the younger: ${variant}`,
  recoded: (code: string) =>
    `What was in work on the younger ${code} has a code of its own now. Chalk it on:`,
  newCode: (code: string) => `Code ${code}`,
  close: 'Close',
  shared: (codes: readonly string[]) =>
    codes.length === 1 ? `Two trays carry ${codes[0]}.` : `Codes that two trays carry: ${codes.join(', ')}.`,
  sharedHelp: 'Open one by its code to tell them apart, or to give the younger a new one.',
  choose: 'Tell them apart',
});
