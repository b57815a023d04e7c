/** Three tablets of one shop and a real broker, which loses lines, its life and its data while they are tapped. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { serveBuild } from '../../.ci/serve-build.mjs';
import { seededRandom } from '../../src/domain/chance/seeded-random.ts';
import { joiningLink } from '../../src/replication/joining-link.ts';
import { type Broker, startBroker } from '../support/broker.ts';
import { launchBrowser } from '../support/browser.ts';
import { makeUpTrays, setUpShop } from '../support/first-ten-minutes.ts';
import {
  joinedTablet,
  leftOn,
  realTroubles,
  shopWithOneTray,
  standing,
  type Tablet,
  untilSame,
} from '../support/joined-tablets.ts';
import { type Maker, maker } from '../support/maker.ts';
import { file, turnedJpeg, upright } from '../support/pictures.ts';
import { testKey, testShop } from '../support/replicas.ts';
import { seedFrom } from '../support/seed.ts';

let browser: Browser;
let broker: Broker;
let host: Awaited<ReturnType<typeof serveBuild>>;
beforeAll(async () => {
  browser = await launchBrowser();
  broker = await startBroker({ shop: testShop, key: testKey });
  host = await serveBuild({
    folder: inject('builtApp'),
    under: '/shop/',
    broker: broker.webSocketPort,
  });
});
afterAll(async () => {
  await browser.close();
  await host.close();
  await broker.stop();
});

/** A tablet of one test would bring its shop into the next one. */
const opened: Tablet[] = [];
afterEach(async () => {
  for (const { page } of opened.splice(0)) await page.context().close();
});

const random = seededRandom(seedFrom(process.env, 1));

async function aTablet(prepare?: (hand: Maker) => Promise<void>): Promise<Tablet> {
  const address = `ws://127.0.0.1:${host.port}/sync`;
  const link = joiningLink({ address, shop: testShop, key: testKey }, host.url);
  const tablet = await joinedTablet(browser, { url: host.url, link, prepare });
  opened.push(tablet);
  return tablet;
}

/** Taps as a maker does, one pass after another, each taken back now and then. */
async function tapAlong({ hand }: Tablet, taps: number): Promise<void> {
  for (let tap = 0; tap < taps; tap += 1) await hand.tap(tap % 3 === 2 ? 'undo' : 'pass');
}

test('three tablets hold the same, whatever becomes of lines and broker; a last piece that two tap stands below zero on both', async () => {
  let code = '';
  const first = await aTablet(async (hand) => {
    code = await shopWithOneTray(hand, 24);
  });
  const others = [await aTablet(), await aTablet()];
  const all = [first, ...others];
  const begun = await untilSame(all, (entries) => entries > 0);
  expect(begun).toBeGreaterThan(20);

  for (const { hand } of all) await hand.workOn('kit-parts', code);
  let isTapping = true;
  const tapping = Promise.all(all.map((tablet) => tapAlong(tablet, 24))).finally(() => {
    isTapping = false;
  });
  const troubling = async () => {
    for (let trouble = 0; isTapping; trouble += 1) {
      await new Promise((resolve) => setTimeout(resolve, 200 + random() * 600));
      if (trouble === 3) await broker.kill();
      else if (trouble === 6) await broker.start();
      else if (trouble % 2) host.cutLines();
    }
    await broker.start();
  };
  await Promise.all([tapping, troubling()]);
  await untilSame(all);
  const taps = await untilSame(all);
  // 24 taps each, of which every one is an event, and a spell begun on each tablet.
  expect(taps).toBeGreaterThanOrEqual(begun + 3 * 24);

  // Each passed 16 and took 8 back: none of 24 is left.
  for (const tablet of all) await expect.poll(() => leftOn(tablet), { timeout: 60_000 }).toBe('0');

  // One comes back, and two tablets that do not reach each other pass the same last piece.
  await first.hand.tap('undo');
  for (const tablet of all) await expect.poll(() => leftOn(tablet), { timeout: 60_000 }).toBe('1');
  await broker.kill();
  for (const { hand } of others) await hand.tap('pass');
  for (const tablet of others) expect(await leftOn(tablet)).toBe('0');
  await broker.start();
  await untilSame(all, (entries) => entries >= taps + 3);
  for (const tablet of all) await expect.poll(() => leftOn(tablet), { timeout: 60_000 }).toMatch(/^[−-]1$/);

  // The broker loses its tail, and then all that it has.
  await broker.lose((at, last) => at > last - 5);
  host.cutLines();
  await others[0]?.hand.tap('undo');
  await untilSame(all, (entries) => entries >= taps + 4);
  await broker.removeStream();
  await broker.makeStream();
  host.cutLines();
  await others[1]?.hand.tap('undo');
  const held = await untilSame(all, (entries) => entries >= taps + 5);
  for (const tablet of all) await expect.poll(() => leftOn(tablet), { timeout: 60_000 }).toBe('1');

  // What it holds then is everything: a fourth tablet gets it from there.
  const newcomer = await aTablet();
  await untilSame([...all, newcomer], (entries) => entries >= held);
  for (const tablet of all) expect(realTroubles(tablet)).toEqual([]);
  for (const { page } of [...all, newcomer]) await page.context().close();
});

