import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { accessibilityFaults, launchBrowser, openPage } from '../support/browser.ts';
import { type Maker, maker } from '../support/maker.ts';
import { expectStores, receive, setUpStores } from '../support/stores-hands.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** A tray of so many pieces of the one variant; its code. */
async function makeUp(hands: Maker, { variant, pieces }: { variant: string; pieces: string }) {
  const { at, close, goTo, tap } = hands;
  await goTo('#/trays/new');
  await tap(variant);
  await at('make-batch').selectOption({ label: 'Spring' });
  await at('make-pieces').fill(pieces);
  await at('make-count').fill('1');
  await close('make-save');
  const code = (await hands.figure('made-code')).trim();
  await close('made-done');
  return code;
}

/** 25 clamps, which the glue's stage names, with a least time of 8 h of the usual 24. */
async function setUpClamps({ at, tap, close, goTo, page }: Maker): Promise<void> {
  await goTo('#/set-up/resources');
  await tap('add-resource');
  await at('resource-name').fill('Clamps');
  await at('resource-capacity').fill('25');
  await close('resource-save');
  await goTo('#/set-up/stages');
  await tap('stage-glue-cures');
  await page.locator('[data-testid=stage-resource] label').filter({ hasText: 'Clamps' }).click();
  await at('stage-least').fill('8');
  await close('stage-save');
}

async function throughGlueUp(
  { tap, close, workOn }: Maker,
  { code, pieces }: { code: string; pieces: number },
): Promise<void> {
  await workOn('kit-parts', code);
  await close('pass-rest');
  await workOn('cut-and-bore', code);
  await tap('pass', pieces);
  await workOn('glue-up', code);
  await close('pass-rest');
}

/*
 * Made by hand. A piece takes one ferrule when it leaves the kitting and two cores when it leaves the glue-up (common
 * practice, no source: a core of two halves). Each: on hand, allotted, free; then what can be started, and what is to be
 * cleaned.
 *
 *                                            cores          ferrules       start   to be cleaned
 * 200 cores and 40 ferrules received         200   0 200     40   0  40    40      –
 * 24 and 2 made up                           200  52 148     40  26  14    14      –
 * all kitted, bored and glued up             148   0 148     14   0  14    14      –
 * 24 and 1 in the 25 clamps                  148   0 148     14   0  14    14      –
 * 1 taken out early, 24 after a week         148   0 148     14   0  14    14      –
 * 2 of the 24 scrapped, cores saved          148   0 148     14   0  14    14      4
 * 1 cleaned                                  149   0 149     14   0  14    14      3
 */
const table = {
  received: { core: '200 0 200', ferrule: '40 0 40', start: '40' },
  madeUp: { core: '200 52 148', ferrule: '40 26 14', start: '14' },
  gluedUp: { core: '148 0 148', ferrule: '14 0 14', start: '14' },
  cleaned: { core: '149 0 149', ferrule: '14 0 14', start: '14' },
} as const;

