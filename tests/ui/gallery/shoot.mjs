/**
 * Takes pictures of the gallery in three sizes and three themes, and measures what the bench rules give numbers for.
 * Usage: node tests/ui/gallery/shoot.mjs [folder] [page …]   (the folder is made; default test-results/gallery)
 */
import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import preact from '@preact/preset-vite';
import { chromium } from 'playwright-core';
import { createServer } from 'vite';
import { browserFlags } from '../../support/browser-flags.mjs';
import { findBrowser } from '../../support/find-browser.mjs';
import { handlingFaults } from './handle.mjs';
import { faultsOf } from './measure.mjs';

const [folder = 'test-results/gallery', ...wanted] = process.argv.slice(2);
const allPages = [
  'buttons',
  'bench',
  'not-saved',
  'code',
  'number',
  'forms',
  'sheet',
  'tables',
  'flow',
  'places',
];
const pages = wanted.length > 0 ? wanted : allPages;
const sizes = { wide: [1280, 800], tall: [800, 1280], phone: [390, 844] };
const looks = [
  { name: 'light', query: 'theme=light' },
  { name: 'dark', query: 'theme=dark' },
  { name: 'glare', query: 'theme=glare' },
  { name: 'rtl', query: 'theme=light&dir=rtl' },
];

const server = await createServer({
  root: fileURLToPath(new URL('.', import.meta.url)),
  configFile: false,
  logLevel: 'error',
  cacheDir: fileURLToPath(new URL('../../../node_modules/.vite-gallery', import.meta.url)),
  plugins: [preact()],
  server: { fs: { allow: [fileURLToPath(new URL('../../..', import.meta.url))] }, port: 0 },
});
await server.listen();
const base = server.resolvedUrls?.local[0];
const browser = await chromium.launch({ executablePath: await findBrowser(), args: browserFlags });
mkdirSync(folder, { recursive: true });

let faults = 0;
for (const [size, [width = 0, height = 0]] of Object.entries(sizes)) {
  const context = await browser.newContext({ viewport: { width, height }, locale: 'en-GB' });
  const page = await context.newPage();
  page.on('pageerror', (error) => process.stdout.write(`${size}: ${error.message}\n`));
  for (const { name, query } of looks) {
    for (const shown of pages) {
      await page.goto(`${base}?page=${shown}&${query}`);
      await page.waitForSelector('#app > *');
      await page.evaluate(() => document.fonts.ready);
      await page.evaluate(() => {
        for (const held of document.querySelectorAll('[data-testid^=held]'))
          held.toggleAttribute('data-held', true);
      });
      await page.screenshot({ path: `${folder}/${shown}-${size}-${name}.png`, fullPage: shown !== 'places' });
      for (const fault of await page.evaluate(faultsOf, {
        bench: ['bench', 'not-saved'].includes(shown),
        size,
      })) {
        faults += 1;
        process.stdout.write(`${shown} ${size} ${name}: ${fault}\n`);
      }
    }
  }
  await context.close();
}
const touched = await browser.newContext({
  viewport: { width: 1280, height: 800 },
  hasTouch: true,
  locale: 'en-GB',
});
for (const fault of await handlingFaults(await touched.newPage(), base ?? '')) {
  faults += 1;
  process.stdout.write(`${fault}\n`);
}
await browser.close();
await server.close();
process.stdout.write(`${faults} faults; pictures in ${folder}\n`);
process.exitCode = faults === 0 ? 0 : 1;
