/**
 * Every text is said through `inLanguage` and stands in German, too. (In a folder whose files share no modules: a language,
 * once it is spoken, is spoken for good.)
 */
import { beforeAll, describe, expect, test } from 'vitest';
import species from '../../shared/species.json';
import starting from '../../shared/starting-shop.json';
import type { namesOfData } from '../../src/words/data-words.ts';
import { inLanguage, sayIn } from '../../src/words/language.ts';
import { inGerman } from '../../src/words/languages/de.ts';
import { inMirrored } from '../../src/words/languages/mirrored.ts';
import { shellWords } from '../../src/words/shell-words.ts';

/** Texts that are the same word in both languages, signs, units, names of formats and of authorities. */
const sameInBoth = new Set(
  'Code|Link|Name|Pause|Person|Plan|Station|Tablet|Tallywright|Version|PNG|SVG|US Letter|listing.csv|g/ml|mg/m³|min|ml|mm'.split(
    '|',
  ),
);

const english = new Map<string, unknown>();
beforeAll(async () => {
  const modules = import.meta.glob('../../src/words/*.ts');
  await Promise.all(Object.values(modules).map((load) => load()));
  sayIn((name, texts) => {
    english.set(name, texts);
    return texts;
  });
});

/** The strings among texts, each with its way to it. */
function* stringsOf(texts: unknown, way: string): Generator<readonly [way: string, text: string]> {
  if (typeof texts === 'string') yield [way, texts];
  if (typeof texts !== 'object' || texts === null) return;
  for (const [name, inner] of Object.entries(texts)) yield* stringsOf(inner, `${way}.${name}`);
}

const shapeOf = (texts: unknown): unknown =>
  typeof texts === 'object' && texts !== null
    ? Object.fromEntries(Object.entries(texts).map(([name, inner]) => [name, shapeOf(inner)]))
    : typeof texts;

describe('German', () => {
  test('has every text that is said', () => {
    expect(english.size).toBeGreaterThan(100);
    const missing = [...english.keys()].filter((name) => inGerman(name, undefined) === undefined);
    expect(missing).toEqual([]);
  });

  test('has each as the same kind of thing, a text for a text and a sentence with gaps for one', () => {
    for (const [name, texts] of english)
      expect([name, shapeOf(inGerman(name, texts))]).toEqual([name, shapeOf(texts)]);
  });

  test('has no text left in English', () => {
    const same = [...english].flatMap(([name, texts]) => {
      const german = new Map(stringsOf(inGerman(name, texts), name));
      return [...stringsOf(texts, name)].filter(([way, text]) => german.get(way) === text);
    });
    expect(same.filter(([, text]) => /\p{L}{2}/u.test(text) && !sameInBoth.has(text))).toEqual([]);
  });

  test('names all that a new shop begins with, its cautions among it', () => {
    const say = (inGerman('namesOfData', undefined) as typeof namesOfData).starting;
    const texts = starting.facts.flatMap(({ value }) => [value.name, value.caution ?? '']).filter(Boolean);
    expect(texts.filter((text) => say(text) === text)).toEqual([]);
  });

  test('names every wood of the reference data', () => {
    const say = (inGerman('namesOfData', undefined) as typeof namesOfData).wood;
    expect(species.filter(({ id }) => say(id, '') === '').map(({ id }) => id)).toEqual([]);
  });
});

describe('the mirrored pseudo-language', () => {
  const [mark, turn, end] = ['\u200f', '\u202e', '\u202c'];

  test('turns each run of letters round, as ar-XB does (UTS 35), and leaves the rest', () => {
    expect(inMirrored('', '7 pieces, A4')).toBe(
      `7 ${mark}${turn}pieces${end}${mark}, ${mark}${turn}A${end}${mark}4`,
    );
  });

  test('turns nothing round twice, and reaches into lists, groups and sentences', () => {
    const once = inMirrored('', 'ready');
    expect(inMirrored('', once)).toBe(once);
    const texts = inMirrored('', { a: ['ready'], say: (n: number) => `${n} h` }) as {
      a: string[];
      say: (n: number) => string;
    };
    expect(texts.a).toEqual([once]);
    expect(texts.say(3)).toBe(`3 ${mark}${turn}h${end}${mark}`);
  });
});

test('texts that were made before the language was there are worded anew in place, and later ones as they are made', () => {
  // Whatever is made before any language is spoken: those of the first screen.
  sayIn(inMirrored);
  expect(shellWords.bench).toBe(inMirrored('', 'Bench'));
  expect(shellWords.stationName('A')).toBe(inMirrored('', 'Tablet A'));
  expect(inLanguage('late', { ready: 'ready' }).ready).toBe(inMirrored('', 'ready'));
});
