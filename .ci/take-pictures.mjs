/**
 * Takes the pictures of the README and of the manual from the real app with its demo shop: `npm run pictures`, or
 * `npm run pictures -- manual` for those alone.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { browserFlags } from '../tests/support/browser-flags.mjs';
import { findBrowser } from '../tests/support/find-browser.mjs';
import { inFewColours } from './few-colours.mjs';
import { manualPictures, manualSize, readmePictures } from './picture-shots.mjs';
import { serveBuild } from './serve-build.mjs';
import { buildApp, root } from './tools.mjs';

/** @typedef {import('./picture-shots.mjs').Shot} Shot */
/** What lies on a tablet. @typedef {Pick<import('playwright-core').BrowserContextOptions, 'storageState'>} Tablet */

/** A Wednesday afternoon: the same pictures whenever they are taken. */
const moment = new Date('2026-03-04T14:00:00Z');
/** The app is built the day before, as far as it knows: a clock behind that would be in doubt, and said to be. */
process.env.SOURCE_DATE_EPOCH = String(moment.getTime() / 1000 - 24 * 60 * 60);
const ofManual = join(root, 'src/screens/parts/manual/pictures');

const folder = mkdtempSync(join(tmpdir(), 'tallywright-'));
buildApp(folder);
const served = await serveBuild({ folder, under: '/' });
const browser = await chromium.launch({ executablePath: await findBrowser(), args: browserFlags });

/** @param {import('playwright-core').BrowserContextOptions} options */
async function newPage(options) {
  const place = { locale: 'en-GB', timezoneId: 'Europe/London' };
  const context = await browser.newContext({ ...place, serviceWorkers: 'block', ...options });
  const page = await context.newPage();
  page.setDefaultTimeout(120_000);
  await page.clock.setFixedTime(moment);
  await page.goto(served.url);
  return page;
}

/** A tablet as it is once `first` was tapped on the first screen. @param {'open-demo' | 'new-shop'} first */
async function tabletAfter(first) {
  const page = await newPage({});
  await page.click(`[data-testid=${first}]`);
  await page.waitForSelector('[data-testid=stage-sand]');
  // What was tapped is on disk, and its snapshot a moment later.
  await page.waitForTimeout(3000);
  const storageState = await page.context().storageState({ indexedDB: true });
  await page.context().close();
  return { storageState };
}

/** Opens what a picture shows. @param {Shot} shot @param {Tablet} tablet */
async function open({ viewport, hash, taps = [], settled }, tablet) {
  const page = await newPage({ viewport, ...tablet });
  if (hash.startsWith('#')) {
    if (tablet.storageState) await page.waitForSelector('[data-testid=stage-sand]');
    await page.evaluate((to) => {
      location.hash = to;
    }, hash);
  } else await page.goto(new URL(hash, served.url).href);
  for (const tap of taps) {
    await page.locator(tap).first().click();
    await page.waitForTimeout(400);
  }
  if (settled) await page.waitForSelector(settled);
  await page.waitForTimeout(600);
  return page;
}

/** As large as the manual shows it, from the corner of what it is of. @param {Shot} shot @param {Tablet} tablet */
async function takeForManual(shot, tablet) {
  const scale = manualSize.width / shot.viewport.width;
  const page = await open(shot, tablet);
  if (shot.of) await page.locator(shot.of).first().scrollIntoViewIfNeeded();
  const box = shot.of ? await page.locator(shot.of).first().boundingBox() : { x: 0, y: 0 };
  if (!box) throw new Error(`${shot.name}: ${shot.of} is not shown`);
  const { x, y } = await page.evaluate(() => ({ x: scrollX, y: scrollY }));
  const devtools = await page.context().newCDPSession(page);
  const { data } = await devtools.send('Page.captureScreenshot', {
    format: 'png',
    captureBeyondViewport: true,
    clip: {
      // The whole width: a part of a screen without its margins looks cut.
      x,
      y: Math.max(0, Math.round(box.y + y) - (shot.above ?? 0)),
      width: shot.viewport.width,
      height: manualSize.height / scale,
      scale,
    },
  });
  const picture = await inFewColours(page, data);
  writeFileSync(join(ofManual, `${shot.name}.webp`), picture);
  console.log(`${shot.name}: ${picture.length} bytes`);
  await page.context().close();
}

/** @type {Record<NonNullable<Shot['on']>, Tablet>} */
const tablets = {
  nothing: {},
  demo: await tabletAfter('open-demo'),
  shop: await tabletAfter('new-shop'),
};
const wanted = process.argv.slice(2);
const isWanted = (/** @type {string} */ kind, /** @type {string} */ name) =>
  wanted.length === 0 || wanted.includes(kind) || wanted.includes(`${kind}/${name}`);

for (const shot of readmePictures.filter(({ name }) => isWanted('readme', name))) {
  const page = await open(shot, tablets.demo);
  await page.screenshot({ path: `${root}.ci/pictures/${shot.name}.png` });
  await page.context().close();
}
for (const shot of manualPictures.filter(({ name }) => isWanted('manual', name)))
  await takeForManual(shot, tablets[shot.on ?? 'demo']);
await browser.close();
await served.close();
rmSync(folder, { recursive: true });
