import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchBrowser, openPage, watchTroubles } from '../support/browser.ts';
import { makeUpTrays, setUpShop } from '../support/first-ten-minutes.ts';
import { type Maker, maker } from '../support/maker.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** A shop with four trays, and a second window on it, which can be made to hear nothing of the first. */
async function twoWindows({ deaf = false } = {}) {
  const { page, troubles } = await openPage(browser);
  const here = maker(page);
  const trays = await makeUpTrays(here, await setUpShop(here));
  const second = await page.context().newPage();
  const url = inject('appUrl');
  if (deaf) await second.addInitScript(() => Reflect.deleteProperty(globalThis, 'BroadcastChannel'));
  const troublesThere = watchTroubles(second, new URL(url).origin);
  await second.goto(url);
  return { here, there: maker(second), trays, troubles: () => [...troubles, ...troublesThere] };
}

const showsLeft = ({ page }: Maker, left: number) =>
  page.waitForFunction(
    (wanted) => document.querySelector('[data-testid=stage-left] .figures')?.textContent === String(wanted),
    left,
    { timeout: 3000 },
  );

test('two windows tap the same tray at once: no tap is lost or doubled, and both show the same', async () => {
  const { here, there, trays, troubles } = await twoWindows();
  for (const window of [here, there]) await window.workOn('kit-parts', trays.beech[0]);
  for (let round = 0; round < 4; round += 1) await Promise.all([here.tap('pass'), there.tap('pass')]);
  for (const window of [here, there]) await showsLeft(window, 2);
  await here.goTo('#/day');
  expect(await here.figure('day-passed-kit-parts', 'data-day')).toBe('8');
  expect(troubles()).toEqual([]);
  await here.page.context().close();
});

test('a tap on a piece that another window has just taken is kept, shown as a count to check, and set right by a recount', async () => {
  const { here, there, trays, troubles } = await twoWindows({ deaf: true });
  const code = trays.plum[0];
  await here.workOn('kit-parts', code);
  await here.tap('pass', 7);
  await there.page.reload();
  await there.workOn('kit-parts', code);
  await showsLeft(there, 1);
  await here.tap('pass');
  await there.tap('pass');
  // A window that did not hear of the other reads for itself when it is shown again.
  for (const window of [here, there]) {
    await window.page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    await showsLeft(window, -1);
  }
  await there.goTo('#/day');
  // Touches of the first 300 ms after a return to view do not count.
  await there.page.waitForTimeout(320);
  await there.tap(`check-${code}`);
  await there.tap('recount-open');
  expect(await there.figure('recount-log')).toContain('−1');
  await there.at('recount-counted').fill('0');
  await there.at('recount-why').locator('input[value=two-tablets]').check();
  await there.close('recount-save');
  await there.goTo('#/day');
  await there.at('no-checks').waitFor();
  expect(troubles()).toEqual([]);
  await here.page.context().close();
});
