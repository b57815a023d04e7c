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

let translate: Translate | undefined;

/** English texts that were made before the language was there. */
const early: (readonly [name: string, texts: unknown])[] = [];

/**
 * The texts of `name` in the language of this tablet. `english` are those of English, and the pattern of all others: the type
 * `Language` holds them to be complete. Those of the first screen are objects: they are worded anew in place, which a lone text or
 * function cannot be.
 */
export function inLanguage<const T>(name: string, english: T): InWords<T> {
  if (translate) return translate(name, english) as InWords<T>;
  early.push([name, english]);
  return english as InWords<T>;
}

/** Words all texts anew, those that are there and those to come; before anything is drawn. */
export function sayIn(other: Translate): void {
  translate = other;
  for (const [name, texts] of early) Object.assign(texts as object, other(name, texts));
}
