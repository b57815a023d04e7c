import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { reasonToSkip, skipsOf } from './engine-skips.ts';

const pathOf = (file: string) => fileURLToPath(new URL(`../browser/${file}.test.ts`, import.meta.url));

test('every test that is left out for an engine is there under its name, once', () => {
  const rows = skipsOf('firefox');
  expect(rows.length).toBeGreaterThan(0);
  for (const { file, test: title = '' } of rows) {
    expect(existsSync(pathOf(file)), file).toBe(true);
    if (title === '') continue;
    const found = readFileSync(pathOf(file), 'utf8').split(`'${title}`).length - 1;
    expect(found, `${file}: ${title}`).toBe(1);
  }
});

test('Chromium is put through all of them', () => {
  for (const { file, test: title = '' } of skipsOf('firefox')) {
    expect(reasonToSkip('chromium', { file: pathOf(file), title })).toBeUndefined();
    expect(reasonToSkip('firefox', { file: pathOf(file), title })).toBeTruthy();
  }
});
