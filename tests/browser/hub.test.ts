/** The app as a shop's PC serves it: HTTPS by its own certificate, and the broker behind the same address. */
import { createHash, X509Certificate } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import {
  accessibilityFaults,
  launchBrowser,
  makeReadyOffline,
  openPage,
  withServiceWorker,
} from '../support/browser.ts';
import { openHub, type TestHub } from '../support/hub.ts';
import { aFolder } from '../support/hub-folder.ts';

const folder = aFolder();
let hub: TestHub;
let browser: Browser;

beforeAll(async () => {
  hub = await openHub(folder, { built: inject('builtApp') });
  // Stands for the root certificate in the tablet's store: Chromium looks for this key among those that signed the page's.
  const signing = new X509Certificate(readFileSync(join(hub.files.root, '..', 'intermediate.crt')));
  const key = createHash('sha256').update(signing.publicKey.export({ type: 'spki', format: 'der' }));
  browser = await launchBrowser({ flags: [`--ignore-certificate-errors-spki-list=${key.digest('base64')}`] });
});
afterAll(async () => {
  await browser?.close();
  await hub?.close();
});

/** What a page is told when it opens a socket at the broker: the broker speaks first (NATS protocol, INFO). */
const firstWord = (page: Page, address: string): Promise<string> =>
  page.evaluate(
    (url) =>
      new Promise<string>((resolve) => {
        const socket = new WebSocket(url);
        socket.onerror = () => resolve('refused');
        socket.onmessage = async ({ data }: MessageEvent<Blob>) => resolve((await data.text()).slice(0, 4));
      }),
    address,
  );

test('it is kept on the tablet, opens without the network, and reaches the broker within its policy', async () => {
  const { origin } = hub.now();
  const { page, troubles } = await openPage(browser, { url: `${origin}/`, ...withServiceWorker });
  await makeReadyOffline(page);
  expect(await firstWord(page, `${origin.replace('https', 'wss')}/sync`)).toBe('INFO');
  expect(troubles).toEqual([]);
  await page.context().setOffline(true);
  await page.reload();
  await page.locator('main:not([aria-busy=true])').waitFor();
  await page.context().close();
});

test('a page of another address is not let through to the broker', async () => {
  const { page } = await openPage(browser, { url: 'about:blank' });
  expect(await firstWord(page, `${hub.now().origin.replace('https', 'wss')}/sync`)).toBe('refused');
  await page.context().close();
});

test.each(['phone', 'tablet'] as const)(
  'the page about the certificate can be read by everybody, on a %s',
  async (size) => {
    const { page, troubles } = await openPage(browser, { size, url: hub.now().certificateAddress });
    for (const summary of await page.locator('summary').all()) await summary.click();
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
    expect(await page.getByTestId('fingerprint').textContent()).toBe(
      hub.now().sha256.replace(/((?:..:){7}..):/g, '$1'),
    );
    expect(troubles).toEqual([]);
    await page.context().close();
  },
);
