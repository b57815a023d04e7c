/** Three tablets of one shop and a real broker, which loses lines, its life and its data while they are tapped. */
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { serveBuild } from '../../.ci/serve-build.mjs';
import { seededRandom } from '../../src/domain/chance/seeded-random.ts';
import { joiningLink } from '../../src/replication/joining-link.ts';
import { type Broker, startBroker } from '../support/broker.ts';
import { launchBrowser, type OpenPage, openPage } from '../support/browser.ts';
import { makeUpTrays, setUpShop } from '../support/first-ten-minutes.ts';
import { holdingOfPage } from '../support/holding-of-page.ts';
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
const opened: OpenPage[] = [];
afterEach(async () => {
  for (const { page } of opened.splice(0)) await page.context().close();
});

const random = seededRandom(seedFrom(process.env, 1));

/** A line that was cut is told of by the browser, and by nothing else on the console. */
const aboutLines = /WebSocket connection to|broken close frame/;
const realTroubles = ({ troubles }: OpenPage) => troubles.filter((trouble) => !aboutLines.test(trouble));

type Tablet = OpenPage & { readonly hand: Maker };

/** A tablet that joins by the invitation in its address: with the shop that was set up on it, or without one, at its first start. */
async function aTablet(prepare?: (hand: Maker) => Promise<void>): Promise<Tablet> {
  const tablet = await openPage(browser, { url: host.url });
  opened.push(tablet);
  const hand = maker(tablet.page);
  await prepare?.(hand);
  const address = `ws://127.0.0.1:${host.port}/sync`;
  const link = joiningLink({ address, shop: testShop, key: testKey }, host.url);
  await tablet.page.evaluate((to) => location.assign(to), link);
  await hand.tap('join-go');
  await tablet.page.locator('[data-testid=replica-status][data-kind=up-to-date]').waitFor();
  // The key is left in no address.
  expect(tablet.page.url()).not.toContain('join/');
  return { ...tablet, hand };
}

async function untilSame(tablets: readonly Tablet[], isSo = (_entries: number) => true): Promise<number> {
  let held: readonly string[] = [];
  // Only ends a run that hangs, and says where it stood.
  for (let look = 0; look < 300; look += 1) {
    held = await Promise.all(tablets.map(({ page }) => holdingOfPage(page)));
    const entries = Number(held[0]?.split(' ')[0]);
    if (new Set(held).size === 1 && isSo(entries)) return entries;
    await new Promise((resolve) => setTimeout(resolve, 250));
  }
  throw new Error(`they do not hold the same: ${held.join(', ')}`);
}

/** Taps as a maker does, one pass after another, each taken back now and then. */
async function tapAlong({ hand }: Tablet, taps: number): Promise<void> {
  for (let tap = 0; tap < taps; tap += 1) await hand.tap(tap % 3 === 2 ? 'undo' : 'pass');
}

const leftOn = ({ hand }: Tablet) => hand.at('stage-left').locator('.figures').textContent();

test('three tablets hold the same, whatever becomes of lines and broker; a last piece that two tap stands below zero on both', async () => {
  let code = '';
  const first = await aTablet(async (hand) => {
    const { beech } = await setUpShop(hand);
    await hand.goTo('#/trays/new');
    await hand.tap(beech);
    await hand.at('make-pieces').fill('24');
    await hand.at('make-count').fill('1');
    await hand.close('make-save');
    code = await hand.figure('made-code');
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
