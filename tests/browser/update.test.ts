import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, inject, test } from 'vitest';
import { buildApp } from '../../.ci/tools.mjs';
import {
  launchBrowser,
  makeReadyOffline,
  openDemo,
  openPage,
  watchTroubles,
  withServiceWorker,
} from '../support/browser.ts';
import { demoTray } from '../support/demo-tray.ts';
import { type Host, openHost } from '../support/host.ts';
import { type Maker, maker } from '../support/maker.ts';

let browser: Browser;
let host: Host;
const ownVersion: string = JSON.parse(readFileSync('package.json', 'utf8')).version;
const first = () => inject('builtApp');
const later = mkdtempSync(join(tmpdir(), 'tallywright-'));

beforeAll(async () => {
  buildApp(later, '9.9.9');
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser.close();
  rmSync(later, { recursive: true, force: true });
});
beforeEach(async () => {
  host = await openHost(first());
});
afterEach(() => host.close());

/** A window that works without the network, with a tray of ten in mid-work and one piece tapped off. */
async function atWork() {
  const { page, troubles } = await openDemo(browser, { url: host.url, ...withServiceWorker });
  await makeReadyOffline(page);
  const hands = maker(page);
  const code = await demoTray(hands);
  await hands.workOn('kit-parts', code);
  await hands.tap('pass');
  await expect.poll(hands.left).toBe(9);
  await markPage(page);
  return { page, troubles, hands, code };
}

/** A second window of the same tablet. */
async function besideIt(page: Page, hash = '#/day') {
  const second = await page.context().newPage();
  const troubles = watchTroubles(second, new URL(host.url).origin);
  await second.goto(`${host.url}${hash}`);
  await second.locator('main:not([aria-busy=true])').waitFor();
  await markPage(second);
  return { hands: maker(second), page: second, troubles };
}

/** A mark that is gone once the page was loaded anew. */
const markPage = (page: Page) =>
  page.evaluate(() => {
    document.body.dataset.same = 'page';
  });
const isSame = (page: Page) => page.evaluate(() => document.body.dataset.same === 'page');
const isLoadedAnew = (page: Page) =>
  page.waitForFunction(
    () => document.body?.dataset.same === undefined && document.querySelector('main:not([aria-busy=true])'),
  );

/** The app looks for a new version whenever it comes into view. */
const comeIntoView = (page: Page) =>
  page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));

/** Waits until a new version is on the tablet and hears what it is told. */
async function aVersionWaits(page: Page): Promise<void> {
  await page.waitForFunction(async () => (await navigator.serviceWorker.getRegistration())?.waiting != null);
  const hears = () =>
    page.evaluate(async () => {
      const registration = await navigator.serviceWorker.getRegistration();
      const { port1, port2 } = new MessageChannel();
      registration?.waiting?.postMessage({ type: 'COUNT_WINDOWS' }, [port2]);
      return new Promise<boolean>((resolve) => {
        port1.onmessage = () => resolve(true);
        setTimeout(() => resolve(false), 500);
      });
    });
  await expect.poll(hears, { timeout: 20_000 }).toBe(true);
}

async function expectVersion({ page, goTo }: Maker, version: string): Promise<void> {
  await goTo('#/set-up/tablet');
  await page.getByText(`Version ${version}`, { exact: true }).waitFor();
}

/** Every part that is fetched on demand can be had. */
async function walkAll({ page, goTo }: Maker): Promise<void> {
  for (const hash of ['#/yield', '#/day', '#/trays', '#/set-up/woods', '#/bench']) {
    await goTo(hash);
    expect(await page.locator('[data-testid=place-broken]').count(), hash).toBe(0);
  }
}

async function pressApply({ at, page }: Maker): Promise<void> {
  // Sooner after the page came into view it would be taken for the tap that woke the tablet.
  await page.waitForTimeout(400);
  await at('update-offer').getByRole('button').click();
}

