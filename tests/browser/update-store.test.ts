import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchBrowser, openDemo, openPage } from '../support/browser.ts';
import { demoTray } from '../support/demo-tray.ts';
import { maker } from '../support/maker.ts';

/** What must be said is said within this time (ms). */
const soon = 2000;

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** A second window that runs no app, and does with the database what another version might. */
async function besideIt(page: Page): Promise<Page> {
  const other = await page.context().newPage();
  await other.goto(`${inject('appUrl')}rescue.html`);
  await other.waitForFunction(() => document.body.dataset.read === 'all');
  return other;
}

/** The keys of the events that the rescue page finds. */
async function eventsInRescue(page: Page): Promise<readonly unknown[]> {
  await page.goto(`${inject('appUrl')}rescue.html`);
  await page.waitForFunction(() => document.body.dataset.read === 'all');
  await page.locator('[data-testid=rescue-show]').click();
  const text = page.locator('[data-testid=rescue-text]');
  await text.waitFor();
  const lines = (await text.inputValue()).trim().split('\n');
  return lines.map((line) => JSON.parse(line)).flatMap(({ store, key }) => (store === 'events' ? [key] : []));
}

test('a newer version brings another layout: the old window says so at once, writes nothing more, and every record is saved', async () => {
  const { page } = await openDemo(browser);
  const hands = maker(page);
  const code = await demoTray(hands);
  await hands.workOn('kit-parts', code);
  await hands.tap('pass', 2);
  const before = await eventsInRescue(await besideIt(page));

  const newer = await besideIt(page);
  await newer.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('tallywright-demo', 999);
        request.onsuccess = () => {
          request.result.close();
          resolve();
        };
        request.onerror = () => reject(request.error);
      }),
  );
  await page.getByText('Updated in another window').waitFor({ timeout: soon });
  await page.getByRole('button', { name: 'Reload' }).click();
  // This version can only look now: what it shows is right, and a tap changes nothing.
  await hands.at('stage-screen').waitFor();
  expect(await hands.left()).toBe(8);
  await hands.tap('pass');
  expect(await hands.left()).toBe(8);
  await hands.goTo('#/bench');
  await page.getByText('Only looking: a newer version has been here').waitFor();
  await page.goto('about:blank');
  expect(await eventsInRescue(page)).toEqual(before);
  await page.context().close();
});

test('an old window keeps the old layout: the new one says so at once, waits, and opens with every record when that is closed', async () => {
  const { page: old } = await openPage(browser, { url: `${inject('appUrl')}rescue.html` });
  const { events: log }: { events: { station: string; seq: number; stamp: unknown }[] } = JSON.parse(
    readFileSync('shared/old-logs/format-1.json', 'utf8'),
  );
  const last = log.at(-1);
  // As the first layout kept it, by a window that does not hear that another wants to change it.
  await old.evaluate(
    ({ events, head }) =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('tallywright', 1);
        request.onupgradeneeded = () => {
          const store = request.result.createObjectStore('events', { keyPath: ['station', 'seq'] });
          store.createIndex('byTray', 'trays', { multiEntry: true });
          request.result.createObjectStore('heads').put(head, 'head');
          request.result.createObjectStore('snapshots');
          for (const event of events) store.put({ station: event.station, seq: event.seq, trays: [], event });
        };
        request.onsuccess = () => {
          Object.assign(globalThis, { kept: request.result });
          resolve();
        };
        request.onerror = () => reject(request.error);
      }),
    { events: log, head: { station: last?.station, seq: last?.seq, stamp: last?.stamp } },
  );
  const page = await old.context().newPage();
  await page.goto(inject('appUrl'));
  await page.getByText('Another window still runs the older version').waitFor({ timeout: soon });
  expect(await maker(page).at('new-shop').count()).toBe(0);
  await old.evaluate(() => (Reflect.get(globalThis, 'kept') as IDBDatabase).close());
  await page.getByRole('heading', { level: 1, name: 'Bench' }).waitFor();
  // The letter of the tablet may be written besides, as at any start.
  expect(await eventsInRescue(page)).toEqual(
    expect.arrayContaining(log.map(({ station, seq }) => [station, seq])),
  );
  await page.context().close();
});
