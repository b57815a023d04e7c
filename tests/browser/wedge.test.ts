import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { shopSign } from '../../src/domain/label/shop-sign.ts';
import { launchBrowser, openDemo } from '../support/browser.ts';
import { maker } from '../support/maker.ts';
import { demoLabel, demoTrays } from '../support/scanned-shop.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** What a code reader types: its keys, then Enter or Tab, handed over together, however slow the machine that drives is. */
async function wedge(page: Page, text: string, end: 'Enter' | 'Tab' = 'Enter'): Promise<void> {
  const client = await page.context().newCDPSession(page);
  const presses = [...text, end].flatMap((key) => {
    const sign = key.length === 1 ? { text: key } : {};
    return [
      client.send('Input.dispatchKeyEvent', { type: 'keyDown', key, ...sign }),
      client.send('Input.dispatchKeyEvent', { type: 'keyUp', key }),
    ];
  });
  await Promise.all(presses);
  await client.detach();
}

const shown = (page: Page, code: string) =>
  page.locator('[data-testid=stage-code]').filter({ hasText: new RegExp(code.split('').join('\\s*')) });

/** Longer than keys are held back that might have been a burst. */
const afterBurst = 400;

async function demo() {
  const { page, troubles } = await openDemo(browser);
  const hands = maker(page);
  const [here, there] = await demoTrays(hands);
  return { page, troubles, hands, here, there };
}

test('on the stage screen a label goes to its tray, and its digits tap nothing', async () => {
  const { page, troubles, hands, here, there } = await demo();
  await hands.workOn('kit-parts', here);
  const left = await hands.left();
  await wedge(page, demoLabel(there));
  await shown(page, there).waitFor();
  await page.waitForTimeout(afterBurst);
  await wedge(page, demoLabel(here), 'Tab');
  await shown(page, here).waitFor();
  await page.waitForTimeout(afterBurst);
  expect(await hands.left()).toBe(left);
  // Keys of the bench act as before.
  await page.keyboard.press('1');
  await hands.at('saved-mark').filter({ hasText: 'Saved' }).waitFor();
  expect(await hands.left()).toBe(left - 1);
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('a label that leads nowhere is said on the stage screen, in the place that is kept for it', async () => {
  const { page, hands, here } = await demo();
  await hands.workOn('kit-parts', here);
  const left = await hands.left();
  await wedge(page, `${here}-${shopSign([7, 7, 7, 7])}`);
  await hands.at('refusal').filter({ hasText: 'another shop' }).waitFor();
  await wedge(page, 'HTTPS://EXAMPLE.TEST/17');
  await hands.at('refusal').filter({ hasText: 'no label of a tray' }).waitFor();
  await page.waitForTimeout(afterBurst);
  expect(await hands.left()).toBe(left);
  expect(await hands.at('stage-screen').count()).toBe(1);
  await page.context().close();
});

test('on Day a label goes to its tray; one that leads nowhere is said there', async () => {
  const { page, hands, there } = await demo();
  await hands.goTo('#/day');
  await wedge(page, `${there}-${shopSign([7, 7, 7, 7])}`);
  await hands.at('label-news').filter({ hasText: 'another shop' }).waitFor();
  expect(await page.evaluate(() => location.hash)).toBe('#/day');
  await wedge(page, demoLabel(there));
  await page.waitForFunction(() => location.hash !== '#/day');
  await hands.at('label-news').waitFor({ state: 'detached' });
  await page.context().close();
});

test('a burst in a text field leaves the field as it was; what a hand types stays', async () => {
  const { page, hands, there } = await demo();
  await hands.goTo('#/set-up/tablet');
  const field = hands.at('shop-name');
  const name = await field.inputValue();
  await field.focus();
  await page.keyboard.press('End');
  await page.keyboard.type(` ${there}`, { delay: 150 });
  await page.keyboard.press('Enter');
  await page.waitForTimeout(afterBurst);
  expect(await field.inputValue()).toBe(`${name} ${there}`);
  await page.keyboard.type(' of');
  await wedge(page, demoLabel(there));
  await page.waitForFunction(() => !location.hash.startsWith('#/set-up'));
  await hands.goTo('#/set-up/tablet');
  expect(await field.inputValue()).toBe(`${name} ${there} of`);
  await page.context().close();
});

test('a burst on the pad of codes goes to its tray; a code that is typed by hand is the pad’s', async () => {
  const { page, hands, there } = await demo();
  await hands.goTo('#/trays');
  await wedge(page, demoLabel(there));
  await page.waitForFunction(() => location.hash !== '#/trays');
  await hands.goTo('#/trays');
  await page.keyboard.type('A1', { delay: 300 });
  const typed = hands.at('find-pad').locator('output');
  await typed.filter({ hasText: 'A1' }).waitFor();
  await page.context().close();
});

test('under an open sheet a label waits: what is half done is not lost', async () => {
  const { page, hands, there } = await demo();
  await hands.goTo('#/set-up/woods');
  await hands.tap('add-wood');
  await wedge(page, demoLabel(there));
  await page.waitForTimeout(afterBurst);
  expect(await page.evaluate(() => location.hash)).toBe('#/set-up/woods');
  await page.keyboard.press('Escape');
  await hands.at('label-news').filter({ hasText: 'Close what is open' }).waitFor();
  await page.context().close();
});
