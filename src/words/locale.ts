/** The languages that the app speaks, each by its own name; by BCP 47 tag. */
export const languages = { en: 'English', de: 'Deutsch' } as const;

export type LanguageTag = keyof typeof languages;

/** In the order in which they are offered. */
export const languageTags: readonly LanguageTag[] = ['en', 'de'];

/** The pseudo-language of tests: written from right to left, by the tag of the Unicode CLDR (UTS 35, pseudo-locales). */
export const mirrored = 'ar-XB';

export type Tag = LanguageTag | typeof mirrored;

/** The way to write numbers, days and money where the browser names no country for the language. */
const usual: Readonly<Record<LanguageTag, string>> = { en: 'en-GB', de: 'de-DE' };

/** Where the choice of this tablet is kept; a place of its own, since it is read before all else. */
const place = 'tallywright language';

/** What of a browser this needs; a test, a bench or a script may have none of it. */
interface Surroundings {
  readonly document?: object;
  readonly localStorage?: { getItem(key: string): string | null; setItem(key: string, value: string): void };
  readonly navigator?: { readonly languages?: readonly string[] };
}

/** The language to start in: the one chosen on this tablet, else the first of the browser's that the app speaks. */
export function startingLanguage({
  kept,
  wanted,
}: {
  readonly kept: string | null;
  readonly wanted: readonly string[];
}): Tag {
  if (kept === mirrored) return mirrored;
  return [kept ?? '', ...wanted].map(bare).find(isSpoken) ?? 'en';
}

/** The locale in which a language writes its numbers and days: with the browser's country, if that speaks it. */
export function localeOf(language: Tag, wanted: readonly string[]): string {
  if (language === mirrored) return usual.en;
  return wanted.find((tag) => tag !== language && bare(tag) === language && isKnown(tag)) ?? usual[language];
}

const bare = (tag: string): string => tag.split('-')[0] ?? tag;

const isSpoken = (tag: string): tag is LanguageTag => Object.hasOwn(languages, tag);

function isKnown(tag: string): boolean {
  try {
    return Intl.NumberFormat.supportedLocalesOf(tag).length > 0;
  } catch {
    return false;
  }
}

function lookAround(): { readonly kept: string | null; readonly wanted: readonly string[] } {
  const { document, navigator } = globalThis as Surroundings;
  if (!document) return { kept: null, wanted: [] };
  const wanted = navigator?.languages ?? [];
  try {
    return { kept: (globalThis as Surroundings).localStorage?.getItem(place) ?? null, wanted };
  } catch {
    return { kept: null, wanted };
  }
}

const around = lookAround();

/** The language of this window, until it is loaded again. */
export const language = startingLanguage(around);

/** How this window writes numbers, days and money. */
export const locale = localeOf(language, around.wanted);

/** For the page itself (HTML, the attributes lang and dir): voices, line breaks and which side is the first. */
export const pageLanguage = language === mirrored ? mirrored : locale;
export const direction = language === mirrored ? 'rtl' : 'ltr';

/** Keeps the choice of this tablet; a window shows it from its next start on. Storage that refuses makes it last no longer. */
export function chooseLanguage(chosen: LanguageTag): void {
  try {
    (globalThis as Surroundings).localStorage?.setItem(place, chosen);
  } catch {
    // A private window may refuse to keep anything.
  }
}
