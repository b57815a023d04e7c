import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { readJournalLine } from '../../src/domain/log/journal-line.ts';
import { launchBrowser, openPage, watchTroubles, withServiceWorker } from '../support/browser.ts';
import { makeUpTrays, type StoryTrays, setUpShop } from '../support/first-ten-minutes.ts';
import { type Maker, maker } from '../support/maker.ts';

const store = 'tallywright';
let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

interface Tablet {
  readonly here: Maker;
  readonly context: BrowserContext;
  readonly trays: StoryTrays;
  readonly troubles: readonly string[];
}

/** A shop in which five pieces have passed. */
async function aTablet(): Promise<Tablet> {
  const { page, troubles } = await openPage(browser, withServiceWorker);
  const here = maker(page);
  const trays = await makeUpTrays(here, await setUpShop(here));
  await here.workOn('kit-parts', trays.beech[0]);
  await here.tap('pass', 5);
  await saved(here);
  return { here, context: page.context(), trays, troubles };
}

const saved = ({ at }: Maker) => at('saved-mark').filter({ hasText: 'Saved' }).waitFor();

/**
 * A page of the same origin that is not the app: nothing of the shop is open in it. It must be a file that is there:
 * the service worker answers for any other address with the app.
 */
async function bystander(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(new URL('favicon.svg', inject('appUrl')).href);
  expect(await page.evaluate(() => document.contentType)).toBe('image/svg+xml');
  return page;
}

/** Keeps the store busy from the page of a bystander, so that it takes no tap; the call that comes back lets go of it. */
async function holdStore(aside: Page): Promise<() => Promise<void>> {
  const flag = 'letGo';
  await aside.evaluate(
    ({ name, flag }) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open(name);
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const heads = db.transaction(['events', 'heads'], 'readwrite').objectStore('heads');
          // A transaction lasts for as long as it is asked for something.
          const ask = () => {
            heads.get('head').onsuccess = () => {
              resolve();
              if (flag in globalThis) db.close();
              else ask();
            };
          };
          ask();
        };
      }),
    { name: store, flag },
  );
  return () => aside.evaluate((name) => void Object.assign(globalThis, { [name]: true }), flag);
}

/** The links of all records of the database. */
function linksInStore(page: Page): Promise<string[]> {
  return page.evaluate(
    (name) =>
      new Promise<string[]>((resolve, reject) => {
        const opening = indexedDB.open(name);
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const reading = db.transaction('events').objectStore('events').getAll();
          reading.onerror = () => reject(reading.error);
          reading.onsuccess = () => {
            db.close();
            resolve(reading.result.map(({ link }: { link: string }) => link).sort());
          };
        };
      }),
    store,
  );
}

/** The lines of all files in the folder of the journal. */
function linesOnDisk(page: Page): Promise<string[]> {
  return page.evaluate(async (name) => {
    const root = await navigator.storage.getDirectory();
    const lines: string[] = [];
    for await (const handle of (await root.getDirectoryHandle(name)).values()) {
      if (handle.kind !== 'file') continue;
      const text = await (await (handle as FileSystemFileHandle).getFile()).text();
      lines.push(...text.split('\n').filter((line) => line !== ''));
    }
    return lines;
  }, store);
}

async function linksOnDisk(page: Page): Promise<string[]> {
  const links = (await linesOnDisk(page)).map((line) => {
    const said = readJournalLine(line);
    if (said.kind !== 'entry') throw new Error(`no entry: ${line}`);
    return said.link;
  });
  return links.toSorted();
}

function removeJournal(page: Page): Promise<string> {
  return page.evaluate(async (name) => {
    try {
      await (await navigator.storage.getDirectory()).removeEntry(name, { recursive: true });
      return 'removed';
    } catch (error) {
      return String(error);
    }
  }, store);
}

async function clear(page: Page, kinds: string): Promise<void> {
  const devtools = await page.context().newCDPSession(page);
  const { origin } = new URL(inject('appUrl'));
  await devtools.send('Storage.clearDataForOrigin', { origin, storageTypes: kinds });
  await devtools.detach();
}

