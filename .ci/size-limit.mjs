/** Budgets of what a tablet downloads, in bytes after gzip. A change that raises one says why in its commit. */
import { join } from 'node:path';
import { firstScreen } from './first-screen.mjs';
import { root } from './tools.mjs';

const built = join(root, 'dist');
const { scripts, styles } = firstScreen(built);

export default [
  { name: 'first screen, scripts', path: scripts, gzip: true, limit: '45 kB' },
  { name: 'first screen, style sheets', path: styles, gzip: true, limit: '12 kB' },
  { name: 'all scripts', path: [join(built, 'assets/*.js')], gzip: true, limit: '935 kB' },
  { name: 'service worker', path: [join(built, 'sw.js')], gzip: true, limit: '22 kB' },
];
