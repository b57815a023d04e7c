import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { demoShop } from '../../shared/demo/demo-shop.ts';
import labelSizes from '../../shared/label-sizes.json';
import { languagePlace, mirrored } from '../../src/words/locale.ts';
import { languageNames } from '../../src/words/other-language.ts';
import { accessibilityFaults, launchBrowser, openDemo, openPage } from '../support/browser.ts';
import { maker } from '../support/maker.ts';
import { demoPlaces, showAll } from '../support/walk-demo.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** Every place is looked at by a machine, one after the other: minutes where much else runs (ms). */
const aLongWalk = 480_000;

const german = { locale: 'de-AT', timezoneId: 'Europe/Vienna' };

test('a browser that wants German is answered in German, until the tablet is set to English', async () => {
  const { page, troubles } = await openPage(browser, german);
  const { at, close, goTo } = maker(page);
  await at('new-shop').filter({ hasText: 'Neue Werkstatt' }).waitFor();
  expect(await page.locator('html').getAttribute('lang')).toBe('de');
  await close('new-shop');
  await goTo('#/bench');
  await at('stage-rough-turn').filter({ hasText: 'Schruppen' }).waitFor();

  await goTo('#/set-up/tablet');
  await close('language-en');
  await page.getByRole('heading', { name: 'This tablet' }).waitFor();
  expect(await page.locator('html').getAttribute('lang')).toBe('en-GB');
  // What the shop began with is its own by now.
  await goTo('#/bench');
  await at('stage-rough-turn').filter({ hasText: 'Schruppen' }).waitFor();
  await page.reload();
  await page.getByRole('heading', { name: 'Bench' }).waitFor();
  expect(troubles).toEqual([]);
});

test('numbers, days and money are written as in the country of the browser', async () => {
  const { page } = await openDemo(browser, german);
  const { goTo } = maker(page);
  await goTo('#/plan/cost');
  await page.locator('main', { hasText: /\d,\d\d/ }).waitFor();
  expect(await page.locator('main').textContent()).not.toMatch(/\d\.\d\d\b/);
  await goTo('#/day');
  // Austrian for Monday to Sunday, by the days' short names of CLDR.
  await page.locator('main', { hasText: /(Mo|Di|Mi|Do|Fr|Sa|So)\.?, / }).waitFor();
});

test(
  'in German no place has a fault that a machine can find, nor scrolls sideways on a phone',
  async () => {
    const { page, troubles } = await openDemo(browser, { ...german, size: 'phone' });
    const faults: string[] = [];
    await walk(page, async (place) => {
      for (const fault of await accessibilityFaults(page)) faults.push(`${place}: ${fault}`);
    });
    expect({ faults, troubles }).toEqual({ faults: [], troubles: [] });
  },
  aLongWalk,
);

test(
  'from right to left every place stands, and every text that is no name of the shop is reached by a language',
  async () => {
    const { page, troubles } = await openDemo(browser, { size: 'phone' });
    await page.evaluate(([place, language]) => localStorage.setItem(place, language), [
      languagePlace,
      mirrored,
    ] as const);
    await page.reload();
    await page.locator('html[dir=rtl]').waitFor();
    const own = knownWords();
    const missed: string[] = [];
    await walk(page, async (place) => {
      const unreached = (await textsUnturned(page)).flatMap((text) =>
        (text.match(/\p{L}{2,}/gu) ?? []).filter((word) => !own.has(word.toLowerCase())),
      );
      for (const word of new Set(unreached)) missed.push(`${place}: ${word}`);
    });
    expect({ missed, troubles }).toEqual({ missed: [], troubles: [] });
  },
  aLongWalk,
);

/** Goes to every place, and to a stage screen in the end; throws where one is wider than the screen. */
async function walk(page: Page, look: (place: string) => Promise<void>): Promise<void> {
  const { width = 0, height = 0 } = page.viewportSize() ?? {};
  const { goTo } = maker(page);
  const wide: string[] = [];
  for (const place of demoPlaces) {
    await page.setViewportSize({ width, height });
    await goTo(place);
    await showAll(page, width);
    await look(place);
    const beyond = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    if (beyond > 0) wide.push(`${place}: ${beyond} px wider than the screen`);
  }
  await page.setViewportSize({ width, height });
  await goTo('#/bench/sand');
  await page.locator('[data-testid^=bench-tray-]').first().click();
  await page.locator('[data-testid=stage-screen]').waitFor();
  await look('stage screen');
  expect(wide).toEqual([]);
}

/** What no language has: what people wrote in the demo, names of days and months, of languages, of sizes of label. */
function knownWords(): ReadonlySet<string> {
  const texts = Object.values(languageNames).concat(labelSizes.sizes.map(({ value }) => value.name));
  for (let day = 0; day < 366; day += 1)
    texts.push(new Date(86_400_000 * day).toLocaleDateString('en-GB', { weekday: 'short', month: 'short' }));
  const collect = (value: unknown): void => {
    if (typeof value === 'string') texts.push(value);
    else if (typeof value === 'object' && value !== null) Object.values(value).forEach(collect);
  };
  collect(demoShop({ now: Date.now() }));
  return new Set(texts.flatMap((text) => text.toLowerCase().match(/\p{L}{2,}/gu) ?? []));
}

/** All that is read or read out on the page, without what stands in the marks of the mirrored language. */
function textsUnturned(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const turned = /\u202e[^\u202c]*\u202c/gu;
    const texts: string[] = [];
    const nodes = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = nodes.nextNode(); node; node = nodes.nextNode())
      if (!node.parentElement?.closest('script, style, noscript, [data-testid=shop-zone]'))
        texts.push(node.textContent ?? '');
    for (const element of document.querySelectorAll('[aria-label], [title], [alt], [placeholder]'))
      for (const name of ['aria-label', 'title', 'alt', 'placeholder'])
        texts.push(element.getAttribute(name) ?? '');
    return texts.map((text) => text.replace(turned, ''));
  });
}
