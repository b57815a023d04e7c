import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { labelFrame, modulesWithMargin } from '../../src/domain/label/label-layout.ts';
import { labelsPerPage, pageInMm, placeOnPage } from '../../src/domain/label/label-size.ts';
import { labelSizes } from '../../src/domain/label/label-sizes.ts';
import { readSymbol } from '../../src/domain/label/symbol-text.ts';
import type { LabelSizeFact } from '../../src/domain/set-up/facts.ts';
import { emptyShop } from '../../src/domain/shop/shop.ts';
import { accessibilityFaults, launchBrowser, openDemo } from '../support/browser.ts';
import { maker } from '../support/maker.ts';
import { type BoxInMm, type PrintedPage, printed } from '../support/printed-page.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const sizes = labelSizes(emptyShop().registers);
const sizeOf = (id: string): LabelSizeFact => {
  const found = sizes.find((size) => size.id === id);
  if (!found) throw new Error(`no size ${id}`);
  return found.fact;
};

/** Makes up trays of the demo shop, a few at a time. */
async function makeTrays(page: Page, count: number): Promise<void> {
  const { at, close, goTo, tap } = maker(page);
  await goTo('#/trays/new');
  for (let left = count; left > 0; left -= 50) {
    await tap('make-variant-plum-copper');
    await at('make-count').fill(String(Math.min(50, left)));
    await close('make-save');
    await at('made-code').first().waitFor();
    await tap('make-more');
  }
}

async function inDemo() {
  const opened = await openDemo(browser);
  // Hundreds of labels are drawn here, on machines with other work too.
  opened.page.setDefaultTimeout(200_000);
  return { ...opened, ...maker(opened.page) };
}

/** The box of a label on its page, in mm. */
function boxOf(size: LabelSizeFact, place: number): BoxInMm {
  return { ...placeOnPage(size, place), width: size.width / 100, height: size.height / 100 };
}

/** What the labels of the pages say, in order; a place on which nothing can be read is left out. */
function symbolsOn(pages: readonly PrintedPage[], size: LabelSizeFact) {
  return pages.flatMap((page) =>
    Array.from({ length: labelsPerPage(size) }, (_, place) => {
      const symbol = page.symbolIn(boxOf(size, place));
      return symbol ? [{ page, place, symbol }] : [];
    }).flat(),
  );
}

const near = (measured: number | undefined, wanted: number, within: number) =>
  expect(Math.abs((measured ?? Number.NaN) - wanted)).toBeLessThanOrEqual(within);

describe('labels on paper', () => {
  test('stand at their places at true size, and every symbol says its tray and its shop, on every size', async () => {
    const { page, at, goTo, tap, troubles } = await inDemo();
    await goTo('#/trays/labels');
    await tap('print-all');
    const codes = await page
      .locator('.print-tray:has(input:checked) .code')
      .evaluateAll((all) => all.map((each) => each.textContent));
    expect(codes.length).toBeGreaterThan(8);
    const signs = new Set<string>();
    for (const { id, fact } of sizes) {
      await at('print-size').selectOption(id);
      await at('print').waitFor();
      const pages = await printed(page);
      expect(pages.length).toBe(Math.ceil(codes.length / labelsPerPage(fact)));
      const paper = pageInMm(fact);
      for (const each of pages) {
        near(each.width, paper.width, 0.5);
        near(each.height, paper.height, 0.5);
      }
      const found = symbolsOn(pages, fact);
      const read = found.map(({ symbol }) => readSymbol(symbol.text));
      const told = read.map((each) => (each.kind === 'tray' ? each.code : each.kind));
      expect(told.toSorted()).toEqual(codes.toSorted());
      for (const each of read) if (each.kind === 'tray') signs.add(each.sign);
      for (const [index, { page: on, place, symbol }] of found.entries()) {
        const code = told[index] ?? '';
        const box = boxOf(fact, place);
        const frame = labelFrame(box, code.length);
        const module = frame.symbol.side / modulesWithMargin;
        near(symbol.box.x, box.x + frame.symbol.x + 4 * module, 0.5);
        near(symbol.box.y, box.y + frame.symbol.y + 4 * module, 0.5);
        expect(symbol.modules).toBe(21);
        near(symbol.box.width / 21, module, 0.03);
        near(symbol.box.height / 21, module, 0.03);
        // The capitals of the code: nothing else stands left of the symbol and above the texts.
        const high = frame.texts.y - 0.4;
        const ink = on.inkIn({ ...box, width: frame.code.x + frame.texts.width, height: high });
        near(ink?.y, box.y + frame.code.baseline - (ink?.height ?? 0), 0.5);
        // Round digits are a little higher than capitals and stand a little below the line.
        expect(ink?.height).toBeGreaterThanOrEqual(frame.code.size * 0.668 - 0.2);
        expect(ink?.height).toBeLessThanOrEqual(frame.code.size * 0.71 + 0.3);
        near(ink?.x, box.x + frame.code.x, 1.2);
      }
    }
    expect(signs.size).toBe(1);
    expect(troubles).toEqual([]);
    await page.context().close();
  });

  test('begin at the first free label of a begun sheet, and the code is 11.6 mm high where the label allows it', async () => {
    const { page, at, goTo, tap } = await inDemo();
    await goTo('#/trays/labels');
    await tap('print-all');
    await at('print-size').selectOption('a4-3x8');
    await at('print-first').fill('6');
    const [first] = await printed(page);
    const size = sizeOf('a4-3x8');
    for (const place of [0, 1, 2, 3, 4]) expect(first?.inkIn(boxOf(size, place))).toBeUndefined();
    // The sixth label: the third of the second row, 140 mm across and 37.5 mm down.
    const symbol = first?.symbolIn({ x: 140, y: 37.5, width: 70, height: 37 });
    expect(readSymbol(symbol?.text ?? '').kind).toBe('tray');
    const capitals = first?.inkIn({ x: 140, y: 37.5, width: 70, height: 16 });
    expect(capitals?.height).toBeGreaterThanOrEqual(11.6);
    await at('print-first').fill('25');
    expect(await at('print').getAttribute('aria-disabled')).toBe('true');
    await page.context().close();
  });

  test('of 500 trays are all read back, each once', async () => {
    const { page, at, goTo, tap } = await inDemo();
    await makeTrays(page, 500);
    await goTo('#/trays/labels');
    await tap('print-newest');
    await at('print-size').selectOption('a4-3x8');
    const count = Number.parseInt((await at('print-chosen').textContent()) ?? '', 10);
    expect(count).toBeGreaterThanOrEqual(500);
    const pages = await printed(page);
    const codes = symbolsOn(pages, sizeOf('a4-3x8')).map(({ symbol }) => readSymbol(symbol.text));
    expect(codes.every(({ kind }) => kind === 'tray')).toBe(true);
    expect(new Set(codes.map((each) => (each.kind === 'tray' ? each.code : ''))).size).toBe(count);
    await page.context().close();
  });
});

