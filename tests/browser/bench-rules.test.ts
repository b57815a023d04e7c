import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser, openDemo } from '../support/browser.ts';
import { maker } from '../support/maker.ts';

// Sizes and distances in CSS pixels, as the rules of the bench screen give them (our own rules, drawn from the
// studies that are named in shared/check-values/touch-display.json).
const benchButton = 132;
const otherButton = 96;
const leastGap = 24;
const deadEdge = 40;
const apart = 96;
const benchText = 40;
const codeText = 105;

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

interface Box {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly right: number;
  readonly bottom: number;
}

/** Every acting element of the stage screen, as the browser laid it out. */
const boxesOf = (page: Page): Promise<Box[]> =>
  page.locator('[data-testid=stage-screen] button').evaluateAll((buttons) =>
    buttons.map((button) => {
      const { x, y, right, bottom } = button.getBoundingClientRect();
      return { id: button.getAttribute('data-testid') ?? '', x, y, right, bottom };
    }),
  );

const fontSize = (page: Page, selector: string): Promise<number> =>
  page
    .locator(selector)
    .first()
    .evaluate((element) => Number.parseFloat(getComputedStyle(element).fontSize));

const gapBetween = (a: Box, b: Box): number =>
  Math.max(a.x - b.right, b.x - a.right, a.y - b.bottom, b.y - a.bottom);

async function stageScreen(
  viewport: { width: number; height: number },
  { stage = 'sand', side = 'left' }: { stage?: string; side?: 'left' | 'right' } = {},
): Promise<Page> {
  const { page } = await openDemo(browser, { viewport });
  const { at, goTo } = maker(page);
  if (side === 'right') {
    await goTo('#/set-up/tablet');
    await at('side-right').click();
  }
  await goTo(`#/bench/${stage}`);
  await page.locator('[data-testid^=bench-tray-]').first().click();
  await at('stage-screen').waitFor();
  return page;
}

describe.each([
  ['on its side', { width: 1280, height: 800 }, 'left'],
  ['upright', { width: 820, height: 1180 }, 'left'],
  ['on its side, mirrored', { width: 1280, height: 800 }, 'right'],
  ['upright, mirrored', { width: 820, height: 1180 }, 'right'],
] as const)('the stage screen on a tablet %s', (_, viewport, side) => {
  let page: Page;
  let boxes: Box[];
  beforeAll(async () => {
    page = await stageScreen(viewport, { side });
    boxes = await boxesOf(page);
  });
  afterAll(() => page.context().close());
  const counting = () => boxes.filter(({ id }) => id === 'pass' || id.startsWith('flaw-') || id === 'undo');

  test('has counting buttons that a dusty finger hits, and no button under the least size', () => {
    const sizes = (list: Box[]) => list.map(({ x, y, right, bottom }) => Math.min(right - x, bottom - y));
    expect(Math.min(...sizes(counting()))).toBeGreaterThanOrEqual(benchButton);
    expect(Math.min(...sizes(boxes))).toBeGreaterThanOrEqual(otherButton);
  });

  test('has the usual button and undo on the side that was chosen', () => {
    const fromSide = ({ x, right }: Box) => (side === 'left' ? x : viewport.width - right);
    const [pass, undo] = ['pass', 'undo'].map((id) => boxes.find((box) => box.id === id));
    expect(pass && Math.round(fromSide(pass))).toBe(deadEdge);
    expect(undo && Math.round(fromSide(undo))).toBe(deadEdge);
    // What leaves the tray is across from undo, or below it.
    const next = boxes.find(({ id }) => id === 'next-tray');
    expect(next && undo && (next.y >= undo.bottom || (side === 'left') === next.x > undo.x)).toBe(true);
  });

  test('has no more than eight acting buttons', () => {
    expect(counting().length).toBeLessThanOrEqual(8);
  });

  test('keeps its buttons apart, and away from the edge', () => {
    const gaps = boxes.flatMap((a, index) => boxes.slice(index + 1).map((b) => gapBetween(a, b)));
    expect(Math.min(...gaps)).toBeGreaterThanOrEqual(leastGap);
    for (const { id, x, y, right } of boxes) {
      expect(Math.min(x, y, viewport.width - right), id).toBeGreaterThanOrEqual(deadEdge);
    }
  });

  test('parts counting from what leaves the tray', () => {
    const leaving = boxes.filter(({ id }) => ['pause', 'next-tray', 'to-trays'].includes(id));
    const taps = counting().filter(({ id }) => id !== 'undo');
    expect(leaving).toHaveLength(3);
    expect(Math.min(...leaving.flatMap((a) => taps.map((b) => gapBetween(a, b))))).toBeGreaterThanOrEqual(
      apart,
    );
  });

  test('can be read: buttons at arm’s length, code and count from two metres', async () => {
    expect(await fontSize(page, '[data-testid=pass] .press-label')).toBeGreaterThanOrEqual(benchText);
    expect(await fontSize(page, '[data-testid=stage-code] [aria-hidden]')).toBeGreaterThanOrEqual(codeText);
    expect(await fontSize(page, '[data-testid=stage-left] .figures')).toBeGreaterThanOrEqual(codeText);
  });

  test('shows all of it without scrolling', async () => {
    const beyond = await page.evaluate(() => document.documentElement.scrollHeight - innerHeight);
    expect(beyond).toBeLessThanOrEqual(0);
  });
});

