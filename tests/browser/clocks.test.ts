import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import {
  accessibilityFaults,
  launchBrowser,
  type OpenPage,
  openPage,
  watchTroubles,
} from '../support/browser.ts';
import { makeUpTrays, setUpShop } from '../support/first-ten-minutes.ts';
import { maker } from '../support/maker.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

interface Passed {
  readonly station: string;
  readonly seq: number;
  readonly stamp: { readonly wall: number; readonly tick: number };
  readonly zone: { readonly name: string; readonly offset: number };
  readonly day: string;
  readonly clock?: string;
}

/** The passes that the tablet's database holds, by their numbers. */
async function passes(page: Page): Promise<readonly Passed[]> {
  const events = await page.evaluate(async () => {
    const asked = <Result>(request: IDBRequest<Result>) =>
      new Promise<Result>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const db = await asked(indexedDB.open('tallywright'));
    const records = await asked(db.transaction('events').objectStore('events').getAll());
    db.close();
    return records.map(({ event }) => event);
  });
  return events.filter(({ kind }) => kind === 'passed').sort((a, b) => a.seq - b.seq);
}

/** A shop with four trays, opened at a moment (UTC) by a clock that stands still until it is set. */
async function openShop(moment: string, opened?: OpenPage) {
  const { page, troubles } = opened ?? (await openPage(browser));
  const set = (to: string) => page.clock.setFixedTime(new Date(to));
  await set(moment);
  await page.reload();
  const hands = maker(page);
  const trays = await makeUpTrays(hands, await setUpShop(hands));
  return { page, hands, trays, set, troubles };
}

const inOrder = (events: readonly Passed[]) =>
  events.every(({ stamp: { wall, tick } }, index) => {
    const before = events[index - 1]?.stamp;
    return !before || wall > before.wall || (wall === before.wall && tick > before.tick);
  });

