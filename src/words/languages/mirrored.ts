import type { Translate } from '../language.ts';

const rightToLeftMark = '\u200f';
const rightToLeftOverride = '\u202e';
const popFormatting = '\u202c';

/** Runs of letters that do not stand in such marks already. */
const runs = new RegExp(`${rightToLeftOverride}[^${popFormatting}]*${popFormatting}|\\p{L}+`, 'gu');

/**
 * A text as the pseudo-locale ar-XB has it (Unicode CLDR, UTS 35, "pseudo-locales"): each run of letters in marks that turn it
 * round, so that it can be seen which texts a language would reach, and how the pages stand from right to left.
 */
function mirroredText(text: string): string {
  return text.replace(runs, (run) =>
    run.startsWith(rightToLeftOverride)
      ? run
      : `${rightToLeftMark}${rightToLeftOverride}${run}${popFormatting}${rightToLeftMark}`,
  );
}

function mirroredOf(texts: unknown): unknown {
  if (typeof texts === 'string') return mirroredText(texts);
  if (typeof texts === 'function')
    return (...given: unknown[]) => mirroredOf(Reflect.apply(texts, undefined, given));
  if (Array.isArray(texts)) return texts.map(mirroredOf);
  if (typeof texts !== 'object' || texts === null) return texts;
  return Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, mirroredOf(text)]));
}

export const inMirrored: Translate = (_name, english) => mirroredOf(english);
