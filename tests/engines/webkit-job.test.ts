/** The main job in WebKit: a newcomer's first ten minutes, copies of them, and the app without its host. */
import { afterEach, expect, inject, test } from 'vitest';
import { serveBuild } from '../../.ci/serve-build.mjs';
import { expectTable } from '../support/expect-table.ts';
import {
  cutAndBore,
  glueUp,
  kitParts,
  makeUpTrays,
  setUpShop,
  splitAndRecount,
} from '../support/first-ten-minutes.ts';
import type { Maker } from '../support/maker.ts';
import { webkitTablet } from './webkit-tablet.ts';

const opened: { readonly close: () => Promise<void> }[] = [];
afterEach(async () => {
  for (const { close } of opened.splice(0)) await close();
});

async function aTablet(url = inject('appUrl')) {
  const tablet = await webkitTablet(url);
  opened.push(tablet);
  return tablet;
}

async function tellStory(hands: Maker): Promise<void> {
  const trays = await makeUpTrays(hands, await setUpShop(hands));
  await kitParts(hands, trays);
  await cutAndBore(hands, trays);
  await glueUp(hands, trays);
  await splitAndRecount(hands, trays);
}

test('the first ten minutes come to the numbers worked out by hand, also after a restart, and in a copy on another tablet', async () => {
  const { page, hands, handedOut } = await aTablet();
  await tellStory(hands);
  await expectTable(hands);
  expect(await page.troubles()).toEqual([]);
  await page.reload();
  await expectTable(hands);

  await hands.goTo('#/set-up/files');
  const { path } = await handedOut(() => hands.tap('save-copy'));
  const other = await aTablet();
  await other.hands.close('restore');
  await other.page.locator('[data-testid=restore-file]').setInputFiles(path);
  await other.hands.close('add-copy');
  // Where a tablet has no place for copies, as here, it asks before it adds.
  await other.page.locator('[data-testid=go-on], [data-testid=restored]').waitFor();
  if (await other.page.locator('[data-testid=go-on]').isVisible()) await other.hands.close('go-on');
  await other.hands.at('restored').waitFor();
  await other.hands.tap('restored-good');
  await expectTable(other.hands);
  expect(await page.troubles()).toEqual([]);
  expect(await other.page.troubles()).toEqual([]);
});

test('with the host gone the app is opened from the tablet, and the numbers are the same', async () => {
  const host = await serveBuild({ folder: inject('builtApp'), under: '/shop/' });
  const { page, hands } = await aTablet(host.url);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await host.close();
  await page.reload();
  await tellStory(hands);
  await page.reload();
  await expectTable(hands);
  expect(await page.troubles()).toEqual([]);
});

test('two windows of a tablet: a tap in one shows in the other, and each takes back what it tapped', async () => {
  const { page, hands } = await aTablet();
  const [code] = (await makeUpTrays(hands, await setUpShop(hands))).beech;
  await hands.workOn('kit-parts', code);
  const [first = ''] = await page.windows();
  const second = await page.openWindow();
  await page.switchTo(second);
  await page.goto(inject('appUrl'));
  await hands.workOn('kit-parts', code);
  await hands.tap('pass', 3);
  expect(await hands.left()).toBe(7);
  expect(await page.troubles()).toEqual([]);
  await page.switchTo(first);
  await expect.poll(hands.left, { timeout: 30_000 }).toBe(7);
  await hands.tap('pass');
  await hands.tap('undo');
  await expect.poll(hands.left, { timeout: 30_000 }).toBe(7);
  expect(await page.troubles()).toEqual([]);
});
