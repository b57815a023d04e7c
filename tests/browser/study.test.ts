import { imageSize } from 'image-size';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser, openDemo } from '../support/browser.ts';
import { handedOut } from '../support/handed-out.ts';
import { maker } from '../support/maker.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** The demo shop, whose log holds one change to be found. */
async function demoInHand() {
  const opened = await openDemo(browser);
  return { ...opened, ...maker(opened.page) };
}

/** How many pixels of the chart are drawn upon. */
function inkOf(page: Page): Promise<number> {
  return page.locator('[data-testid=series-chart] canvas').evaluate((drawn) => {
    if (!(drawn instanceof HTMLCanvasElement)) return 0;
    const drawing = drawn.getContext('2d')?.getImageData(0, 0, drawn.width, drawn.height);
    return drawing?.data.filter((value, at) => at % 4 === 3 && value > 0).length ?? 0;
  });
}

test('the one change of the demo is found beside the window, charted, and leaves the list when it is answered', async () => {
  const { page, at, tap, close, goTo, troubles } = await demoInHand();
  await goTo('#/yield');
  await tap('study-to-signals');
  await at('signal-0').waitFor();
  expect(page.workers().length).toBeGreaterThan(0);
  expect(await page.locator('article[data-testid^=signal-]').count()).toBe(1);
  expect(await at('signal-0').textContent()).toMatch(/\d+ in \d+ before .+, \d+ in \d+ since/);

  await tap('signal-0-chart');
  await at('series-chart').locator('canvas').waitFor();
  expect(await inkOf(page)).toBeGreaterThan(1000);
  const reading = at('series-chart').locator('[aria-live]');
  await at('series-chart')
    .getByRole('application')
    .or(at('series-chart').locator('[tabindex="0"]'))
    .first()
    .focus();
  await page.keyboard.press('Home');
  const first = await reading.textContent();
  await page.keyboard.press('ArrowRight');
  expect(await reading.textContent()).not.toBe(first);
  await page.keyboard.press('Escape');

  await tap('signal-0-answer');
  await at('mark-note').fill('re-ground the gouge');
  await close('mark-save');
  await at('no-signals').waitFor();
  expect(await at('marks').textContent()).toContain('re-ground the gouge');
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('before and since a mark are compared, and a piece tapped meanwhile in another window is in the next answer', async () => {
  const { page, at, goTo, troubles } = await demoInHand();
  await goTo('#/yield/compare');
  await at('compare-overall').waitFor();
  await at('compare-kind').selectOption('mark');
  await at('compare-mark').selectOption({ index: 1 });
  await at('compare-overall').waitFor();
  expect(await at('compare-overall').textContent()).toMatch(/since .+: \d+%, \d+ of \d+ · before/);

  await goTo('#/yield/flaws');
  const before = await at('pareto').textContent();
  const other = await page.context().newPage();
  await other.goto(page.url().replace(/#.*/, '#/bench/sand'));
  const hands = maker(other);
  await other.locator('[data-testid^=bench-tray-]').first().click();
  await hands.at('stage-screen').waitFor();
  await other.waitForTimeout(200);
  await other.locator('[data-testid^=flaw-]').first().click();
  await other.locator('[data-testid^=outcome-mended]').first().click();
  await hands.at('saved-mark').filter({ hasText: 'Saved' }).waitFor();
  await page.bringToFront();
  await page.waitForFunction(
    (shown) => document.querySelector('[data-testid=pareto]')?.textContent !== shown,
    before,
  );
  expect(troubles).toEqual([]);
  await page.context().close();
});

/** A file that is handed over as a picture of a chart. */
const picture = (page: Page, chart: string, kind: 'svg' | 'png') =>
  handedOut(page, () => page.locator(`[data-testid=${chart}-${kind}]`).click());

test('a chart is saved as a picture that stands alone, in light colours whatever the screen shows', async () => {
  const { page, at, goTo, troubles } = await demoInHand();
  await page.evaluate(() => {
    document.documentElement.dataset.theme = 'dark';
  });
  await goTo('#/yield/flow');
  await at('cumulative-flow-chart').locator('canvas').waitFor();
  await at('cumulative-flow-chart-picture').locator('summary').click();
  const drawn = await picture(page, 'cumulative-flow-chart-picture', 'svg');
  expect(drawn.name).toMatch(/^tallywright-flow-over-the-days-\d{4}-\d\d-\d\d\.svg$/);
  // Chromium's own XML parser, in a page without the app's policy: that lets no text become a document.
  const blank = await page.context().newPage();
  const read = await blank.evaluate((text) => {
    const parsed = new DOMParser().parseFromString(text, 'image/svg+xml');
    const lightest = parsed.querySelector('rect')?.getAttribute('fill') ?? '';
    return {
      sound: parsed.querySelector('parsererror') === null,
      title: parsed.querySelector('title')?.textContent,
      texts: [...parsed.querySelectorAll('text')].map((each) => each.textContent),
      width: Number(parsed.documentElement.getAttribute('width')),
      height: Number(parsed.documentElement.getAttribute('height')),
      ground: lightest.match(/\d+/g)?.map(Number) ?? [],
    };
  }, drawn.bytes.toString('utf8'));
  expect(read.sound).toBe(true);
  expect(read.title).toBe('Flow over the days');
  expect(read.texts).toContain('Finished');
  expect(Math.min(...read.ground)).toBeGreaterThan(230);

  const painted = await picture(page, 'cumulative-flow-chart-picture', 'png');
  // The PNG specification (third edition), section 5.2: the eight bytes that every file begins with.
  expect([...painted.bytes.subarray(0, 8)]).toEqual([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  expect(imageSize(painted.bytes)).toMatchObject({ width: 2 * read.width, height: 2 * read.height });
  expect(troubles).toEqual([]);
  await page.context().close();
});
