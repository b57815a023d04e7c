import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { cellsOf } from '../../src/app/csv.ts';
import { launchBrowser, openDemo } from '../support/browser.ts';
import { handedOut } from '../support/handed-out.ts';
import { maker } from '../support/maker.ts';
import { printed } from '../support/printed-page.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

async function demoInHand() {
  const opened = await openDemo(browser, { acceptDownloads: true });
  return { ...opened, ...maker(opened.page) };
}
type Hands = Awaited<ReturnType<typeof demoInHand>>;

const batchPanel = ({ page }: Hands) => page.locator('section[data-testid^=targets-][data-tone]').first();
const inPlan = ({ page }: Hands) =>
  page.waitForFunction(() => document.querySelector('main.plan:not([aria-busy=true])'), undefined, {
    polling: 50,
  });

/** The table of targets as the app saves it: headings first. */
async function savedTable({ page, at }: Hands): Promise<readonly (readonly string[])[]> {
  const { name, bytes } = await handedOut(page, () => at('table-targets').click());
  expect(name).toMatch(/^tallywright-targets-\d{4}-\d\d-\d\d\.csv$/);
  return cellsOf(bytes.toString('utf8'));
}

async function readFileBack({ at }: Hands, lines: readonly string[]): Promise<void> {
  const buffer = Buffer.from(`\ufeff${lines.join('\r\n')}\r\n`, 'utf8');
  await at('targets-input').setInputFiles({ name: 'targets.csv', mimeType: 'text/csv', buffer });
  await at('targets-judged').waitFor();
}

