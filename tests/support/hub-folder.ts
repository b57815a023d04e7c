/** Folders for hubs of tests, and a build for them to serve. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A folder that is there until `end`. */
export function aFolder(): { readonly path: string; readonly end: () => void } {
  const path = mkdtempSync(join(tmpdir(), 'tallywright-hub-'));
  return { path, end: () => rmSync(path, { recursive: true, force: true }) };
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