test('each record of the database is a line of the journal, once', async () => {
  const { here, context, troubles } = await aTablet();
  const stored = await linksInStore(here.page);
  expect(stored.length).toBeGreaterThan(15);
  await expect.poll(() => linksOnDisk(here.page)).toEqual(stored);
  expect(troubles).toEqual([]);
  await context.close();
});

test('two windows that tap at once leave the lines of both', async () => {
  const { here, context, trays } = await aTablet();
  const before = (await linksInStore(here.page)).length;
  const page = await context.newPage();
  const troubles = watchTroubles(page, new URL(inject('appUrl')).origin);
  await page.goto(inject('appUrl'));
  const there = maker(page);
  await there.workOn('kit-parts', trays.plum[0]);
  for (let round = 0; round < 4; round += 1) await Promise.all([here.tap('pass'), there.tap('pass')]);
  for (const window of [here, there]) await saved(window);
  const stored = await linksInStore(page);
  expect(stored.length).toBeGreaterThanOrEqual(before + 8);
  await expect.poll(() => linksOnDisk(page)).toEqual(stored);
  expect(troubles).toEqual([]);
  await context.close();
});

/** The app in a new window, as at its next start. */
async function startAgain(context: BrowserContext) {
  const page = await context.newPage();
  const troubles = watchTroubles(page, new URL(inject('appUrl')).origin);
  await page.goto(inject('appUrl'));
  return { page, troubles, again: maker(page) };
}

test('a database that went while the app was shut is there again at the next start, and it is said', async () => {
  const { here, context, trays } = await aTablet();
  const stored = await linksInStore(here.page);
  await expect.poll(() => linksOnDisk(here.page)).toEqual(stored);
  const aside = await bystander(context);
  await here.page.close();
  await clear(aside, 'indexeddb');
  const { page, troubles, again } = await startAgain(context);
  await again.at('healed').waitFor();
  await again.workOn('kit-parts', trays.beech[0]);
  expect(await again.left()).toBe(5);
  expect(await linksInStore(page)).toEqual(expect.arrayContaining(stored));
  expect(await again.at('loss').count()).toBe(0);
  await again.tap('pass');
  await saved(again);
  const now = await linksInStore(page);
  await expect.poll(() => linksOnDisk(page)).toEqual(now);
  expect(troubles).toEqual([]);
  await context.close();
});

test('a tap that its window could not store before it went is put back at the next start, and a window that was open shows it', async () => {
  const { here, context, trays } = await aTablet();
  const open = await context.newPage();
  await open.goto(inject('appUrl'));
  const watching = maker(open);
  await watching.workOn('kit-parts', trays.beech[0]);
  expect(await watching.left()).toBe(5);
  const aside = await bystander(context);
  const letGo = await holdStore(aside);
  await here.page.evaluate(() => {
    void navigator.locks.request('here', () => new Promise(() => undefined));
  });
  await here.tap('pass');
  await here.at('not-saved').waitFor();
  await here.page.close();
  // The browser lets go of what a window waits for a moment after it has closed it: else it could still store the tap.
  await aside.evaluate(() => navigator.locks.request('here', () => undefined));
  await letGo();
  const { troubles, again } = await startAgain(context);
  await again.at('healed').waitFor();
  await again.workOn('kit-parts', trays.beech[0]);
  await expect.poll(again.left, { timeout: 10_000 }).toBe(4);
  await expect.poll(watching.left, { timeout: 10_000 }).toBe(4);
  expect(troubles).toEqual([]);
  await context.close();
});

test('a journal that went is written anew at the next start, and nobody is bothered with it', async () => {
  const { here, context, trays } = await aTablet();
  const stored = await linksInStore(here.page);
  const aside = await bystander(context);
  await here.page.close();
  // The worker of the window that went holds its file for a moment longer, and the browser lets no held file be removed.
  await expect.poll(() => removeJournal(aside), { timeout: 10_000 }).toBe('removed');
  const page = await context.newPage();
  await page.goto(inject('appUrl'));
  const again = maker(page);
  await again.workOn('kit-parts', trays.beech[0]);
  await expect.poll(() => linksOnDisk(page).catch(() => [])).toEqual(stored);
  for (const id of ['healed', 'loss', 'suspect']) expect(await again.at(id).count(), id).toBe(0);
  await context.close();
});
