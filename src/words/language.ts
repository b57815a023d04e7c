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

/** Gives the texts of a name in another language than English. */
export type Translate = (name: string, english: unknown) => unknown;

/** Lone texts and functions stand in an object, too: that is what is worded anew. */
type Texts = Readonly<Record<string, unknown>> | readonly unknown[];

let translate: Translate | undefined;

/** English texts that were made before the language was there. */
const early: (readonly [name: string, texts: Texts])[] = [];

/**
 * The texts of `name` in the language of this tablet. `english` are those of English, and the pattern of all others: the type
 * `Language` holds them to be complete. Those that were made before the language was there are worded anew in place.
 */
export function inLanguage<const T extends Texts>(name: string, english: T): InWords<T> {
  if (translate) return translate(name, english) as InWords<T>;
  early.push([name, english]);
  return english as InWords<T>;
}

/** Words all texts anew, those that are there and those to come; before anything is drawn. */
export function sayIn(other: Translate): void {
  translate = other;
  for (const [name, texts] of early) Object.assign(texts, other(name, texts));
}
