import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import {
  accessibilityFaults,
  launchBrowser,
  makeReadyOffline,
  openDemo,
  openPage,
  withServiceWorker,
} from '../support/browser.ts';
import { browserFlags } from '../support/browser-flags.mjs';
import { demoTray } from '../support/demo-tray.ts';
import { handedOut } from '../support/handed-out.ts';
import { openHost } from '../support/host.ts';
import { maker } from '../support/maker.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** Writes a file into the origin private file system, as the second copy of the log does. */
const writePrivateFile = (page: Page) =>
  page.evaluate(async () => {
    const root = await navigator.storage.getDirectory();
    const folder = await root.getDirectoryHandle('journal', { create: true });
    const file = await (await folder.getFileHandle('000001.lines', { create: true })).createWritable();
    await file.write('{"prev":"","link":"aa"}\n');
    await file.close();
  });

const isRead = (page: Page) => page.waitForFunction(() => document.body.dataset.read === 'all');

interface Line {
  readonly database?: string;
  readonly store?: string;
  readonly file?: string;
  readonly setting?: string;
  readonly value?: unknown;
}

async function savedLines(page: Page): Promise<readonly Line[]> {
  const { bytes } = await handedOut(page, () => page.locator('[data-testid=rescue-save]').click());
  return bytes
    .toString('utf8')
    .trimEnd()
    .split('\n')
    .map((line): Line => JSON.parse(line));
}

describe('the rescue page', () => {
  test('saves every tap, every file and every setting into one file, with the host gone', async () => {
    const host = await openHost(inject('builtApp'));
    const { page, troubles } = await openDemo(browser, { url: host.url, ...withServiceWorker });
    await makeReadyOffline(page);
    const hands = maker(page);
    const code = await demoTray(hands);
    await hands.workOn('kit-parts', code);
    await hands.tap('pass', 3);
    await writePrivateFile(page);
    await hands.goTo('#/set-up/tablet');
    await host.close();
    await hands.at('rescue-link').click();
    await isRead(page);
    await page.locator('[data-testid=rescue-found]').filter({ hasText: 'tallywright-demo' }).waitFor();
    expect(await page.locator('[data-testid=rescue-unread]').isVisible()).toBe(false);
    const lines = await savedLines(page);
    const passes = lines.filter((line) => {
      const text = JSON.stringify(line.value);
      return line.store === 'events' && text.includes(`"code":"${code}"`) && text.includes('"kind":"passed"');
    });
    expect(passes).toHaveLength(3);
    expect(lines.some(({ file }) => file === 'journal/000001.lines')).toBe(true);
    expect(lines.some(({ setting }) => setting === 'tallywright preferences')).toBe(true);
    expect(troubles.filter((trouble) => !trouble.includes('ERR_CONNECTION_REFUSED'))).toEqual([]);
    await page.context().close();
  });

  test('makes nothing where there is nothing, and says so', async () => {
    const { page } = await openPage(browser, { url: `${inject('appUrl')}rescue.html` });
    await isRead(page);
    await page.locator('[data-testid=rescue-state]').filter({ hasText: 'Nothing of Tallywright' }).waitFor();
    const left = await page.evaluate(async () => ({
      databases: await indexedDB.databases(),
      settings: Object.keys(localStorage),
    }));
    expect(left).toEqual({ databases: [], settings: [] });
    await page.context().close();
  });

  test.each([
    ['light', 1280],
    ['dark', 1280],
    ['light', 390],
  ] as const)('has no fault that a machine can find (%s, %i px wide)', async (colorScheme, width) => {
    const { page, troubles } = await openDemo(browser, { colorScheme, viewport: { width, height: 900 } });
    await demoTray(maker(page));
    await page.goto(`${inject('appUrl')}rescue.html`);
    await isRead(page);
    await page.locator('[data-testid=rescue-show]').click();
    await page.locator('[data-testid=rescue-text]').waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
    const sizes = await page
      .locator('button:visible, a.button')
      .evaluateAll((all) => all.map((each) => each.getBoundingClientRect().height));
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(72);
    expect(troubles).toEqual([]);
    await page.context().close();
  });

  test('where nothing can be downloaded or shared, the text itself is offered', async () => {
    const { page } = await openDemo(browser);
    await demoTray(maker(page));
    await page.addInitScript(() => {
      Object.defineProperty(navigator, 'standalone', { value: true });
      Object.defineProperty(navigator, 'share', { value: undefined });
    });
    await page.goto(`${inject('appUrl')}rescue.html`);
    await isRead(page);
    expect(await page.locator('[data-testid=rescue-save]').isVisible()).toBe(false);
    await page.locator('[data-testid=rescue-show]').click();
    await page.locator('[data-testid=rescue-text]').waitFor();
    const text = await page.locator('[data-testid=rescue-text]').inputValue();
    expect(text.split('\n')[0]).toContain('"format":"tallywright-rescue-1"');
    // The demo shop comes as sealed runs: few lines, and long ones.
    expect(text).toContain('"store":"packs"');
    expect(text.length).toBeGreaterThan(50_000);
    await page.context().close();
  });
});

test('a store that cannot be opened at all is told on screen, leads to the rescue page, and the files are saved all the same', async () => {
  const profile = mkdtempSync(join(tmpdir(), 'tallywright-'));
  const open = () =>
    chromium.launchPersistentContext(profile, {
      executablePath: inject('browserPath'),
      args: [...browserFlags],
      locale: 'en-GB',
    });
  try {
    const before = await open();
    const first = await before.newPage();
    await first.goto(inject('appUrl'));
    const hands = maker(first);
    await hands.close('open-demo');
    await hands.at('stage-sand').waitFor();
    await demoTray(hands);
    await writePrivateFile(first);
    await before.close();

    const stores = join(profile, 'Default', 'IndexedDB');
    for (const name of readdirSync(stores)) {
      rmSync(join(stores, name), { recursive: true });
      writeFileSync(join(stores, name), 'no folder any more');
    }
    const after = await open();
    const page = await after.newPage();
    await page.goto(inject('appUrl'));
    await page.getByText('The shop could not be read').waitFor();
    expect(await maker(page).at('new-shop').count()).toBe(0);
    await maker(page).at('rescue-link').last().click();
    await isRead(page);
    await page.locator('[data-testid=rescue-unread]').filter({ hasText: 'tallywright' }).waitFor();
    const lines = await savedLines(page);
    expect(lines.some(({ file }) => file === 'journal/000001.lines')).toBe(true);
    expect(lines.some(({ setting }) => setting === 'tallywright preferences')).toBe(true);
    await after.close();
  } finally {
    rmSync(profile, { recursive: true, force: true });
  }
});

test('on a tablet that speaks German the page does so, too', async () => {
  const { page, troubles } = await openPage(browser, {
    url: `${inject('appUrl')}rescue.html`,
    locale: 'de-DE',
  });
  await isRead(page);
  await page.getByRole('heading', { name: 'Rettungsseite' }).waitFor();
  expect(await page.locator('[data-testid=rescue-state]').textContent()).toMatch(/gefunden/);
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.evaluate(() => localStorage.setItem('tallywright language', 'en'));
  await page.reload();
  await page.getByRole('heading', { name: 'Rescue page' }).waitFor();
  expect(troubles).toEqual([]);
});