describe('a new version', () => {
  test('waits under a working hand, is offered on Day, takes over at a tap with the shop intact, and says so once', async () => {
    const { page, hands, code, troubles } = await atWork();
    host.put(later);
    await comeIntoView(page);
    await aVersionWaits(page);
    await page.waitForTimeout(400);
    await hands.tap('pass');
    await expect.poll(hands.left).toBe(8);
    expect(await isSame(page)).toBe(true);

    await hands.goTo('#/day');
    await pressApply(hands);
    await isLoadedAnew(page);
    await hands.at('update-arrived').filter({ hasText: 'Now version 9.9.9.' }).waitFor();
    await hands.close('update-arrived-close');
    await hands.workOn('kit-parts', code);
    await expect.poll(hands.left).toBe(8);
    await expectVersion(hands, '9.9.9');
    await page.reload();
    await expectVersion(hands, '9.9.9');
    expect(await hands.at('update-arrived').count()).toBe(0);
    expect(troubles).toEqual([]);
    await page.context().close();
  });

  test('comes in at a cold start of the only window before its first screen, and a reload is enough of a start', async () => {
    const { page, hands, code } = await atWork();
    host.put(later);
    await comeIntoView(page);
    await aVersionWaits(page);
    await page.reload();
    await hands.at('stage-screen').waitFor();
    await expectVersion(hands, '9.9.9');
    await hands.at('update-arrived').waitFor();
    await hands.workOn('kit-parts', code);
    await expect.poll(hands.left).toBe(9);
    await page.context().close();
  });

  test('that was waiting before the page was loaded beside another window is offered, not taken', async () => {
    const { page, hands } = await atWork();
    host.put(later);
    await comeIntoView(page);
    await aVersionWaits(page);
    const second = await besideIt(page);
    await second.hands.at('update-offer').waitFor();
    expect(await isSame(page)).toBe(true);
    await expectVersion(second.hands, ownVersion);
    await expect.poll(hands.left).toBe(9);
    await page.context().close();
  });
});

describe('two windows', () => {
  test('one in mid-work is asked and stands in the way, is named, and is never loaded anew under the hand', async () => {
    const { page, hands } = await atWork();
    const second = await besideIt(page);
    host.put(later);
    await comeIntoView(second.page);
    await second.hands.at('update-offer').waitFor();
    await pressApply(second.hands);
    await second.hands
      .at('update-offer')
      .filter({ hasText: 'Another window is in mid-work: Bench' })
      .waitFor();
    await hands.tap('pass');
    await expect.poll(hands.left).toBe(8);
    expect(await isSame(page)).toBe(true);
    // The stage is left: nothing stands in the way any more, both windows come to the new version, each loaded once.
    await hands.goTo('#/trays');
    await second.hands
      .at('update-offer')
      .filter({ hasText: 'A new version is ready' })
      .waitFor({ timeout: 25_000 });
    await pressApply(second.hands);
    await isLoadedAnew(second.page);
    await isLoadedAnew(page);
    await expectVersion(hands, '9.9.9');
    await expectVersion(second.hands, '9.9.9');
    await page.context().close();
  });

  test('one with something typed and not saved stands in the way', async () => {
    const { page, hands } = await atWork();
    await hands.goTo('#/set-up/woods');
    await hands.tap('add-wood');
    await hands.tap('wood-own');
    await hands.at('wood-name').fill('Bog oak');
    // Closed by a slip: what is typed is kept for the next opening, and would be lost by a reload.
    await page.keyboard.press('Escape');
    const second = await besideIt(page);
    host.put(later);
    await comeIntoView(second.page);
    await second.hands.at('update-offer').waitFor();
    await pressApply(second.hands);
    await second.hands.at('update-offer').filter({ hasText: 'typed and not saved: Set-up' }).waitFor();
    expect(await isSame(page)).toBe(true);
    await page.context().close();
  });

  test('an old one that slept through the update goes on with all its parts and is loaded anew when its tray is left', async () => {
    const { page, hands, code } = await atWork();
    const second = await besideIt(page);
    host.put(later);
    await comeIntoView(second.page);
    await aVersionWaits(second.page);
    // As if the old window had been asleep when it was asked: the version is let in over its head.
    await second.page.evaluate(async () => {
      const registration = await navigator.serviceWorker.getRegistration();
      registration?.waiting?.postMessage({ type: 'SKIP_WAITING' });
    });
    await isLoadedAnew(second.page);
    await hands.tap('pass');
    await expect.poll(hands.left).toBe(8);
    expect(await isSame(page)).toBe(true);
    // The host has it no longer, and the browser's own cache, which may hold it, is not to be relied on.
    await (await page.context().newCDPSession(page)).send('Network.clearBrowserCache');
    const chunk = readdirSync(join(first(), 'assets')).find((name) => /^yield-place-.*[.]js$/.test(name));
    expect(await page.evaluate(async (name) => (await fetch(`assets/${name}`)).status, chunk)).toBe(200);
    await hands.goTo('#/bench');
    await isLoadedAnew(page);
    await expectVersion(hands, '9.9.9');
    await hands.workOn('kit-parts', code);
    await expect.poll(hands.left).toBe(8);
    await page.context().close();
  });
});

