import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { serveBuild } from '../../.ci/serve-build.mjs';
import {
  accessibilityFaults,
  launchBrowser,
  makeReadyOffline,
  openDemo,
  openPage,
  type Size,
  withServiceWorker,
} from '../support/browser.ts';
import { maker } from '../support/maker.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** The title of the place that each chapter leads to. */
const places = {
  start: 'Route',
  variants: 'Variants',
  trays: 'Make up trays',
  bench: 'Bench',
  flaws: 'Flaw reasons',
  curing: 'What cures',
  check: 'Stages',
  counts: 'Day',
  stores: 'Stores',
  yield: 'Yield',
  plan: 'Forecast',
  shelf: 'Shelf',
  copies: 'Files',
  trouble: 'Rescue page',
} as const;
const names = Object.keys(places) as readonly (keyof typeof places)[];

async function inManual(size: Size = 'tablet') {
  const { page, troubles } = await openDemo(browser, { size });
  const hands = maker(page);
  await hands.goTo('#/set-up/manual');
  await hands.at('manual').waitFor();
  return { page, troubles, hands };
}

/** Scrolls to each picture, as a reader does, and tells what became of it. */
async function picturesOf(page: Page) {
  const pictures = page.locator('[data-testid=manual] img');
  for (const picture of await pictures.all()) {
    await picture.scrollIntoViewIfNeeded();
    await picture.evaluate((image: HTMLImageElement) => image.decode());
  }
  return pictures.evaluateAll((all) =>
    all.map((each) => {
      const image = each as HTMLImageElement;
      return { shown: image.naturalWidth > 0 && image.clientWidth > 0, alt: image.alt };
    }),
  );
}

/** As tall as the page, so that the bar of places covers nothing that scrolling would uncover. */
async function showAll(page: Page): Promise<void> {
  const tall = await page.evaluate(() => document.documentElement.scrollHeight);
  await page.setViewportSize({ width: page.viewportSize()?.width ?? 0, height: tall + 800 });
}

async function expectPictures(page: Page): Promise<void> {
  const pictures = await picturesOf(page);
  expect(pictures.map(({ shown }) => shown)).toEqual(names.map(() => true));
  for (const { alt } of pictures) expect(alt).not.toBe('');
}

describe('with no network at all and the host gone', () => {
  test('a newcomer reads the manual before there is a shop, and comes back to the start', async () => {
    const served = await serveBuild({ folder: inject('builtApp'), under: '/shop/' });
    const { page, troubles } = await openPage(browser, {
      size: 'phone',
      url: served.url,
      ...withServiceWorker,
    });
    await makeReadyOffline(page);
    await served.close();
    await page.reload();
    const { at } = maker(page);
    await at('to-manual').click();
    await at('manual').waitFor();
    await expectPictures(page);
    // No place can be gone to yet but the rescue page.
    const ways = page.locator('[data-testid^=manual-to-]');
    expect(await ways.evaluateAll((all) => all.map((way) => way.getAttribute('href')))).toEqual([
      'rescue.html',
    ]);
    expect(await accessibilityFaults(page)).toEqual([]);
    await ways.click();
    await page.getByRole('heading', { level: 1, name: places.trouble }).waitFor();
    await page.goBack();
    await at('manual-back').click();
    await at('new-shop').waitFor();
    expect(troubles).toEqual([]);
    await page.context().close();
  });
});

describe('every chapter', () => {
  test('leads to a place that is there, and back to where one has read', async () => {
    const { page, troubles, hands } = await inManual();
    const ways = page.locator('[data-testid^=manual-to-]');
    const found = await ways.evaluateAll((all) => all.map((way) => way.getAttribute('data-testid')));
    expect(found).toEqual(names.map((name) => `manual-to-${name}`));
    for (const name of names) {
      await hands.at(`manual-to-${name}`).click();
      const title = new RegExp(`^${places[name]}(:|$)`);
      await page.getByRole('heading', { level: 1, name: title }).waitFor();
      await page.goBack();
      await hands.at('manual').waitFor();
    }
    expect(troubles).toEqual([]);
    await page.context().close();
  });

  test('is reached by the keyboard from the contents, and the contents from it', async () => {
    const { page } = await inManual('phone');
    const focused = () => page.evaluate(() => document.activeElement?.textContent ?? '');
    const contents = page.locator('[data-testid=manual] nav a');
    const titles = await contents.allInnerTexts();
    expect(titles).toHaveLength(names.length);
    await contents.first().focus();
    for (let step = 0; step < 9; step += 1) await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => location.hash !== '#/set-up/manual');
    const heading = page.getByRole('heading', { level: 2, name: titles[9] ?? '', exact: true });
    await heading.waitFor();
    expect(await focused()).toBe(titles[9]);
    expect((await heading.boundingBox())?.y).toBeLessThan(844 / 2);
    // Its own links come next: to its place, then to the contents.
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => document.activeElement?.textContent === 'Contents');
    // The same chapter once more.
    await contents.nth(9).click();
    expect(await focused()).toBe(titles[9]);
    await page.context().close();
  });

  test('is opened by its own address', async () => {
    const { page, hands } = await inManual();
    await hands.goTo('#/set-up/manual/shelf');
    await page.reload();
    await page.waitForFunction(() => document.activeElement?.id === 'manual-shelf');
    expect((await page.locator('#manual-shelf').boundingBox())?.y).toBeLessThan(800 / 2);
    await page.context().close();
  });
});

describe.each(['phone', 'tablet'] as const)('on a %s', (size) => {
  test('all pictures are shown, nothing scrolls sideways, and headings follow their order', async () => {
    const { page, troubles } = await inManual(size);
    await expectPictures(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
    const levels = await page
      .locator('main :is(h1, h2, h3, h4)')
      .evaluateAll((all) => all.map(({ tagName }) => tagName));
    expect(levels).toEqual(['H1', 'H2', ...names.map(() => 'H2')]);
    expect(troubles).toEqual([]);
    await page.context().close();
  });

  test.each(['light', 'dark', 'glare'])('a machine finds no fault in the look “%s”', async (look) => {
    const { page, hands } = await inManual(size);
    await hands.goTo('#/set-up/tablet');
    await hands.at(`theme-${look}`).click();
    await hands.goTo('#/set-up/manual');
    await hands.at('manual').waitFor();
    expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe(look);
    await showAll(page);
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.context().close();
  });
});
