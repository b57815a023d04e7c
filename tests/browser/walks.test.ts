/** The whole job done in a single way at a time: by finger, by keyboard, by foot switch; each act is counted. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser, openPage } from '../support/browser.ts';
import { finger } from '../support/walk/finger.ts';
import { keyboard } from '../support/walk/keyboard.ts';
import { walkTheJob } from '../support/walk/whole-job.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

test('touch', async () => {
  const { page, troubles } = await openPage(browser, { size: 'tablet' });
  const walker = finger(page);
  try { console.log(await walkTheJob(walker)); } catch (e) { await page.screenshot({ path: '/tmp/tw/walks-scratch/touch.png' }); throw e; }
  expect(troubles).toEqual([]);
});
test('keys', async () => {
  const { page, troubles } = await openPage(browser, { size: 'tablet', hasTouch: false });
  const walker = keyboard(page);
  try { console.log(await walkTheJob(walker)); } catch (e) { await page.screenshot({ path: '/tmp/tw/walks-scratch/keys.png' }); throw e; }
  finally { console.log(walker.faults.join('\n')); }
  expect(troubles).toEqual([]);
});