test('a route card has the stages of its tray, its code to be read at 2 m, and a symbol; a page for each tray', async () => {
  const { page, at, goTo, tap, troubles } = await inDemo();
  await goTo('#/trays/cards');
  expect(await at('print').getAttribute('aria-disabled')).toBe('true');
  const boxes = page.locator('.print-tray');
  await boxes.nth(0).click();
  await boxes.nth(1).click();
  const codes = await page
    .locator('.print-tray:has(input:checked) .code')
    .evaluateAll((all) => all.map((each) => each.textContent));
  const [code = ''] = codes.toSorted((a, b) => a.localeCompare(b, 'en', { numeric: true }));
  for (const [paper, width, height] of [
    ['a4', 210, 297],
    ['letter', 215.9, 279.4],
  ] as const) {
    await at(`print-paper-${paper}`).click();
    const pages = await printed(page);
    expect(pages.length).toBe(2);
    const [first] = pages;
    near(first?.width, width, 0.5);
    near(first?.height, height, 0.5);
    expect(first?.text).toContain(code);
    expect(first?.text.replace(/\s+/g, ' ')).toContain('Passed: a stroke for each');
    const symbol = first?.symbolIn({ x: 0, y: 0, width, height: 60 });
    expect(readSymbol(symbol?.text ?? '')).toMatchObject({ kind: 'tray', code });
    near(symbol?.box.width, (26 * 21) / 29, 0.5);
    const capitals = first?.inkIn({ x: 9, y: 9, width: 60, height: 18.5 });
    expect(capitals?.height).toBeGreaterThanOrEqual(11.4);
  }
  await tap('print-none');
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('the pages for labels, cards and the entering of one are sound by machine, and a card is entered', async () => {
  const { page, at, close, goTo, tap, troubles } = await inDemo();
  await makeTrays(page, 1);
  await goTo('#/trays/labels');
  await tap('print-newest');
  expect(await accessibilityFaults(page)).toEqual([]);
  await goTo('#/trays/cards');
  await tap('print-newest');
  expect(await accessibilityFaults(page)).toEqual([]);
  await goTo('#/set-up/labels');
  expect(await accessibilityFaults(page)).toEqual([]);
  await goTo('#/trays');
  await page.locator('[data-testid^=tray-row-]').locator('visible=true').last().click();
  await tap('tray-enter-card');
  await page.locator('[data-testid^=card-passed-]').first().fill('4');
  await close('card-enter');
  await at('card-entered').waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.locator('[data-testid^=card-passed-]').first().fill('700');
  await close('card-enter');
  expect(await at('card-refused').textContent()).toContain('Nothing was entered yet');
  expect(troubles).toEqual([]);
  await page.context().close();
});
