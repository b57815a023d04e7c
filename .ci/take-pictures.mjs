/** Takes the pictures of the README from the real app with its demo shop: `node .ci/take-pictures.mjs`. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { browserFlags } from '../tests/support/browser-flags.mjs';
import { findBrowser } from '../tests/support/find-browser.mjs';
import { serveBuild } from './serve-build.mjs';
import { buildApp, root } from './tools.mjs';

/** A Wednesday afternoon: the same pictures whenever they are taken. */
const moment = new Date('2026-03-04T14:00:00Z');
const wide = { width: 1280, height: 800 };
const upright = { width: 800, height: 1280 };

/** @type {readonly { name: string, viewport: { width: number, height: number }, hash: string, taps?: readonly string[] }[]} */
const pictures = [
  {
    name: 'stage-screen',
    viewport: wide,
    hash: '#/bench/sand',
    taps: ['[data-testid^=bench-tray-]', '[data-testid=pass]'],
  },
  {
    name: 'flaw',
    viewport: wide,
    hash: '#/bench/sand',
    taps: ['[data-testid^=bench-tray-]', '[data-testid=flaw-scratch]'],
  },
  { name: 'yield', viewport: upright, hash: '#/yield' },
  {
    name: 'signals',
    viewport: wide,
    hash: '#/yield/signals',
    taps: ['[data-testid=signal-0-chart]', '[data-testid=series-chart] .u-over'],
  },
  { name: 'day', viewport: upright, hash: '#/day' },
];

const folder = mkdtempSync(join(tmpdir(), 'tallywright-'));
buildApp(folder);
const served = await serveBuild({ folder, under: '/' });
const browser = await chromium.launch({ executablePath: await findBrowser(), args: browserFlags });
for (const { name, viewport, hash, taps = [] } of pictures) {
  const context = await browser.newContext({ viewport, locale: 'en-GB', timezoneId: 'Europe/London' });
  const page = await context.newPage();
  await page.clock.setFixedTime(moment);
  await page.goto(served.url);
  await page.click('[data-testid=open-demo]');
  await page.waitForSelector('[data-testid=stage-sand]');
  await page.evaluate((to) => {
    location.hash = to;
  }, hash);
  for (const tap of taps) {
    await page.locator(tap).first().click();
    await page.waitForTimeout(400);
  }
  await page.waitForTimeout(600);
  await page.screenshot({ path: `${root}.ci/pictures/${name}.png` });
  await context.close();
}
await browser.close();
await served.close();
rmSync(folder, { recursive: true });
