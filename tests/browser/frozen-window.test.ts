import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchBrowser, openPage } from '../support/browser.ts';
import { makeUpTrays, setUpShop } from '../support/first-ten-minutes.ts';
import { maker } from '../support/maker.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

test('a frozen window holds nobody up: another taps, a third opens, and the frozen one reads on when it thaws', async () => {
  const { page } = await openPage(browser);
  const here = maker(page);
  const code = (await makeUpTrays(here, await setUpShop(here))).beech[0];
  await here.workOn('kit-parts', code);
  const before = await here.left();
  const frozen = await page.context().newCDPSession(page);
  await frozen.send('Page.setWebLifecycleState', { state: 'frozen' });

  const second = maker(await page.context().newPage());
  await second.page.goto(inject('appUrl'));
  await second.workOn('kit-parts', code);
  await second.tap('pass', 3);
  await second.at('saved-mark').filter({ hasText: 'Saved' }).waitFor();
  const third = maker(await page.context().newPage());
  await third.page.goto(inject('appUrl'));
  await third.workOn('kit-parts', code);
  expect(await third.left()).toBe(before - 3);

  await frozen.send('Page.setWebLifecycleState', { state: 'active' });
  await page.bringToFront();
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  await expect.poll(() => here.left(), { timeout: 5000 }).toBe(before - 3);
  await page.waitForTimeout(320);
  await here.tap('pass');
  await expect.poll(() => second.left(), { timeout: 5000 }).toBe(before - 4);
  await page.context().close();
});
