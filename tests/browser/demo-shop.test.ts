import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { accessibilityFaults, launchBrowser, openPage } from '../support/browser.ts';
import { maker } from '../support/maker.ts';

/** A bar of places that a taller screen may show at its foot, in CSS pixels. */
const roomForPlaces = 200;

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const places = [
  '#/bench',
  '#/bench/sand',
  '#/trays',
  '#/trays/new',
  '#/yield',
  '#/yield/chances',
  '#/yield/flaws',
  '#/yield/signals',
  '#/yield/time',
  '#/yield/compare',
  '#/day',
  '#/set-up',
  '#/set-up/woods',
  '#/set-up/variants',
  '#/set-up/stages',
  '#/set-up/route',
  '#/set-up/tablet',
  '#/set-up/about',
] as const;

test('the demo is one tap away and one tap back, and leaves no trace in the shop of one’s own', async () => {
  const { page, troubles } = await openPage(browser);
  const { at, close } = maker(page);
  await close('open-demo');
  await at('stage-sand').waitFor();
  await close('leave-demo');
  await at('new-shop').waitFor();
  await close('new-shop');
  await at('stage-sand').waitFor();
  expect(await page.locator('[data-testid=demo-banner]').count()).toBe(0);
  expect(await at('stage-sand').textContent()).toContain('nothing here');
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('the demo is still open after a reload, and says that it is the demo', async () => {
  const { page } = await openPage(browser);
  const { at, close } = maker(page);
  await close('open-demo');
  await at('stage-sand').waitFor();
  await page.reload();
  await at('demo-banner').waitFor();
  await page.context().close();
});

test('in the demo a tray can be made up and a piece tapped off like in any shop', async () => {
  const { page, troubles } = await openPage(browser);
  const { at, close, goTo, tap, workOn, left } = maker(page);
  await close('open-demo');
  await at('stage-sand').waitFor();
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

test.each(['tablet', 'phone'] as const)(
  'no place has a fault that a machine can find, nor scrolls sideways (%s)',
  async (size) => {
    const { page, troubles } = await openPage(browser, { size });
    const { width = 0, height: usual = 0 } = page.viewportSize() ?? {};
    const { at, close, goTo } = maker(page);
    await close('open-demo');
    await at('stage-sand').waitFor();
    const faults: string[] = [];
    for (const place of places) {
      await page.setViewportSize({ width, height: usual });
      await goTo(place);
      await page.waitForTimeout(100);
      // As tall as the page, so that the bar of places covers nothing that scrolling would uncover; charts come late.
      for (let [tall, last] = [0, -1]; tall !== last; ) {
        last = tall;
        tall = await page.evaluate(() => document.querySelector('main')?.scrollHeight ?? 0);
        await page.setViewportSize({ width, height: tall + 4 * roomForPlaces });
        await page.waitForTimeout(700);
      }
      for (const fault of await accessibilityFaults(page)) faults.push(`${place}: ${fault}`);
      const beyond = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      if (beyond > 0) faults.push(`${place}: ${beyond} px wider than the screen`);
    }
    await page.setViewportSize({ width, height: usual });
    await goTo('#/bench/sand');
    await page.locator('[data-testid^=bench-tray-]').first().click();
    await at('stage-screen').waitFor();
    for (const fault of await accessibilityFaults(page)) faults.push(`stage screen: ${fault}`);
    expect(faults).toEqual([]);
    expect(troubles).toEqual([]);
    await page.context().close();
  },
);