test('24 are loaded, waited for over a change of the clocks and a week, unloaded, and every count is the one worked out by hand', async () => {
  const { page, troubles } = await openPage(browser, { size: 'tablet' });
  const hands = maker(page);
  const { at, tap, close, goTo, workOn } = hands;
  /** The time on the tablet, from then on standing still. */
  const set = (moment: string) => page.clock.setFixedTime(new Date(moment));
  const board = async (moment: string) => {
    await set(moment);
    await goTo('#/bench');
    await goTo('#/bench/curing');
    await at('curing-board').waitFor();
  };
  const leftOf = (code: string) => hands.figure(`curing-left-${code}`);
  // In Britain clocks go forward at 1:00 UTC on Sunday, 29 March 2026.
  await set('2026-03-28T12:00:00Z');
  await page.reload();
  const ids = await setUpStores(hands);
  const { core, ferrule } = ids;
  await setUpClamps(hands);
  await goTo('#/stores');
  await receive(hands, core, '200');
  await receive(hands, ferrule, '40');
  await expectStores(hands, ids, table.received);
  const tray = await makeUp(hands, { variant: ids.variant, pieces: '24' });
  const small = await makeUp(hands, { variant: ids.variant, pieces: '2' });
  await expectStores(hands, ids, table.madeUp);
  await throughGlueUp(hands, { code: tray, pieces: 24 });
  await throughGlueUp(hands, { code: small, pieces: 2 });
  await expectStores(hands, ids, table.gluedUp);

  // Overfilling is refused, with what is free.
  await workOn('glue-cures', tray);
  await close('load-all');
  await workOn('glue-cures', small);
  await close('load-all');
  expect(await hands.figure('refusal')).toBe('Only 1 place is free: Clamps.');
  await tap('load-1');
  await close('load-1');
  expect(await hands.figure('refusal')).toBe('All places are taken: Clamps.');
  await expectStores(hands, ids, table.gluedUp);

  await board('2026-03-28T13:00:00Z');
  const clamps = page.locator('[data-testid^="places-resource/"]');
  expect(await clamps.textContent()).toBe('25 of 25 · 0 free');
  expect([await leftOf(tray), await leftOf(small)]).toEqual(['23 h 00', '23 h 00']);
  await page.reload();
  await at('curing-board').waitFor();
  expect([await leftOf(tray), await leftOf(small)]).toEqual(['23 h 00', '23 h 00']);
  expect(await accessibilityFaults(page)).toEqual([]);

  // Too early by an hour: it is asked once, and an answer of no changes nothing.
  await board('2026-03-28T19:00:00Z');
  await page.waitForTimeout(400);
  await close(`curing-out-${small}`);
  expect(await hands.figure(`curing-early-${small}`)).toBe('1 h too early. The data sheet rules.');
  expect(await accessibilityFaults(page)).toEqual([]);
  await tap(`curing-keep-${small}`);
  expect(await clamps.textContent()).toBe('25 of 25 · 0 free');
  await tap(`curing-out-${small}`);
  await close(`curing-out-early-${small}`);
  await at(`curing-${small}`).waitFor({ state: 'detached' });
  expect(await clamps.textContent()).toBe('24 of 25 · 1 free');
  await expectStores(hands, ids, table.gluedUp);
  await hands.openTray(small);
  await page.locator('[data-testid=history] li .event-said').first().waitFor();
  expect(await page.locator('[data-testid=history] li .event-said').first().textContent()).toBe(
    '1 piece passed Glue cures, 1 h early',
  );

  // The clocks have gone forward: 24 h are 24 h, and end at 13:00 by the clock on the wall.
  await board('2026-03-29T11:00:00Z');
  await page.reload();
  await at('curing-board').waitFor();
  expect(await leftOf(tray)).toBe('1 h 00');
  expect(await hands.figure(`curing-${tray}`)).toContain('ready 13:00');

  // A week off.
  await board('2026-04-05T12:00:00Z');
  await page.reload();
  await at('curing-board').waitFor();
  expect(await leftOf(tray)).toBe('ready');
  expect(await hands.figure(`curing-${tray}`)).toContain('for 7 days');
  await page.waitForTimeout(400);
  await close(`curing-out-${tray}`);
  await at(`curing-${tray}`).waitFor({ state: 'detached' });
  expect(await clamps.textContent()).toBe('0 of 25 · 25 free');
  await expectStores(hands, ids, table.gluedUp);
  await hands.openTray(tray);
  await page.locator('[data-testid=history] li .event-said').first().waitFor();
  expect(await page.locator('[data-testid=history] li .event-said').first().textContent()).toBe(
    '24 pieces passed Glue cures',
  );

  await workOn('rough-turn', tray);
  expect(await hands.left()).toBe(24);
  for (let scrap = 0; scrap < 2; scrap += 1) await hands.flaw('tear-out', 'outcome-scrapped', `save-${core}`);
  expect(await hands.left()).toBe(22);
  await expectStores(hands, ids, table.gluedUp);
  expect(await hands.figure(`clean-${core}-count`)).toBe('4');
  await tap(`clean-${core}-one`);
  await expectStores(hands, ids, table.cleaned);
  expect(await hands.figure(`clean-${core}-count`)).toBe('3');
  expect(troubles).toEqual([]);
  await page.context().close();
});
