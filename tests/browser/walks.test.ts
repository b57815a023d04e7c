/** The whole job done in a single way at a time: by finger, by keyboard, by foot switch at the bench. Each act is counted. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser, openPage } from '../support/browser.ts';
import { finger } from '../support/walk/finger.ts';
import { keyboard } from '../support/walk/keyboard.ts';
import { pedals } from '../support/walk/pedals.ts';
import { at } from '../support/walk/walker.ts';
import {
  type JobCounts,
  walkFromTheBench,
  walkTheRoute,
  walkToTheBench,
} from '../support/walk/whole-job.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

test('touch', async () => {
  const { page, troubles } = await openPage(browser, { size: 'tablet' });
  const hand = finger(page);
  try {
    console.log({ ...(await walkToTheBench(hand)), ...(await walkTheRoute(hand)), ...(await walkFromTheBench(hand)) });
  } catch (e) { await page.screenshot({ path: '/tmp/tw/walks-scratch/touch.png' }); throw e; }
  expect(troubles).toEqual([]);
});
test('keys', async () => {
  const { page, troubles } = await openPage(browser, { size: 'tablet', hasTouch: false });
  const hand = keyboard(page);
  try {
    console.log(await walkToTheBench(hand));
    console.log(await walkTheRoute(hand));
    console.log(await walkFromTheBench(hand));
  } catch (e) { await page.screenshot({ path: '/tmp/tw/walks-scratch/keys.png' }); throw e; }
  finally { console.log(hand.faults.join('\n')); }
  expect(troubles).toEqual([]);
});
test('foot', async () => {
  const { page, troubles } = await openPage(browser, { size: 'tablet' });
  await walkToTheBench(finger(page), { trays: 2 });
  const foot = pedals(page);
  try {
    const here = page.url();
    await foot.act('pause');
    await foot.act('next-tray');
    await page.waitForURL((url) => url.href !== here);
    await foot.act('flaw-part-faulty');
    await foot.act('flaw-cancel');
    console.log('pause, next, flaw left', foot.count());
    await foot.passAll(3);
    await at(page, 'pass').and(page.locator('[aria-disabled]')).waitFor();
    await foot.act('next-tray');
    await page.waitForURL(here);
    console.log(await walkTheRoute(foot));
  } catch (e) { await page.screenshot({ path: '/tmp/tw/walks-scratch/foot.png' }); throw e; }
  expect(troubles).toEqual([]);
});
