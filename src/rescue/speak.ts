import { english, german, germanPage, type RescueWords } from './rescue-words.ts';

/** Where the app keeps the language of the tablet. */
const place = 'tallywright language';

/** The language that the app would start in, and so this page. Storage may be refused, even to look at. */
function isGermanWanted(): boolean {
  const spoken = (tag: string) => /^(en|de)\b/.exec(tag)?.[1];
  let kept: string | null = null;
  try {
    kept = localStorage.getItem(place);
  } catch {
    // Then the browser's own languages say it.
  }
  return [kept ?? '', ...navigator.languages].map(spoken).find((tag) => tag !== undefined) === 'de';
}

/** Puts the page into the language of the tablet, and gives the words for what its script says. */
export function speak(page: Document): RescueWords {
  if (!isGermanWanted()) return english;
  page.documentElement.lang = 'de';
  for (const element of page.querySelectorAll<HTMLElement>('[data-say]'))
    element.textContent = germanPage[element.dataset.say ?? ''] ?? element.textContent;
  return german;
}
