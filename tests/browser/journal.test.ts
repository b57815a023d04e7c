import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { build } from 'vite';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Served, serveBuild } from '../../.ci/serve-build.mjs';
import { chained } from '../../src/domain/log/chain.ts';
import { holdingOf } from '../../src/domain/log/holding.ts';
import { launchBrowser } from '../support/browser.ts';
import { foreignLog, spellDraft } from '../support/drafts.ts';
import { longLog } from '../support/long-logs.ts';

const entries = chained(foreignLog());
const links = entries.map(({ link }) => link);
const act = { act: 'tap-1', drafts: [spellDraft('turn')], now: 1000 };

const folder = mkdtempSync(join(tmpdir(), 'tallywright-journal-'));
let served: Served;
let browser: Browser;
beforeAll(async () => {
  await build({
    configFile: false,
    logLevel: 'warn',
    root: fileURLToPath(new URL('journal-page', import.meta.url)),
    build: { outDir: folder, emptyOutDir: true, target: 'es2022' },
    worker: { format: 'es' },
  });
  served = await serveBuild({ folder });
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser.close();
  await served.close();
  rmSync(folder, { recursive: true, force: true });
});

async function openWindow(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(served.url);
  await page.waitForFunction(() => window.journal !== undefined);
  return page;
}
async function aTablet() {
  const context = await browser.newContext();
  return { context, here: await openWindow(context) };
}
const look = (page: Page) => page.evaluate(() => window.journal.twin.look());
const add = (page: Page, some = entries) =>
  page.evaluate((added) => window.journal.twin.add({ runs: [], entries: added }), some);
/** The entries with these links that a window finds in the journal. */
async function entriesOf(page: Page, wanted = links) {
  const there = new Map(
    (await page.evaluate(() => window.journal.entries())).map((entry) => [entry.link, entry]),
  );
  return wanted.flatMap((link) => there.get(link) ?? []);
}
const files = (page: Page) => page.evaluate(() => window.journal.files());

test('a journal on the disk gives back what was added, in this window and after a reload', async () => {
  const { context, here } = await aTablet();
  await add(here);
  await here.evaluate((kept) => window.journal.twin.keepAct(kept), act);
  expect(await entriesOf(here)).toEqual(entries);
  await here.reload();
  await here.waitForFunction(() => window.journal !== undefined);
  expect(await look(here)).toEqual({
    reach: 'all',
    holding: holdingOf(links),
    unreadable: 0,
    unsettled: [act],
  });
  expect(await entriesOf(here)).toEqual(entries);
  await here.evaluate(() => window.journal.twin.settleAct('tap-1'));
  expect((await look(here)).unsettled).toEqual([]);
  await context.close();
});

test('two windows add at once, each to a segment that it holds, and each reads what the other has added', async () => {
  const { context, here } = await aTablet();
  const there = await openWindow(context);
  const each = (page: Page, odd: number) =>
    page.evaluate(
      (some) => Promise.all(some.map((entry) => window.journal.twin.add({ runs: [], entries: [entry] }))),
      entries.filter((_, at) => at % 2 === odd),
    );
  await Promise.all([each(here, 0), each(there, 1)]);
  expect(await files(here)).toHaveLength(2);
  for (const page of [here, there]) {
    expect((await look(page)).holding).toEqual(holdingOf(links));
    expect(await entriesOf(page)).toEqual(entries);
  }
  await context.close();
});

test('a window that crashes in the middle of adding loses nothing that it had been told is kept', async () => {
  const { context, here } = await aTablet();
  const told: string[] = [];
  await here.exposeFunction('told', (link: string) => told.push(link));
  const crashing = here
    .evaluate(async (some) => {
      for (;;)
        for (const entry of some) {
          await window.journal.twin.add({ runs: [], entries: [entry] });
          await (window as unknown as { told: (link: string) => Promise<void> }).told(entry.link);
        }
    }, entries)
    .catch(() => undefined);
  while (told.length < 7) await new Promise((resolve) => setTimeout(resolve, 1));
  const devtools = await context.newCDPSession(here);
  await Promise.race([devtools.send('Page.crash').catch(() => undefined), crashing]);
  const there = await openWindow(context);
  const { unreadable } = await look(there);
  const held = (await entriesOf(there)).map(({ link }) => link);
  expect(held).toEqual(expect.arrayContaining(told));
  expect(unreadable).toBeLessThanOrEqual(1);
  await add(there);
  expect((await look(there)).holding).toEqual(holdingOf(links));
  await context.close();
});

