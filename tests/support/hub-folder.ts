/** Folders for hubs of tests, and a build for them to serve. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

const folders: string[] = [];
afterAll(() => {
  for (const path of folders) rmSync(path, { recursive: true, force: true });
});

/** A folder that is there until the tests of the file are over. */
export function aFolder(): string {
  const path = mkdtempSync(join(tmpdir(), 'tallywright-hub-'));
  folders.push(path);
  return path;
}

/** What a build looks like to a web server, and nothing of the app in it. */
export function smallBuild(folder: string, script = 'first'): string {
  const built = join(folder, `built-${script}`);
  mkdirSync(join(built, 'assets'), { recursive: true });
  writeFileSync(join(built, 'index.html'), `<!doctype html><script src="assets/${script}.js"></script>`);
  writeFileSync(join(built, 'sw.js'), `// ${script}`);
  writeFileSync(join(built, 'assets', `${script}.js`), `// ${script}`);
  return built;
}
