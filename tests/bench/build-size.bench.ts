/** What a tablet downloads, in bytes after gzip. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { firstScreen } from '../../.ci/first-screen.mjs';
import { buildApp, root } from '../../.ci/tools.mjs';

export async function measure() {
  buildApp();
  const built = join(root, 'dist');
  const { scripts, styles } = firstScreen(built);
  const allScripts = readdirSync(join(built, 'assets'))
    .filter((name) => name.endsWith('.js'))
    .map((name) => join(built, 'assets', name));
  return [
    { id: 'first-screen-scripts', ours: gzipped(scripts), unit: 'B' },
    { id: 'first-screen-styles', ours: gzipped(styles), unit: 'B' },
    { id: 'all-scripts', ours: gzipped(allScripts), unit: 'B' },
    { id: 'service-worker', ours: gzipped([join(built, 'sw.js')]), unit: 'B' },
  ];
}

function gzipped(paths: readonly string[]) {
  return paths.reduce((sum, path) => sum + gzipSync(readFileSync(path), { level: 9 }).length, 0);
}
