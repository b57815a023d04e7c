/** What a tablet fetches before the first screen stands: the scripts and style sheets that the built page names. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * @param {string} built the folder that holds the built app
 * @returns {{ scripts: string[], styles: string[] }} paths of files
 */
export function firstScreen(built) {
  const page = readFileSync(join(built, 'index.html'), 'utf8');
  const named = (/** @type {RegExp} */ tag) =>
    [...page.matchAll(tag)].map(([, path]) => join(built, String(path)));
  return {
    scripts: named(/<(?:script|link rel="modulepreload")[^>]* (?:src|href)="([^"]+[.]js)"/g),
    styles: named(/<link rel="stylesheet"[^>]* href="([^"]+[.]css)"/g),
  };
}
