import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { promiseRows } from '../../src/words/promise-words.ts';

const root = new URL('../../', import.meta.url);
const readme = readFileSync(new URL('README.md', root), 'utf8');
/** The rows of README's table of promises, cell by cell. */
const rows = readme
  .split('\n')
  .filter((line) => line.startsWith('|') && line.includes('`tests/'))
  .map((line) =>
    line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim()),
  );

test('README promises what the app promises, row by row', () => {
  expect(rows.map(([fault, happens, lost]) => ({ fault, happens, lost }))).toEqual(promiseRows);
});

test.each(rows)('the promise for “%s” names tests that exist', (_fault, _happens, _lost, named) => {
  const paths = [...(named ?? '').matchAll(/`([^`]+)`/g)].map(([, path]) => path ?? '');
  expect(paths).not.toEqual([]);
  for (const path of paths) expect([path, existsSync(new URL(path, root))]).toEqual([path, true]);
});
