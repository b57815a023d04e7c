import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser, openDemo, openPage } from '../support/browser.ts';
import { maker } from '../support/maker.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

test('the demo is one tap away, still open after a reload, and one tap back, and leaves no trace in one’s own shop', async () => {
  const { page, troubles } = await openPage(browser);
  const { at, close } = maker(page);
  await close('open-demo');
  await at('stage-sand').waitFor();
  await page.reload();
  await at('demo-banner').waitFor();
  await close('leave-demo');
  await at('new-shop').waitFor();
  await close('new-shop');
  await at('stage-sand').waitFor();
  expect(await page.locator('[data-testid=demo-banner]').count()).toBe(0);
  expect(await at('stage-sand').textContent()).toContain('nothing here');
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('in the demo a tray can be made up and a piece tapped off like in any shop', async () => {
  const { page, troubles } = await openDemo(browser);
  const { at, close, goTo, tap, workOn, left } = maker(page);
  await goTo('#/trays/new');
  await tap('make-variant-plum-copper');
  await close('make-prized');
  const code = (await at('made-code').textContent()) ?? '';
  await workOn('kit-parts', code);
  await tap('pass');
  await at('saved-mark').filter({ hasText: 'Saved' }).waitFor();
  expect(await left()).toBe(0);
  expect(troubles).toEqual([]);
  await page.context().close();
});
