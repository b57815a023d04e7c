import { dayWords } from './date-words.ts';
import { inLanguage } from './language.ts';

/** A title as part of a file's name: letters and digits of any script, the rest as hyphens. */
const inFileName = (title: string): string =>
  title
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .slice(0, 60)
    .replace(/^-+|-+$/g, '');

/** The name of a picture's file: what it shows, and the shop day. */
export function pictureFileName(title: string, { day, kind }: { day: string; kind: string }): string {
  return `tallywright-${inFileName(title) || 'picture'}-${day}.${kind}`;
}

export const pictureWords = inLanguage('pictureWords', {
  save: 'Save picture',
  kinds: {
    svg: { label: 'SVG', detail: 'Sharp at any size: for print' },
    png: { label: 'PNG', detail: 'For a message or a page' },
  },
  foot: (shop: string, day: string) => (shop ? `${shop}, ${dayWords(day)}` : dayWords(day)),
  failed: 'This browser could not draw the picture. The table has the same numbers.',
});