describe('an update that is broken on its way', () => {
  test.each([
    ['a part', 'cut', /yield-place-.*[.]js$/],
    ['a part', 'gone', /yield-place-.*[.]js$/],
    ['a part', 'other', /yield-place-.*[.]js$/],
    ['the page, as a proxy had it before,', 'other', /index[.]html$/],
  ] as const)(
    '%s is %s: the version in use goes on with all its parts, and the next good update comes in',
    async (_, fault, path) => {
      const { page, hands } = await atWork();
      host.put(later);
      host.breakFiles(path, fault);
      const ended = page.evaluate(async () => {
        const registration = await navigator.serviceWorker.getRegistration();
        return new Promise<string | undefined>((resolve) => {
          registration?.addEventListener('updatefound', () => {
            const worker = registration.installing;
            worker?.addEventListener('statechange', () => {
              if (worker.state !== 'installing') resolve(worker.state);
            });
          });
          document.dispatchEvent(new Event('visibilitychange'));
        });
      });
      expect(await ended).toBe('redundant');
      expect(host.broken()).toBeGreaterThan(0);
      expect(await isSame(page)).toBe(true);
      await walkAll(hands);
      await page.reload();
      await walkAll(hands);
      expect(await hands.at('update-offer').count()).toBe(0);

      host.breakFiles(/./, undefined);
      await hands.goTo('#/day');
      // A look that comes while a broken version is still on its way is answered with that one: as on a tablet, another follows.
      await expect
        .poll(
          async () => {
            await comeIntoView(page);
            return hands.at('update-offer').count();
          },
          { interval: 1000, timeout: 60_000 },
        )
        .toBe(1);
      await markPage(page);
      await pressApply(hands);
      await isLoadedAnew(page);
      await walkAll(hands);
      await expectVersion(hands, '9.9.9');
      await page.context().close();
    },
    120_000,
  );

  test('the host goes back to the older build: it comes in like any other, with every tap', async () => {
    host.put(later);
    const { page, hands, code } = await atWork();
    host.put(first());
    await hands.goTo('#/day');
    await comeIntoView(page);
    await hands.at('update-offer').waitFor();
    await pressApply(hands);
    await isLoadedAnew(page);
    await walkAll(hands);
    await hands.workOn('kit-parts', code);
    await expect.poll(hands.left).toBe(9);
    await page.context().close();
  });
});

describe('never a blank screen', () => {
  test('a page that names files which are gone says so, with ways on', async () => {
    host.breakFiles(/index-.*[.]js$/, 'gone');
    const { page } = await openPage(browser, { url: host.url });
    await page.getByRole('link', { name: 'Rescue page' }).waitFor({ timeout: 15_000 });
    await page.getByRole('link', { name: 'Load it again' }).waitFor();
    host.breakFiles(/./, undefined);
    await page.getByRole('link', { name: 'Load it again' }).click();
    await maker(page).at('open-demo').waitFor();
    await page.context().close();
  });

  test('a main script that throws leaves the page’s own words and the way to the rescue page', async () => {
    host.breakFiles(/index-.*[.]js$/, 'other');
    const { page } = await openPage(browser, { url: host.url });
    await page.getByRole('link', { name: 'Rescue page' }).click({ timeout: 15_000 });
    await page.locator('[data-testid=rescue-state]').filter({ hasText: 'Nothing of Tallywright' }).waitFor();
    await page.context().close();
  });

  test('a part that cannot be had leaves the shop open: said in its place, tried again at a tap', async () => {
    // From the start: what is to be had then is fetched ahead.
    host.breakFiles(/yield-place-.*[.]js$/, 'gone');
    const { page } = await openDemo(browser, { url: host.url });
    const hands = maker(page);
    await page.evaluate(() => {
      location.hash = '#/yield';
    });
    await hands.at('place-broken').waitFor();
    expect(await hands.at('place-broken').getByRole('link', { name: 'Rescue page' }).count()).toBe(1);
    await hands.tap('broken-bench');
    await hands.at('stage-sand').waitFor();
    host.breakFiles(/./, undefined);
    await hands.goTo('#/yield');
    if ((await hands.at('place-broken').count()) > 0) await hands.tap('broken-reload');
    await page.getByRole('heading', { level: 1, name: 'Yield' }).waitFor();
    await page.context().close();
  });
});
