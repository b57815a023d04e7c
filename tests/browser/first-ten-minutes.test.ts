import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { serveBuild } from '../../.ci/serve-build.mjs';
import { launchBrowser, makeReadyOffline, openPage, withServiceWorker } from '../support/browser.ts';
import { expectTable } from '../support/expect-table.ts';
import {
  cutAndBore,
  glueUp,
  kitParts,
  makeUpTrays,
  setUpShop,
  splitAndRecount,
} from '../support/first-ten-minutes.ts';
import { maker } from '../support/maker.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

describe('a newcomer’s first ten minutes', () => {
  test('with reloads in between, every number is the one worked out by hand', async () => {
    const { page, troubles } = await openPage(browser, { size: 'tablet', ...withServiceWorker });
    const hands = maker(page);
    const trays = await makeUpTrays(hands, await setUpShop(hands));
    await kitParts(hands, trays);
    await page.reload();
    await cutAndBore(hands, trays);
    await glueUp(hands, trays);
    await splitAndRecount(hands, trays);
    await expectTable(hands);
    await page.reload();
    await expectTable(hands);
    expect(troubles).toEqual([]);
    await page.context().close();
  });

  test('with no network at all and the host gone, the numbers are the same', async () => {
    const served = await serveBuild({ folder: inject('builtApp'), under: '/shop/' });
    const { page } = await openPage(browser, { size: 'phone', url: served.url, ...withServiceWorker });
    await makeReadyOffline(page);
    await served.close();
    await page.reload();
    const hands = maker(page);
    const trays = await makeUpTrays(hands, await setUpShop(hands));
    await kitParts(hands, trays);
    await cutAndBore(hands, trays);
    await page.reload();
    await glueUp(hands, trays);
    await splitAndRecount(hands, trays);
    await expectTable(hands);
    await page.context().close();
  });
});
