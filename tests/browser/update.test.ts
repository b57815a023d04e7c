import { appendFileSync, cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { serveBuild } from '../../.ci/serve-build.mjs';
import { launchBrowser, makeReadyOffline, openPage } from '../support/browser.ts';
import { maker } from '../support/maker.ts';

let browser: Browser;
let folder: string;
beforeAll(async () => {
  browser = await launchBrowser();
  folder = mkdtempSync(join(tmpdir(), 'tallywright-'));
  cpSync(inject('builtApp'), folder, { recursive: true });
});
afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
});

test('a new version waits until it is asked for, is offered on Day, and then takes over with the shop intact', async () => {
  const served = await serveBuild({ folder, under: '/shop/' });
  const { page } = await openPage(browser, { url: served.url });
  await makeReadyOffline(page);
  const { at, close, goTo, workOn, tap, left } = maker(page);
  await close('open-demo');
  await at('stage-sand').waitFor();
  await goTo('#/bench/sand');
  const code = (
    (await page.locator('[data-testid^=bench-tray-]').first().getAttribute('data-testid')) ?? ''
  ).replace('bench-tray-', '');
  await workOn('sand', code);
  await tap('pass');
  const before = await left();
  await page.evaluate(() => {
    document.body.dataset.same = 'page';
  });

  appendFileSync(join(folder, 'sw.js'), '\n// a later version\n');
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  await page.waitForFunction(async () => (await navigator.serviceWorker.getRegistration())?.waiting != null);
  // Nothing happens under a working hand: the same page goes on, and the tap counts.
  await page.waitForTimeout(400);
  await tap('pass');
  expect(await left()).toBe(before - 1);
  expect(await page.evaluate(() => document.body.dataset.same)).toBe('page');

  await goTo('#/day');
  await at('update-offer').waitFor();
  await at('update-offer').getByRole('button').click();
  await page.waitForFunction(() => document.body.dataset.same === undefined);
  await workOn('sand', code);
  expect(await left()).toBe(before - 1);
  await served.close();
  await page.context().close();
}, 90_000);
