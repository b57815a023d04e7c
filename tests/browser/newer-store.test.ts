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

test('a store that a newer version has been at is shown and not changed: taps are refused in words', async () => {
  const { page } = await openPage(browser);
  const { at, goTo, workOn, tap, left } = maker(page);
  const trays = await makeUpTrays(maker(page), await setUpShop(maker(page)));
  const code = trays.beech[0];
  await page.goto('about:blank');
  await page.goto(new URL('rescue.html', inject('appUrl')).href);
  /** Opens the database as a later version would, and closes it. */
  const later = () =>
    page.evaluate(
      () =>
        new Promise<number>((resolve, reject) => {
          const opening = indexedDB.open('tallywright', 99);
          opening.onupgradeneeded = () => opening.result.createObjectStore('of a later version');
          opening.onerror = () => reject(opening.error);
          opening.onsuccess = () => {
            const count = opening.result.transaction('events').objectStore('events').count();
            count.onsuccess = () => {
              opening.result.close();
              resolve(count.result);
            };
          };
        }),
    );
  const before = await later();
  await page.goto(inject('appUrl'));
  await at('only-looking').waitFor();
  await goTo('#/trays');
  await page.locator(`[data-testid="tray-row-${code}"]`).first().waitFor();
  await workOn('kit-parts', code);
  const shown = await left();
  await tap('pass');
  await page.getByText('This window is of an older version', { exact: false }).first().waitFor();
  expect(await left()).toBe(shown);
  await page.goto(new URL('rescue.html', inject('appUrl')).href);
  expect(await later()).toBe(before);
  await page.context().close();
});
