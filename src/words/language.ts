import * as dates from './date-words.ts';
import { durationIn } from './duration.ts';
import { language, mirrored, type Tag } from './locale.ts';
import { nameOf } from './names.ts';
import * as numbers from './number-words.ts';

/** What the texts of a language are made with. A language imports nothing: all else waits for it to be there. */
const tools = { ...numbers, ...dates, durationIn, nameOf };

export type LanguageTools = typeof tools;

/** Texts as a language may word them: any string where English has a certain one. */
export type InWords<T> = T extends string
  ? string
  : T extends (...given: infer Given) => string
    ? (...given: Given) => string
    : T extends (...given: never) => unknown
      ? T
      : T extends object
        ? { readonly [Key in keyof T]: InWords<T[Key]> }
        : T;

/** Gives the texts of a name in another language, or takes the English ones. */
export type Translate = <T>(name: string, english: T) => unknown;

/** Each is a part of its own, loaded at the start of a tablet that speaks it. */
const others: Readonly<Record<Exclude<Tag, 'en'>, () => Promise<(tools: LanguageTools) => Translate>>> = {
  de: async () => (await import('./languages/de.ts')).inGerman,
  [mirrored]: async () => (await import('./languages/mirrored.ts')).inMirrored,
};

/** A language that cannot be loaded is no reason for a tablet to stand still: it speaks English until its next start. */
async function translateInto(tag: keyof typeof others): Promise<Translate | undefined> {
  try {
    return (await others[tag]())(tools);
  } catch {
    return undefined;
  }
}

const translate = language === 'en' ? undefined : await translateInto(language);

/**
 * The texts of `name` in the language of this tablet; `english` are those of English, and the pattern of all others, which
 * the type `Language` holds to be complete.
 */
export function inLanguage<const T>(name: string, english: T): InWords<T> {
  return (translate ? translate(name, english) : english) as InWords<T>;
}