test('targets are changed in their place, go out to a spreadsheet, and come back line by line', async () => {
  const hands = await demoInHand();
  const { page, at, tap, close, goTo, figure, troubles } = hands;
  await goTo('#/plan');
  await inPlan(hands);
  await page.locator('[data-testid^=targets-change-]').first().click();
  const field = page.locator('[data-testid^=targets-good-]').first();
  const variant = ((await field.getAttribute('data-testid')) ?? '').replace('targets-good-', '');
  await field.fill('91');
  await at('targets-chance').fill('80');
  await close('targets-save');
  await at('targets-edit').waitFor({ state: 'detached' });
  expect(await figure(`wanted-${variant}`)).toBe('91');
  expect(await batchPanel(hands).textContent()).toContain('80 % sure of enough');
  expect(await at('plan-week').textContent()).toMatch(/^The next 7 days have 8\d h of work\.$/);

  const [headings = [], ...rows] = await savedTable(hands);
  expect(headings).toEqual(['Batch', 'Variant', 'Good ones wanted', 'Due', 'Chance, per cent']);
  const first = rows.find((row) => row[2] === '91') ?? [];
  expect(first[4]).toBe('80');

  // As a spreadsheet of another country saves it: semicolons, and a day with points.
  const [name = '', what = '', , due = ''] = first;
  const turned = due.split('-').toReversed().join('.');
  await readFileBack(hands, [
    'batch;variant;good;due;chance',
    `${name};"${what}";95;${turned};`,
    `${name};"${what}";96;;`,
    `${name};no such haft;10;;`,
  ]);
  expect(await at('targets-sum').textContent()).toBe(
    '1 line changes something, 0 say what is so already, 2 are not understood.',
  );
  expect(await at('targets-changing').textContent()).toContain('91 → 95 good ones');
  expect(await at('targets-not-understood').textContent()).toContain(
    'Line 2 says it of the same variant already.',
  );
  expect(await figure(`wanted-${variant}`)).toBe('91');
  await tap('targets-write');
  await at('targets-said').filter({ hasText: '1 line was written.' }).waitFor();
  expect(await figure(`wanted-${variant}`)).toBe('95');
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('starts count what is in work, ask for more when more is wanted, and are reckoned beside the window', async () => {
  const hands = await demoInHand();
  const { page, at, tap, close, goTo, figure, troubles } = hands;
  await goTo('#/plan/starts');
  await inPlan(hands);
  const rows = page.locator('b[data-testid^=start-]');
  await rows.first().waitFor();
  expect(page.workers().length).toBeGreaterThan(0);
  const id = (await rows.first().getAttribute('data-testid')) ?? '';
  const before = Number(await figure(id, 'data-start'));
  expect(before).toBeGreaterThan(0);
  expect(await at('start-answer').textContent()).toMatch(
    new RegExp(`^Start ${before} more now: then, with what is in work, at least \\d+ good ones`),
  );
  await at('start-chance-chart').locator('canvas').waitFor();
  await at('start-behind').locator('summary').first().click();
  await at('start-beliefs').waitFor();
  expect(await at('start-beliefs').textContent()).toMatch(/\d+ of \d+/);

  await goTo('#/plan');
  await page.locator('[data-testid^=targets-change-]').first().click();
  const variant = id.replace('start-', '');
  const wanted = Number(await at(`targets-good-${variant}`).inputValue());
  await at(`targets-good-${variant}`).fill(String(wanted + 20));
  await close('targets-save');
  await goTo('#/plan/starts');
  await inPlan(hands);
  const after = Number(await figure(id, 'data-start'));
  // Each good one more takes one start at least.
  expect(after).toBeGreaterThanOrEqual(before + 20);

  await at('cost-start').fill('9');
  await at('cost-short').fill('24');
  await at('cost-over').fill('0');
  await at('start-cheapest')
    .filter({ hasText: /^Cheapest: start \d+/ })
    .waitFor();
  await tap('cost-forget');
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('what holds the shop back is said, and a tap on another load tells what is behind it and what its hour earns', async () => {
  const hands = await demoInHand();
  const { page, at, goTo, troubles } = hands;
  await goTo('#/plan/constraint');
  await at('constraint-said').waitFor();
  await inPlan(hands);
  expect(await at('constraint-said').textContent()).toMatch(/^(Most loaded|What holds you back): .+ \d+ %/);
  await page.locator('.table-pick').filter({ hasText: 'Clamps' }).click();
  await at('constraint-behind').filter({ hasText: 'Behind it: Clamps' }).waitFor();
  expect(await at('constraint-behind').textContent()).toMatch(/\d+ pieces are \d+ rounds? of \d+/);
  expect(await at('constraint-earnings').textContent()).toContain('What an hour earns: Clamps');
  const answer = () => at('mix-answer').textContent();
  const ofWeek = Number(/^(\d+) pieces/.exec((await answer()) ?? '')?.[1]);
  await at('mix-time').selectOption('own');
  await at('mix-own').fill('10');
  await page.waitForFunction(
    (week) => {
      const said = document.querySelector('[data-testid=mix-answer]')?.textContent ?? '';
      const made = Number(/^(\d+) pieces/.exec(said)?.[1]);
      return made > 0 && made < week / 4;
    },
    ofWeek,
    { polling: 50 },
  );
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('a batch is looked back at, and printed on one page', async () => {
  const hands = await demoInHand();
  const { page, at, goTo, figure, troubles } = hands;
  await goTo('#/plan/review');
  await at('review-planned').waitFor();
  await inPlan(hands);
  const made = Number(await figure('planned-started-2'));
  const parts = ['firsts', 'seconds', 'scrapped', 'flying'].map((row) => figure(`planned-${row}-2`));
  expect((await Promise.all(parts)).reduce((sum, each) => sum + Number(each), 0)).toBe(made);
  expect(await at('fits-answer').textContent()).toMatch(/^About \d+ pieces that come out/);
  const pages = await printed(page);
  expect(pages).toHaveLength(1);
  expect(pages[0]?.text).toContain('Batches side by side');
  // The margin at the foot stays blank.
  expect(pages[0]?.inkIn({ x: 0, y: 285, width: 210, height: 12 })).toBeUndefined();
  expect(troubles).toEqual([]);
  await page.context().close();
});
