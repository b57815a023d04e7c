import type { Browser, Page } from 'playwright-core';
import { accessibilityFaults, openDemo, type Size } from './browser.ts';
import { maker } from './maker.ts';

/** A bar of places that a taller screen may show at its foot, in CSS pixels. */
const roomForPlaces = 200;

/** Every place of the demo, and the pages behind them. */
export const demoPlaces = [
  '#/bench',
  '#/bench/sand',
  '#/trays',
  '#/trays/new',
  '#/trays/scan',
  '#/trays/labels',
  '#/trays/cards',
  '#/trays/boxes',
  '#/stores',
  '#/stores/part/awl-core',
  '#/yield',
  '#/yield/chances',
  '#/yield/flow',
  '#/yield/flaws',
  '#/yield/signals',
  '#/yield/time',
  '#/yield/compare',
  '#/plan',
  '#/plan/today',
  '#/plan/forecast',
  '#/plan/what-if',
  '#/plan/starts',
  '#/plan/constraint',
  '#/plan/cost',
  '#/plan/review',
  '#/day',
  '#/shelf',
  '#/shelf/plum-copper',
  '#/shelf/listing',
  '#/set-up',
  '#/set-up/woods',
  '#/set-up/variants',
  '#/set-up/stages',
  '#/set-up/labels',
  '#/set-up/route',
  '#/set-up/tablet',
  '#/set-up/manual',
  '#/set-up/about',
] as const;

/** Goes to every place of the demo: what a machine finds against each, and what scrolls sideways; and the page's troubles. */
export async function walkDemo(browser: Browser, size: Size) {
  const { page, troubles } = await openDemo(browser, { size });
  const { width = 0, height: usual = 0 } = page.viewportSize() ?? {};
  const { at, goTo } = maker(page);
  const faults: string[] = [];
  for (const place of demoPlaces) {
    await page.setViewportSize({ width, height: usual });
    await goTo(place);
    await showAll(page, width);
    for (const fault of await accessibilityFaults(page)) faults.push(`${place}: ${fault}`);
    const beyond = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    if (beyond > 0) faults.push(`${place}: ${beyond} px wider than the screen`);
  }
  await page.setViewportSize({ width, height: usual });
  await goTo('#/bench/sand');
  await page.locator('[data-testid^=bench-tray-]').first().click();
  await at('stage-screen').waitFor();
  for (const fault of await accessibilityFaults(page)) faults.push(`stage screen: ${fault}`);
  await page.context().close();
  return { faults, troubles };
}

/** As tall as the page, so that the bar of places covers nothing that scrolling would uncover; charts come late. */
export async function showAll(page: Page, width: number): Promise<void> {
  for (let [tall, last] = [0, -1]; tall !== last; ) {
    last = tall;
    await page.waitForTimeout(150);
    await allDrawn(page);
    tall = await page.evaluate(() => document.querySelector('main')?.scrollHeight ?? 0);
    await page.setViewportSize({ width, height: tall + 4 * roomForPlaces });
  }
}

const allDrawn = (page: Page) =>
  page.waitForFunction(
    () => !document.querySelector('main[aria-busy=true], [role=application][aria-busy=true]'),
    undefined,
    { polling: 50 },
  );