test.each([
  { width: 1280, height: 800 },
  { width: 820, height: 1180 },
])('whatever tray is in hand at whatever stage, all of it is in view: $width × $height', async (viewport) => {
  const { page } = await openDemo(browser, { viewport });
  const { at, goTo, tap } = maker(page);
  const idsOf = (prefix: string) =>
    page
      .locator(`[data-testid^=${prefix}]`)
      .evaluateAll((all) => all.map((each) => each.getAttribute('data-testid') ?? ''));
  const stages = (await idsOf('stage-')).map((id) => id.replace('stage-', ''));
  const beyond = new Map<string, number>();
  for (const stage of stages) {
    await goTo(`#/bench/${stage}`);
    for (const tray of await idsOf('bench-tray-')) {
      await tap(tray);
      await at('stage-screen').waitFor();
      const by = await page.evaluate(() => document.documentElement.scrollHeight - innerHeight);
      beyond.set(`${stage} ${tray}`, by);
      await goTo('#/bench');
      await goTo(`#/bench/${stage}`);
      await at(tray).waitFor();
    }
  }
  expect(beyond.size).toBeGreaterThan(10);
  expect([...beyond].filter(([, by]) => by > 0)).toEqual([]);
  await page.context().close();
});

test('a stage with five flaws shows all of it without scrolling, too', async () => {
  const page = await stageScreen({ width: 1280, height: 800 }, { stage: 'rough-turn' });
  expect(await page.locator('[data-testid^=flaw-]').count()).toBe(5);
  expect(await page.evaluate(() => document.documentElement.scrollHeight - innerHeight)).toBeLessThanOrEqual(
    0,
  );
  await page.context().close();
});

test('a piece is tapped off with one touch, a scrap that saves a part takes three', async () => {
  const page = await stageScreen({ width: 1280, height: 800 });
  const { at, tap, left } = maker(page);
  const before = await left();
  await tap('pass');
  await at('saved-mark').filter({ hasText: 'Saved' }).waitFor();
  expect(await left()).toBe(before - 1);
  await tap('flaw-scratch');
  await tap('outcome-scrapped');
  await tap('save-all');
  await at('last-act').filter({ hasText: 'Scratch, scrapped' }).waitFor();
  expect(await left()).toBe(before - 2);
  await page.context().close();
});

test('scrap stands apart from what passes a piece on, in a row of its own', async () => {
  const page = await stageScreen({ width: 1280, height: 800 });
  await maker(page).tap('flaw-scratch');
  const boxes = await boxesOf(page);
  const scrap = boxes.find(({ id }) => id === 'outcome-scrapped');
  const others = boxes.filter(({ id }) => id.startsWith('outcome-') && id !== 'outcome-scrapped');
  expect(others).toHaveLength(3);
  for (const other of others) expect(scrap && gapBetween(scrap, other)).toBeGreaterThanOrEqual(apart);
  await page.context().close();
});

test('keys do what the buttons do: pass, undo, a flaw; a held key counts once', async () => {
  const page = await stageScreen({ width: 1280, height: 800 });
  const { left, at } = maker(page);
  const before = await left();
  await page.keyboard.down('1');
  for (let repeat = 0; repeat < 3; repeat += 1) await page.keyboard.down('1');
  await page.keyboard.up('1');
  await page.waitForTimeout(200);
  expect(await left()).toBe(before - 1);
  await page.keyboard.press('Backspace');
  await at('saved-mark').filter({ hasText: 'Taken back' }).waitFor();
  expect(await left()).toBe(before);
  await page.keyboard.press('2');
  await at('outcome-mended').waitFor();
  await page.context().close();
});
