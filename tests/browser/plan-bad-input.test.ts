import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser, openDemo, openPage } from '../support/browser.ts';
import { type Maker, maker } from '../support/maker.ts';
import { setUpStores } from '../support/stores-hands.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const pages = ['', 'today', 'forecast', 'what-if', 'starts', 'constraint', 'cost', 'review'] as const;

/** What a page of the plan says once it has come to an end; a figure that is none would stand there as such. */
async function saidBy({ page, goTo }: Maker, name: (typeof pages)[number]): Promise<string> {
  await goTo(name === '' ? '#/plan' : `#/plan/${name}`);
  await page.waitForFunction(() => document.querySelector('main.plan:not([aria-busy=true])'), undefined, {
    polling: 50,
  });
  const said = (await page.locator('main.plan').textContent()) ?? '';
  expect(said.length, name).toBeGreaterThan(40);
  expect(said, name).not.toMatch(/NaN|Infinity|undefined|\bnull\b|\[object/);
  return said;
}

/** All pages of the plan, by their names. */
async function saidByAll(hands: Maker) {
  const said = {} as Record<(typeof pages)[number], string>;
  for (const name of pages) said[name] = await saidBy(hands, name);
  return said;
}

/** Says the targets of the one batch anew. */
async function setTargets(
  { page, at, close, goTo }: Maker,
  { good, due }: { good: string; due?: string },
): Promise<void> {
  await goTo('#/plan');
  await page.locator('[data-testid^=targets-change-]').first().click();
  await page.locator('[data-testid^=targets-good-]').first().fill(good);
  if (due) await at('targets-due').fill(due);
  await close('targets-save');
  await at('targets-edit').waitFor({ state: 'detached' });
}

test('without any history the plan says so, with one piece it says what is a guess, and neither hangs', async () => {
  const { page, troubles } = await openPage(browser, { size: 'tablet' });
  const hands = maker(page);
  const { at, tap, close, goTo, workOn } = hands;
  await setUpStores(hands);
  const none = await saidByAll(hands);
  expect(none['']).toContain('nobody’s hours are said');
  expect(none.today).toContain('Nothing waits anywhere.');
  for (const name of ['forecast', 'what-if'] as const)
    expect(none[name]).toContain('No time per piece is known yet');
  expect(none.starts).toContain('A guess: no piece has been judged yet');
  expect(none.constraint).toContain('there is nothing to hold the work against');
  expect(none.cost).toContain('Nothing was lost.');
  expect(none.review).toContain('not begun');

  await goTo('#/set-up/people');
  await tap('add-person');
  await at('person-name').fill('Edda');
  await at('person-hours').locator('input[value=said]').check({ force: true });
  await at('week-from-0').fill('08:00');
  await at('week-to-0').fill('17:00');
  await tap('week-like-monday');
  await close('person-save');
  await setTargets(hands, { good: '1', due: '2099-01-01' });
  await goTo('#/trays/new');
  await page.locator('[data-testid^=make-variant-]').first().click();
  await at('make-pieces').fill('1');
  await at('make-count').fill('1');
  await close('make-save');
  const code = (await hands.figure('made-code')).trim();
  await close('made-done');
  await workOn('kit-parts', code);
  await tap('pass');
  const one = await saidByAll(hands);
  expect(one['']).toContain('No time per piece is known yet at Kit parts, Cut and bore,');
  expect(one.today).toContain('Cut and bore: 1 piece');
  // A piece that was passed is no time yet: nothing says when the tap before it was.
  for (const name of ['forecast', 'what-if'] as const)
    expect(one[name]).toContain('No time per piece is known yet');
  expect(one.starts).toContain('Nothing has been judged yet at Cut and bore,');
  expect(one.starts).toContain('that part is a guess, which makes the number larger.');
  expect(one.starts).toMatch(/Start [\d,]+ more now/);
  expect(one.constraint).toContain('The due day is more than ten years off.');
  expect(one.cost).toContain('none finished yet');
  expect(one.review).toContain('Not known: nobody has timed Kit parts,');
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('a due day in the past and a target of 10,000 are answered, or said to be too much', async () => {
  const { page, troubles } = await openDemo(browser);
  const hands = maker(page);
  await setTargets(hands, { good: '10000', due: '2020-01-01' });
  const said = await saidByAll(hands);
  expect(said['']).toMatch(/Was due Wed, 1 Jan 2020, [\d,]+ days ago/);
  expect(said['']).toContain('due day is past');
  expect(said.today).toContain('Spring fair will be late');
  expect(said.forecast).toContain('The due day is past');
  expect(said.forecast).toMatch(/fairly sure by\s*not within two years/);
  expect(said.starts).toContain('The due day is past');
  expect(said.starts).toMatch(/Start [\d,]+ more now: .* at least 10,000 good ones/);
  expect(said.constraint).toContain('there is work, and no time is left for it');
  expect(said['what-if']).toMatch(/\d+ pieces fit/);
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('without working hours no date is made up, and clamps without a place are refused with the reason', async () => {
  const { page, troubles } = await openDemo(browser);
  const hands = maker(page);
  const { at, tap, close, goTo } = hands;
  await goTo('#/set-up/resources');
  await tap('resource-clamps');
  await at('resource-capacity').fill('0');
  await tap('resource-save');
  expect(await at('resource-sheet').textContent()).toContain('At least 1.');
  await page.keyboard.press('Escape');
  await goTo('#/set-up/people');
  for (const who of ['ida', 'tam']) {
    await tap(`person-${who}`);
    // All days off is no week to work in: it is refused, and the sheet stays.
    for (let day = 0; day < 5; day += 1)
      for (const end of ['from', 'to']) await at(`week-${end}-${day}`).fill('');
    await close('person-save');
    await at('person-sheet').getByText('Say at least one day.').waitFor();
    await at('person-hours').locator('input[value=unsaid]').check({ force: true });
    await close('person-save');
    await at('person-sheet').waitFor({ state: 'detached' });
  }
  const said = await saidByAll(hands);
  expect(said['']).toContain('nobody’s hours are said');
  expect(said.today).toContain('Nobody’s hours are said, so no round has a time.');
  for (const name of ['forecast', 'what-if'] as const)
    expect(said[name]).toContain('Nobody’s hours are saidA date needs hours.');
  expect(said.starts).toMatch(/Start \d+ more now/);
  expect(said.constraint).toContain('there is nothing to hold the work against');
  expect(troubles).toEqual([]);
  await page.context().close();
});
