import { existsSync, readdirSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { isOutOfDate, publishApp } from '../../.ci/hub/publish-app.mjs';
import { aFolder, smallBuild } from '../support/hub-folder.ts';

const folder = aFolder();
const day = 86_400_000;
const start = Date.UTC(2026, 2, 1);

test('scripts of former builds stay for thirty days after the last build that had them', () => {
  const app = join(folder, 'app');
  const publish = (script: string, now: number) =>
    publishApp({ built: smallBuild(folder, script), app, seen: join(folder, 'assets.json'), now });
  const scripts = () => readdirSync(join(app, 'assets')).toSorted();

  publish('first', start);
  publish('first', start + 20 * day);
  writeFileSync(join(app, 'left-over.txt'), 'of a former build');
  publish('second', start + 40 * day);
  expect(scripts()).toEqual(['first.js', 'second.js']);
  expect(readFileSync(join(app, 'index.html'), 'utf8')).toContain('assets/second.js');
  expect(readdirSync(app).toSorted()).toEqual(['assets', 'index.html', 'sw.js']);

  publish('second', start + 50 * day);
  expect(scripts()).toEqual(['first.js', 'second.js']);
  publish('second', start + 51 * day);
  expect(scripts()).toEqual(['second.js']);
});

test('a build is out of date when there is none, or when a source is younger', () => {
  const built = smallBuild(folder, 'dated');
  const source = join(folder, 'source.ts');
  writeFileSync(source, '');
  const at = (seconds: number, path: string) => utimesSync(path, seconds, seconds);
  at(1000, source);
  at(2000, join(built, 'index.html'));
  expect(isOutOfDate(built, [source])).toBe(false);
  at(3000, source);
  expect(isOutOfDate(built, [source])).toBe(true);
  expect(existsSync(join(folder, 'none'))).toBe(false);
  expect(isOutOfDate(join(folder, 'none'), [source])).toBe(true);
});