test('a clock set back six years in mid-day: order and identity hold, it is said once, and the day is marked', async () => {
  const { page, hands, trays, set, troubles } = await openShop('2027-03-02T09:00:00Z');
  const { at, tap, close, goTo, workOn } = hands;
  await workOn('kit-parts', trays.beech[0]);
  await tap('pass', 2);
  await goTo('#/trays');
  expect(await at('clock-notice').count()).toBe(0);

  await set('2021-03-02T09:00:00Z');
  await workOn('kit-parts', trays.beech[0]);
  await tap('pass', 3);
  await goTo('#/trays');
  await at('clock-notice').waitFor();
  expect(await at('clock-notice').textContent()).toContain('2 Mar 2021');
  expect(await at('clock-notice').count()).toBe(1);
  expect(await accessibilityFaults(page)).toEqual([]);
  await close('clock-put-away');
  await workOn('kit-parts', trays.beech[0]);
  await tap('pass');
  for (const place of ['#/bench', '#/trays', '#/yield', '#/day', '#/set-up']) {
    await goTo(place);
    expect(await at('clock-notice').count()).toBe(0);
  }
  await goTo('#/day');
  await at('day-clock-mark').waitFor();
  expect(await hands.figure('day-passed-kit-parts', 'data-day')).toBe('4');

  await set('2027-03-02T09:30:00Z');
  await workOn('kit-parts', trays.beech[0]);
  await tap('pass');
  await goTo('#/day');
  expect(await hands.figure('day-passed-kit-parts', 'data-day')).toBe('3');
  expect(await at('day-clock-mark').count()).toBe(0);
  expect(await accessibilityFaults(page)).toEqual([]);
  await tap('marked-day-2021-03-02');
  await at('day-clock-mark').waitFor();

  const found = await passes(page);
  expect(found.map(({ day, clock }) => `${day} ${clock ?? 'sound'}`)).toEqual([
    ...Array(2).fill('2027-03-02 sound'),
    ...Array(4).fill('2021-03-02 doubtful'),
    '2027-03-02 sound',
  ]);
  expect(inOrder(found)).toBe(true);
  expect(new Set(found.map(({ station, seq }) => `${station}:${seq}`)).size).toBe(7);
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('a clock that had been ahead and is set right is believed when the maker says so, also after a restart', async () => {
  const { page, hands, trays, set, troubles } = await openShop('2027-03-05T09:00:00Z');
  const { at, tap, close, goTo, workOn } = hands;
  await workOn('kit-parts', trays.plum[0]);
  await tap('pass');
  await set('2027-03-02T09:00:00Z');
  await goTo('#/trays');
  await page.reload();
  await at('clock-notice').waitFor();
  await close('clock-right');
  expect(await at('clock-notice').count()).toBe(0);
  await workOn('kit-parts', trays.plum[0]);
  await tap('pass');
  await goTo('#/trays');
  await page.reload();
  await workOn('kit-parts', trays.plum[0]);
  await tap('pass');
  await goTo('#/trays');
  expect(await at('clock-notice').count()).toBe(0);
  const found = await passes(page);
  expect(found.map(({ day, clock }) => `${day} ${clock ?? 'sound'}`)).toEqual([
    '2027-03-05 sound',
    '2027-03-02 sound',
    '2027-03-02 sound',
  ]);
  expect(inOrder(found)).toBe(true);
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('a tablet that is carried to another zone counts and tells the days and times of the shop', async () => {
  // A context without a zone of its own: only so can it be changed while the page is there.
  const context = await browser.newContext({ locale: 'en-GB', viewport: { width: 1280, height: 800 } });
  const fresh = await context.newPage();
  const session = await context.newCDPSession(fresh);
  const carryTo = (timezoneId: string) => session.send('Emulation.setTimezoneOverride', { timezoneId });
  await carryTo('Pacific/Auckland');
  const watched = { page: fresh, troubles: watchTroubles(fresh, new URL(inject('appUrl')).origin) };
  await fresh.goto(inject('appUrl'));
  const { page, hands, trays, troubles } = await openShop('2027-01-10T23:30:00Z', watched);
  const { tap, goTo, workOn, openTray, at } = hands;
  // In the shop it is half past twelve on the 11th, where the tablet is half past three on the 10th.
  await carryTo('America/Los_Angeles');
  await page.reload();
  expect(await page.evaluate(() => new Date().getHours())).toBe(15);
  await workOn('kit-parts', trays.beech[1]);
  await tap('pass');
  expect(await passes(page)).toMatchObject([
    { day: '2027-01-11', zone: { name: 'Pacific/Auckland', offset: 780 } },
  ]);
  await goTo('#/day');
  expect(await hands.figure('day-passed-kit-parts', 'data-day')).toBe('1');
  expect(await page.locator('h1').textContent()).toContain('11 Jan 2027');
  await openTray(trays.beech[1]);
  await at('history').filter({ hasText: '12:30' }).waitFor();
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('in the night when the clocks go back both half past ones are kept, in their order and on one day', async () => {
  // 31 October 2027, 01:00 UTC: the last Sunday of October (IANA Time Zone Database, file europe, rule EU).
  const { page, hands, trays, set, troubles } = await openShop('2027-10-31T00:30:00Z');
  await hands.workOn('kit-parts', trays.beech[0]);
  await hands.tap('pass', 2);
  await set('2027-10-31T01:30:00Z');
  await hands.tap('pass', 3);
  const found = await passes(page);
  expect(found.map(({ day, zone, clock }) => `${day} ${zone.offset} ${clock ?? 'sound'}`)).toEqual([
    ...Array(2).fill('2027-10-30 60 sound'),
    ...Array(3).fill('2027-10-30 0 sound'),
  ]);
  expect(inOrder(found)).toBe(true);
  await hands.goTo('#/day');
  expect(await hands.figure('day-passed-kit-parts', 'data-day')).toBe('5');
  expect(troubles).toEqual([]);
  await page.context().close();
});
