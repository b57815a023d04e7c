/** Every place of the demo shop in WebKit, at three sizes, and in each look. */
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { demoPlaces } from '../support/walk-demo.ts';
import { screens, webkitTablet } from './webkit-tablet.ts';

let tablet: Awaited<ReturnType<typeof webkitTablet>>;
beforeAll(async () => {
  tablet = await webkitTablet(inject('appUrl'));
  await tablet.hands.close('open-demo');
  await tablet.hands.at('stage-sand').waitFor();
});
afterAll(() => tablet?.close());

/** Waits until charts and tables that come late are there, too. */
const allDrawn = () =>
  tablet.page.waitForFunction(
    () => !document.querySelector('main[aria-busy=true], [role=application][aria-busy=true]'),
  );

test.each(Object.entries(screens))(
  'every place opens, and none is wider than the screen (%s)',
  async (_name, size) => {
    const { page, hands } = tablet;
    await page.setViewportSize(size);
    const faults: string[] = [];
    for (const place of demoPlaces) {
      await hands.goTo(place);
      await allDrawn();
      const { beyond, words } = await page.evaluate(() => ({
        beyond: document.documentElement.scrollWidth - innerWidth,
        words: document.querySelector('main')?.textContent.trim().length ?? 0,
      }));
      if (beyond > 0) faults.push(`${place}: ${beyond} px wider than the screen`);
      if (words === 0) faults.push(`${place}: nothing is shown`);
    }
    expect(faults).toEqual([]);
    expect(await page.troubles()).toEqual([]);
  },
);

test('each look has colours of its own, and is there again after a restart', async () => {
  const { page, hands } = tablet;
  const colours = new Map<string, string>();
  for (const theme of ['light', 'dark', 'glare']) {
    await hands.goTo('#/set-up/tablet');
    await page.locator(`[data-testid=theme] input[value=${theme}]`).check();
    await page.waitForFunction((wanted) => document.documentElement.dataset.theme === wanted, theme);
    await page.reload();
    await page.waitForFunction((wanted) => document.documentElement.dataset.theme === wanted, theme);
    colours.set(
      theme,
      await page.evaluate(() => {
        const { color, backgroundColor } = getComputedStyle(document.body);
        return `${color} on ${backgroundColor}`;
      }),
    );
  }
  expect(new Set(colours.values()).size).toBe(3);
  expect(await page.troubles()).toEqual([]);
});
