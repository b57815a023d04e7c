import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { germanPage } from '../../src/rescue/rescue-words.ts';

test('every text of the rescue page stands in German, too', () => {
  const page = readFileSync('public/rescue.html', 'utf8');
  const said = [...page.matchAll(/data-say="(\w+)"/g)].map(([, name]) => name);
  expect(said.toSorted()).toEqual(Object.keys(germanPage).toSorted());
  // What has no name stands there for a moment only, or where no script runs.
  const unnamed = page
    .replace(/<(title|noscript)>.*?<\/\1>/gs, '')
    .replace(/<p id="state".*?<\/p>/s, '')
    .replace(/<(\w+)[^>]* data-say="\w+".*?<\/\1>/gs, '')
    .replace(/<[^>]*>/g, '');
  expect(unnamed.trim()).toBe('');
});
