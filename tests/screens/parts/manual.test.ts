// @vitest-environment happy-dom
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { imageSize } from 'image-size';
import { describe, expect, test } from 'vitest';
import { manualPictures, manualSize } from '../../../.ci/picture-shots.mjs';
import { chapterIn, chapters, manualHref, pictureSize } from '../../../src/screens/parts/manual/chapters.ts';
import { manualWords } from '../../../src/words/manual-words.ts';

const folder = join(import.meta.dirname, '../../../src/screens/parts/manual/pictures');
const names = chapters.map(({ name }) => name);
const files = readdirSync(folder);

test('every chapter that has words is in the manual, once and in their order', () => {
  expect(names).toEqual(Object.keys(manualWords.chapters));
});

test('a chapter is found by its address, and nothing else is one', () => {
  for (const name of names) expect(chapterIn(manualHref(name).split('/').slice(2))).toBe(name);
  expect(chapterIn(['manual'])).toBeUndefined();
  expect(chapterIn(['manual', 'no-chapter'])).toBeUndefined();
  expect(chapterIn(['woods', 'bench'])).toBeUndefined();
});

// How much one takes in at a stretch is common practice, no source.
test.each(chapters)('the chapter $name says what it has to say in two to five sentences', ({ name }) => {
  const sentences = manualWords.chapters[name].text.join(' ').match(/[^.?]+[.?](\s|$)/g) ?? [];
  expect(sentences.length).toBeGreaterThanOrEqual(2);
  expect(sentences.length).toBeLessThanOrEqual(5);
});

test('chapters about work that can hurt have a caution that says what rules', () => {
  const { chapters: all, caution } = manualWords;
  for (const name of ['variants', 'bench', 'curing'] as const)
    expect(all[name].caution).toMatch(/local codes rule|data sheet .*rules/);
  expect(caution).toContain('local codes, safety data sheets and licensed advice rule');
});

describe('the pictures', () => {
  test('are there for each chapter and no other, and there is a way to take each anew', () => {
    expect(files.toSorted()).toEqual(names.map((name) => `${name}.webp`).toSorted());
    for (const { name, picture } of chapters) expect(picture).toMatch(new RegExp(`/${name}[.]webp$`));
    expect(manualPictures.map(({ name }) => name)).toEqual(names);
  });

  test('are WebP of the size that the page keeps free for them', () => {
    expect(pictureSize).toEqual(manualSize);
    for (const file of files) {
      const { type, width, height } = imageSize(readFileSync(join(folder, file)));
      expect({ file, type, width, height }).toEqual({ file, type: 'webp', ...pictureSize });
    }
  });

  test('take 250 kB of a tablet at most, all together', () => {
    const bytes = files.reduce((sum, file) => sum + statSync(join(folder, file)).size, 0);
    expect(bytes).toBeLessThanOrEqual(250_000);
  });

  test('have a text each that tells what is seen', () => {
    const alts = names.map((name) => manualWords.chapters[name].picture);
    expect(new Set(alts).size).toBe(names.length);
    for (const alt of alts) expect(alt.length).toBeGreaterThan(40);
  });
});
