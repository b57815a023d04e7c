/** The languages that the app speaks, by BCP 47 tag. */
export const languageTags = ['en', 'de'] as const;

export type LanguageTag = (typeof languageTags)[number];

/** The pseudo-language of tests: written from right to left, by the tag of the Unicode CLDR (UTS 35, pseudo-locales). */
export const mirrored = 'ar-XB';

export type Tag = LanguageTag | typeof mirrored;

/** Where a tablet keeps its choice; a place of its own, since it is read before all else. */
export const languagePlace = 'tallywright language';

/** What of a browser this needs; a test, a bench or a script may have none of it. */
interface Surroundings {
  readonly document?: object;
  readonly localStorage?: { getItem(key: string): string | null };
  readonly navigator?: { readonly languages?: readonly string[] };
}

const bare = (tag: string): string => tag.split('-')[0] ?? tag;

const isSpoken = (tag: unknown): tag is Tag => [...languageTags, mirrored].some((each) => each === tag);

/** The language to start in: the one chosen on this tablet, else the first of the browser's that the app speaks. */
export function startingLanguage(kept: string | null, wanted: readonly string[]): Tag {
  return [kept, ...wanted.map(bare)].find(isSpoken) ?? 'en';
}

/** How a language writes numbers and days: as in the browser's country, where that speaks it. */
export function localeOf(language: Tag, wanted: readonly string[]): string {
  const ofCountry = wanted.find((tag) => tag !== language && bare(tag) === language);
  return ofCountry ?? (language === 'de' ? 'de-DE' : 'en-GB');
}

const { document, navigator } = globalThis as Surroundings;
const wanted = (document && navigator?.languages) ?? [];

function kept(): string | null {
  try {
    return (document && (globalThis as Surroundings).localStorage?.getItem(languagePlace)) ?? null;
  } catch {
    return null;
  }
}

/** The language of this window, until it is loaded again. */
export const language = startingLanguage(kept(), wanted);

/** How this window writes numbers, days and money; BCP 47. */
export const locale = localeOf(language, wanted);
