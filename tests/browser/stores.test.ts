import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { accessibilityFaults, launchBrowser, openPage } from '../support/browser.ts';
import { maker } from '../support/maker.ts';
import { expectStores, receive, setUpStores } from '../support/stores-hands.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/*
 * Made by hand. A piece takes one ferrule when it leaves the kitting and two cores when it leaves the glue-up (common
 * practice, no source: a core of two halves). Each: on hand, allotted, free; then what can be started.
 *
 *                                          cores          ferrules       start
 * 200 cores and 40 ferrules received       200   0 200     40   0  40    40 by ferrules
 * 24 made up                               200  48 152     40  24  16    16 by ferrules
 * 24 kitted                                200  48 152     16   0  16    16
 * 24 cut and bored, 20 of 24 glued up      160   8 152     16   0  16    16
 * 2 of the 20 scrapped, cores saved        160   8 152     16   0  16    16    4 to be cleaned
 * 1 cleaned                                161   8 153     16   0  16    16    3
 * the second scrap taken back              161   8 153     16   0  16    16    1
 *
 * The two scraps are two taps of one piece each: two cores are saved by each.
 */
test('parts are received, fitted, saved from scrap and cleaned, and every count is the one worked out by hand', async () => {
  const { page, troubles } = await openPage(browser, { size: 'tablet' });
  const hands = maker(page);
  const { at, tap, close, goTo, workOn } = hands;
  const ids = await setUpStores(hands);
  const { core, ferrule } = ids;
  expect(await hands.figure(`stores-${core}-on-hand`)).toBe('–');
  await receive(hands, core, '200');
  await receive(hands, ferrule, '40');
  await expectStores(hands, ids, { core: '200 0 200', ferrule: '40 0 40', start: '40' });

  await goTo('#/trays/new');
  await tap(ids.variant);
  await at('make-batch').selectOption({ label: 'Spring' });
  await at('make-pieces').fill('24');
  await at('make-count').fill('1');
  await close('make-save');
  const code = (await hands.figure('made-code')).trim();
  await close('made-done');
  await expectStores(hands, ids, { core: '200 48 152', ferrule: '40 24 16', start: '16' });

  await workOn('kit-parts', code);
  await close('pass-rest');
  await expectStores(hands, ids, { core: '200 48 152', ferrule: '16 0 16', start: '16' });

  await workOn('cut-and-bore', code);
  await tap('pass', 24);
  await workOn('glue-up', code);
  await tap('pass-5', 4);
  await expectStores(hands, ids, { core: '160 8 152', ferrule: '16 0 16', start: '16' });

  await workOn('glue-cures', code);
  for (let scrap = 0; scrap < 2; scrap += 1) {
    await tap('flaw-glue-failed');
    await tap('outcome-scrapped');
    await tap(`save-${core}`);
    await at('saved-mark').filter({ hasText: 'Saved' }).waitFor();
  }
  await expectStores(hands, ids, { core: '160 8 152', ferrule: '16 0 16', start: '16' });
  expect(await hands.figure(`clean-${core}-count`)).toBe('4');

  await tap(`clean-${core}-one`);
  await expectStores(hands, ids, { core: '161 8 153', ferrule: '16 0 16', start: '16' });
  expect(await hands.figure(`clean-${core}-count`)).toBe('3');

  await hands.openTray(code);
  await page
    .locator('[data-testid=history] li')
    .filter({ hasText: 'Glue failed' })
    .first()
    .getByRole('button')
    .click();
  await page.locator('[data-testid=history] li').filter({ hasText: 'Taken back' }).first().waitFor();
  await expectStores(hands, ids, { core: '161 8 153', ferrule: '16 0 16', start: '16' });
  expect(await hands.figure(`clean-${core}-count`)).toBe('1');

  await page.reload();
  await expectStores(hands, ids, { core: '161 8 153', ferrule: '16 0 16', start: '16' });
  expect(await accessibilityFaults(page)).toEqual([]);
  await goTo(`#/stores/part/${core}`);
  await page.locator('[data-testid=history] li').first().waitFor();
  expect(await page.locator('[data-testid=history] li .event-said').allInnerTexts()).toEqual([
    'Awl core cleaned: 1 back to stores',
    'Received: 200 Awl core',
  ]);
  expect(await accessibilityFaults(page)).toEqual([]);
  expect(troubles).toEqual([]);
  await page.context().close();
});
