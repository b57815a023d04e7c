import { sayIn, type Translate } from './language.ts';
import { type LanguageTag, mirrored, type Tag } from './locale.ts';

/** Each is a part of its own, loaded at the start of a tablet that speaks it. */
const others: Readonly<Record<Tag, () => Promise<Translate>>> = {
  en: async () => (_name, english) => english,
  de: async () => (await import('./languages/de.ts')).inGerman,
  [mirrored]: async () => (await import('./languages/mirrored.ts')).inMirrored,
};

/** What of a page this changes (HTML, the attributes lang and dir): voices, line breaks, and which side is the first. */
type Page = { lang: string; dir: string };

/** Speaks another language from now on. Rejects when its texts cannot be loaded: the app speaks English then. */
export async function speak(language: Tag, page: Page): Promise<void> {
  sayIn(await others[language]());
  page.lang = language;
  page.dir = language === mirrored ? 'rtl' : 'ltr';
}

/** The languages by their own names, for whoever looks for his. */
export const languageNames: Readonly<Record<LanguageTag, string>> = { en: 'English', de: 'Deutsch' };
