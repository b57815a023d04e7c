import { type LanguageTag, languagePlace } from '../words/locale.ts';

/** Keeps the language of this tablet and begins the window anew in it: words are said as they were at the start. */
export function chooseLanguage(chosen: LanguageTag): void {
  try {
    localStorage.setItem(languagePlace, chosen);
    location.reload();
  } catch {
    // A private window may refuse to keep anything: it stays as it was.
  }
}