const replicaWorkers = (page: Page) => page.workers().filter((worker) => /replica-worker/.test(worker.url()));

test('of two windows of a tablet one meets the others, both show how it stands, and the second takes over', async () => {
  await broker.removeStream();
  await broker.makeStream();
  let code = '';
  const first = await aTablet(async (hand) => {
    code = await shopWithOneTray(hand, 24);
  });
  const other = await aTablet();
  const page = await first.page.context().newPage();
  await page.goto(`${host.url}#/set-up/tablets`);
  const second = { page, hand: maker(page) };
  await standing(second, 'up-to-date').waitFor();
  expect([first.page, page].map((each) => replicaWorkers(each).length)).toEqual([1, 0]);

  await broker.kill();
  await standing(second, 'unreachable').waitFor();
  await broker.start();
  await second.hand.tap('replica-again');
  await standing(second, 'up-to-date').waitFor();
  expect(replicaWorkers(page)).toEqual([]);

  await first.page.close();
  await expect.poll(() => replicaWorkers(page).length, { timeout: 60_000 }).toBe(1);
  await standing(second, 'up-to-date').waitFor();
  const before = await untilSame([second, other]);
  await other.hand.workOn('kit-parts', code);
  await other.hand.tap('pass', 2);
  await untilSame([second, other], (entries) => entries >= before + 2);
  await second.hand.workOn('kit-parts', code);
  expect(await leftOn(second)).toBe('22');

  // One that says nothing any more, as if it were frozen, loses the lock that it holds, and leaves the work to the next.
  const third = await first.page.context().newPage();
  await third.goto(`${host.url}#/set-up/tablets`);
  await standing({ page: third }, 'up-to-date').waitFor();
  expect(replicaWorkers(third)).toEqual([]);
  await page.evaluate(() => {
    BroadcastChannel.prototype.postMessage = () => undefined;
  });
  await expect.poll(() => replicaWorkers(third).length, { timeout: 120_000 }).toBe(1);
  await expect.poll(() => replicaWorkers(page).length, { timeout: 20_000 }).toBe(0);
  await standing({ page: third }, 'up-to-date').waitFor();
});

test('a photo that is taken on one tablet is seen on the others, but not on one that wants none until it does', async () => {
  await broker.removeStream();
  await broker.makeStream();
  host.cutLines();
  let code = '';
  const first = await aTablet(async (hand) => {
    const { beech } = await makeUpTrays(hand, await setUpShop(hand));
    code = beech[0];
  });
  const sees = await aTablet();
  const slow = await aTablet();
  await untilSame([first, sees, slow], (entries) => entries > 0);
  await slow.hand.goTo('#/set-up/tablets');
  await slow.hand.at('photos-too').locator('input[value=no]').check({ force: true });

  for (const { hand } of [first, sees, slow]) await hand.openTray(code);
  const jpeg = file('a.jpg', await turnedJpeg(first.page, 6));
  await first.hand.at('tray-photo-file-input').setInputFiles(jpeg);
  const picture = ({ hand }: Tablet) => hand.at('tray-photo-strip').locator('img');
  for (const tablet of [first, sees]) {
    await picture(tablet).waitFor({ timeout: 120_000 });
    // Decoded, not only fetched.
    expect(await picture(tablet).evaluate((img: HTMLImageElement) => img.naturalWidth)).toBe(upright.width);
  }
  const missing = slow.hand.at('tray-photo-strip').locator('.photo-missing').filter({ hasText: /./ });
  await missing.waitFor();

  await slow.hand.goTo('#/set-up/tablets');
  await slow.hand.at('photos-too').locator('input[value=yes]').check({ force: true });
  await slow.hand.openTray(code);
  await picture(slow).waitFor({ timeout: 120_000 });
  for (const tablet of [first, sees, slow]) expect(realTroubles(tablet)).toEqual([]);
});
