import { describe, expect, test } from 'vitest';
import { localeOf, mirrored, startingLanguage } from '../../src/words/locale.ts';

describe('the language to start in', () => {
  test.each<[string | null, readonly string[], string]>([
    [null, [], 'en'],
    [null, ['de-AT', 'en-GB'], 'de'],
    [null, ['fr-FR', 'de', 'en'], 'de'],
    [null, ['fr-FR', 'nl-BE'], 'en'],
    [null, ['en-US', 'de-DE'], 'en'],
    ['de', ['en-GB'], 'de'],
    ['en', ['de-DE'], 'en'],
    ['xx', ['de-DE'], 'de'],
    ['constructor', ['toString'], 'en'],
    [mirrored, ['de-DE'], mirrored],
    // Nobody gets the pseudo-language by the settings of his browser.
    [null, [mirrored], 'en'],
  ])('kept %s, browser %j: %s', (kept, wanted, language) => {
    expect(startingLanguage(kept, wanted)).toBe(language);
  });
});

describe('how a language writes numbers and days', () => {
  test.each([
    ['en', [], 'en-GB'],
    ['en', ['en-US'], 'en-US'],
    ['en', ['de-DE', 'en-IE'], 'en-IE'],
    ['de', ['de-CH', 'en-GB'], 'de-CH'],
    ['de', ['en-GB'], 'de-DE'],
    ['de', ['de'], 'de-DE'],
    // A language code of three letters that begins alike is another language.
    ['de', ['den-CA'], 'de-DE'],
  ] as const)('%s, browser %j: %s', (language, wanted, locale) => {
    expect(localeOf(language, wanted)).toBe(locale);
  });
});
