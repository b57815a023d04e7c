import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { accessibilityFaults, launchBrowser, openDemo, type Size } from '../support/browser.ts';
import { maker } from '../support/maker.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const pin = '0271';
/** Real hashing may take a while on a busy machine. */
const slow = { timeout: 20_000 };

/** The demo with its lock closed, and hands at the bench. */
async function lockedTablet(size: Size = 'tablet') {
  const { page, troubles } = await openDemo(browser, { size });
  const hands = maker(page);
  const { at, close, goTo } = hands;
  await goTo('#/set-up/tablet');
  await at('pin-once').fill(pin);
  await at('pin-again').fill(pin);
  await at('pin-save').click();
  await at('recovery-number').waitFor(slow);
  const recovery = ((await at('recovery-number').textContent()) ?? '').replaceAll(' ', '');
  await close('lock-now');
  await at('stage-sand').waitFor();
  return { page, troubles, hands, recovery };
}

async function enter(page: Page, digits: string): Promise<void> {
  const key = (name: string) => page.getByTestId('pin-pad').getByRole('button', { name, exact: true });
  for (const digit of digits) {
    await key(digit).click();
    await page.waitForTimeout(140);
  }
  await key('Open').click();
}

const others = [
  '#/trays',
  '#/trays/new',
  '#/yield',
  '#/plan',
  '#/day',
  '#/set-up',
  '#/set-up/tablet',
  '#/set-up/files',
];

test('a locked tablet stays locked when it is loaded anew, whatever address is typed, and opens with the PIN', async () => {
  const { page, troubles, hands } = await lockedTablet();
  const { at, goTo } = hands;
  for (const place of others) {
    await goTo(place);
    await at('locked').waitFor();
    expect(await page.locator('main').count()).toBe(1);
    expect(await page.locator('h1').textContent()).toBe('Locked');
  }
  await page.reload();
  await at('locked').waitFor();
  await goTo('#/bench');
  await at('stage-sand').waitFor();
  expect(await page.getByRole('link', { name: /Set-up.*Locked/ }).count()).toBe(1);
  expect(await at('leave-demo').count()).toBe(0);
  await goTo('#/set-up/tablet');
  await enter(page, pin);
  await at('lock-panel').waitFor(slow);
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('tapping goes on while locked: pass, and take it back', async () => {
  const { page, troubles, hands } = await lockedTablet();
  await hands.goTo('#/bench/sand');
  await page.locator('[data-testid^=bench-tray-]').first().click();
  await hands.at('stage-screen').waitFor();
  await page.waitForTimeout(140);
  const left = await hands.left();
  await hands.tap('pass');
  await hands.at('saved-mark').filter({ hasText: 'Saved' }).waitFor();
  expect(await hands.left()).toBe(left - 1);
  await hands.tap('undo');
  await hands.at('saved-mark').filter({ hasText: 'Taken back' }).waitFor();
  expect(await hands.left()).toBe(left);
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('after a wrong PIN the right one has to wait, and a reload does not shorten it', async () => {
  const { page, hands } = await lockedTablet();
  const { at, goTo } = hands;
  await goTo('#/day');
  for (const wait of [1, 2, 4, 8]) {
    await enter(page, '1618');
    await at('pin-pad').getByText(`Wrong PIN. Wait ${wait}\u00a0s.`).waitFor(slow);
    if (wait < 8) await at('pin-pad').getByText('Wrong PIN.', { exact: true }).waitFor(slow);
  }
  await page.reload();
  await at('pin-pad').getByText('Wrong PIN. Wait 8\u00a0s.').waitFor();
  await enter(page, pin);
  await page.waitForTimeout(1000);
  expect(await at('locked').count()).toBe(1);
  await at('pin-pad').getByText('Wrong PIN.', { exact: true }).waitFor(slow);
  await page.getByTestId('pin-pad').getByRole('button', { name: 'Open', exact: true }).click();
  await at('locked').waitFor({ state: 'detached', ...slow });
  await page.context().close();
});

test('a forgotten PIN: the recovery number opens, and the lock is gone', async () => {
  const { page, hands, recovery } = await lockedTablet();
  await hands.goTo('#/set-up/tablet');
  await enter(page, recovery);
  await hands.at('pin-once').waitFor(slow);
  await page.reload();
  await hands.at('pin-once').waitFor();
  await page.context().close();
});

test('locking one window locks the others', async () => {
  const { page, hands } = await lockedTablet();
  await hands.goTo('#/day');
  await enter(page, pin);
  await hands.at('locked').waitFor({ state: 'detached', ...slow });
  const second = await page.context().newPage();
  await second.goto(page.url());
  await second.getByTestId('copy-age').or(second.getByTestId('demo-banner')).first().waitFor();
  expect(await second.getByTestId('locked').count()).toBe(0);
  await hands.goTo('#/set-up/tablet');
  await hands.close('lock-now');
  await second.getByTestId('locked').waitFor();
  await page.context().close();
});

test('the PIN lies on the tablet as a hash alone, and the rescue page stays in reach', async () => {
  const { page, hands, recovery } = await lockedTablet();
  await hands.goTo('#/day');
  const kept = await page.evaluate(() => localStorage.getItem('tallywright preferences'));
  const lock = JSON.parse(kept ?? '{}').lock;
  expect(lock.pin).toMatch(/^\$pbkdf2-sha256\$i=600000\$/);
  expect(kept).not.toContain(recovery);
  await hands.at('rescue-link').click();
  await page.waitForURL(/rescue\.html/);
  await page.context().close();
});

test.each(['tablet', 'phone'] as const)('the pad has no fault that a machine can find (%s)', async (size) => {
  const { page, hands } = await lockedTablet(size);
  await hands.goTo('#/day');
  expect(await accessibilityFaults(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  await enter(page, '1618');
  await hands.at('pin-pad').getByText('Wrong PIN. Wait 1\u00a0s.').waitFor(slow);
  expect(await accessibilityFaults(page)).toEqual([]);
  await hands.goTo('#/bench');
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.context().close();
});
