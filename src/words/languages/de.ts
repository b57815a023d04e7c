import type { LanguageTools, Translate } from '../language.ts';
import type { Language } from './texts.ts';

const german = (_tools: LanguageTools): Partial<Language> => ({});

/** German. */
export const inGerman = (tools: LanguageTools): Translate => {
  const texts: Readonly<Record<string, unknown>> = { ...german(tools) };
  return (name, english) => texts[name] ?? english;
};