test('a segment that is cut or has a bit flipped on the disk loses those lines alone', async () => {
  const { context, here } = await aTablet();
  await add(here);
  await here.close();
  const there = await openWindow(context);
  const [name = ''] = await files(there);
  await there.evaluate((file) => {
    return window.journal.change(file, (bytes) => {
      bytes[200] = (bytes[200] ?? 0) ^ 1;
      return bytes.slice(0, -3);
    });
  }, name);
  expect(await look(there)).toMatchObject({ holding: holdingOf(links.slice(1, -1)), unreadable: 2 });
  expect(await entriesOf(there)).toEqual(entries.slice(1, -1));
  await context.close();
});

test('the tenth start folds the segments of windows that are shut into one, beside that of an open window', async () => {
  const { context, here } = await aTablet();
  await add(here, entries.slice(0, 1));
  for (const entry of entries.slice(1, 10)) {
    const page = await openWindow(context);
    await add(page, [entry]);
    await page.close();
  }
  expect(await files(here)).toHaveLength(10);
  const there = await openWindow(context);
  expect((await look(there)).holding).toEqual(holdingOf(links.slice(0, 10)));
  await expect.poll(() => files(there)).toHaveLength(2);
  expect((await look(here)).holding).toEqual(holdingOf(links.slice(0, 10)));
  expect(await entriesOf(here, links.slice(0, 10))).toEqual(entries.slice(0, 10));
  await add(here, entries.slice(10));
  expect((await look(there)).holding).toEqual(holdingOf(links));
  await context.close();
});

test('what comes packed lies in a packed file; when a bit flips there, a start finds it and holds it no longer', async () => {
  const { context, here } = await aTablet();
  const long = longLog(600);
  await here.evaluate((some) => window.journal.addPacked(some), long);
  const [name = '', ...more] = await files(here);
  expect([name.startsWith('packed-'), more]).toEqual([true, []]);
  await here.reload();
  await here.waitForFunction(() => window.journal !== undefined);
  expect((await look(here)).holding).toEqual(holdingOf(long.map(({ link }) => link)));
  expect(
    await entriesOf(
      here,
      long.map(({ link }) => link),
    ),
  ).toEqual(long);
  await here.evaluate((file) => {
    return window.journal.change(file, (bytes) => {
      const middle = bytes.length >> 1;
      bytes[middle] = (bytes[middle] ?? 0) ^ 1;
      return bytes;
    });
  }, name);
  await here.reload();
  await here.waitForFunction(() => window.journal !== undefined);
  expect((await look(here)).holding.entries).toBe(600);
  await expect.poll(() => files(here)).toEqual([`aside-${name}`]);
  expect((await look(here)).holding.entries).toBe(0);
  await here.evaluate((some) => window.journal.addPacked(some), long);
  expect((await look(here)).holding.entries).toBe(600);
  await context.close();
});

test('a file on the shelf is replaced whole, and found again by another window', async () => {
  const { context, here } = await aTablet();
  await here.evaluate(async () => {
    await window.journal.shelf.write('daily-1.twb', new Uint8Array(9_000_000).fill(7));
    await window.journal.shelf.write('daily-1.twb', Uint8Array.of(1, 2, 3));
  });
  const there = await openWindow(context);
  expect(
    await there.evaluate(async () => {
      const { shelf } = window.journal;
      const names = await shelf.names();
      const bytes = await shelf.read('daily-1.twb');
      await shelf.remove('daily-1.twb');
      return { names, bytes: [...(bytes ?? [])], after: await shelf.names() };
    }),
  ).toEqual({ names: ['daily-1.twb'], bytes: [1, 2, 3], after: [] });
  await context.close();
});

test('a journal of 100,000 entries is read at a start without a silence that would end its worker', async () => {
  const { context, here } = await aTablet();
  await add(here, entries.slice(0, 1));
  await here.close();
  const there = await openWindow(context);
  const [name = ''] = await files(there);
  // As many lines as that, most of them the same: the work of reading and checking each is that of a long log.
  await there.evaluate((file) => {
    return window.journal.change(file, (bytes) => {
      const many = new Uint8Array(bytes.length * 100_000);
      for (let at = 0; at < many.length; at += bytes.length) many.set(bytes, at);
      return many;
    });
  }, name);
  expect(await look(there)).toMatchObject({ holding: { entries: 1 }, unreadable: 0 });
  await context.close();
});
