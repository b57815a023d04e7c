import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser, openDemo } from '../support/browser.ts';
import { maker } from '../support/maker.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

async function demoInHand() {
  const opened = await openDemo(browser);
  return { ...opened, ...maker(opened.page) };
}
type Hands = Awaited<ReturnType<typeof demoInHand>>;

const goToPlan = ({ page }: Hands, name: string) =>
  page.evaluate((to) => {
    location.hash = to;
  }, `#/plan/${name}`);

const dayOf = async ({ figure }: Hands, level: string) => figure(`forecast-${level}`, 'data-day');

test('the demo shop has dates, a fan and promises, worked out beside the window, and by a later day no fewer', async () => {
  const hands = await demoInHand();
  const { page, at, goTo, figure, troubles } = hands;
  await goTo('#/plan/forecast');
  const [half, fair, sure] = [
    await dayOf(hands, 'at50'),
    await dayOf(hands, 'at85'),
    await dayOf(hands, 'at95'),
  ];
  expect(half).toMatch(/^\d{4}-\d\d-\d\d$/);
  expect(half <= fair && fair <= sure).toBe(true);
  expect(page.workers().some((worker) => worker.url().includes('forecast-worker'))).toBe(true);
  await at('forecast-fan-chart').locator('canvas').waitFor();
  const later = Number(await figure('safe-all'));
  const today = await page.evaluate(() => new Intl.DateTimeFormat('sv-SE').format(new Date()));
  await at('promise-day').fill(today);
  await page.waitForFunction(
    (before) => Number(document.querySelector('[data-testid=safe-all]')?.textContent) < before,
    later,
    { polling: 50 },
  );
  await at('forecast-stages').locator('summary').click();
  await at('forecast-stages').locator('table').waitFor();
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('a forecast is stopped and asked again, and a tap at the bench counts while one runs', async () => {
  const hands = await demoInHand();
  const { page, at, tap, workOn, left, troubles } = hands;
  await page.locator('[data-testid^=stage-]').first().waitFor();
  await hands.goTo('#/bench/sand');
  const row = page.locator('[data-testid^=bench-tray-]').first();
  await row.waitFor();
  const code = ((await row.getAttribute('data-testid')) ?? '').replace('bench-tray-', '');

  // A machine that is so slow that the forecast is still at work when the finger comes.
  const client = await page.context().newCDPSession(page);
  await client.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  await goToPlan(hands, 'forecast');
  await tap('forecast-stop');
  await at('forecast-standing').filter({ hasText: 'The forecast was stopped' }).waitFor();
  await at('forecast-again').click();
  await at('forecast-stop').waitFor();
  await client.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  await workOn('sand', code);
  const before = await left();
  await tap('pass');
  await at('saved-mark').filter({ hasText: 'Saved' }).waitFor();
  expect(await left()).toBe(before - 1);

  await hands.goTo('#/plan/forecast');
  expect(await dayOf(hands, 'at50')).toMatch(/^\d{4}-\d\d-\d\d$/);
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('what a forecast comes to is kept as the plan of its batch, and the review holds it against what came', async () => {
  const hands = await demoInHand();
  const { page, at, tap, goTo, figure, troubles } = hands;
  await goTo('#/plan/forecast');
  const done = await dayOf(hands, 'at85');
  const now = await figure('plan-now');
  const [, made = '', firsts = ''] = /^([\d,]+) pieces made up, ([\d,]+) firsts/.exec(now) ?? [];
  await tap('plan-keep');
  // What is kept changes nothing of the forecast: it stays in view while the log is read again.
  expect(await at('forecast-dates').count()).toBe(1);
  await at('plan-kept').filter({ hasText: now }).waitFor();

  await goTo('#/plan/review');
  expect(await figure('planned-started-1')).toBe(made);
  expect(await figure('planned-expectedFirsts-1')).toBe(firsts);
  const days = (text: string) => Date.parse(`${text} UTC`) / 86_400_000;
  expect(days(await figure('planned-expected-1'))).toBe(Date.parse(done) / 86_400_000);
  expect(await figure('planned-hours-1')).toMatch(/\d h/);
  expect(await figure('planned-cost-1')).toMatch(/^\d+\.\d\d$/);
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('a helper on Saturdays is no later on average, and what is bought has a time to pay for itself', async () => {
  const hands = await demoInHand();
  const { page, at, tap, goTo, figure, troubles } = hands;
  await goTo('#/plan/what-if');
  expect(await at('what-if-result').textContent()).toContain('Fill in a change above.');
  await at('what-if-stage').selectOption({ label: 'Sand' });
  await at('what-if-percent').fill('40');
  await at('what-if-price').fill('300');
  await at('what-if-monthly').fill('120');
  await tap('what-if-ask');
  expect(Number(await figure('what-if-hours', 'data-hours'))).toBeLessThan(0);
  expect(await at('what-if-payback').textContent()).toMatch(/^After .* pieces/);
  await tap('what-if-forget');
  await at('what-if-saturday').fill('8');
  await tap('what-if-ask');
  expect(Number(await figure('what-if-days', 'data-days'))).toBeLessThanOrEqual(0.1);
  expect(Number(await figure('fits-answer', 'data-fits'))).toBeGreaterThan(0);
  expect(troubles).toEqual([]);
  await page.context().close();
});
