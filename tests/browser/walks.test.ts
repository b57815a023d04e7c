/** The whole job done in a single way at a time: by finger, by keyboard, by foot switch at the bench. Each act is counted. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser, openPage } from '../support/browser.ts';
import { finger } from '../support/walk/finger.ts';
import { keyboard } from '../support/walk/keyboard.ts';
import { pedals } from '../support/walk/pedals.ts';
import { at } from '../support/walk/walker.ts';
import { type JobCounts, walkFromTheBench, walkTheRoute, walkToTheBench } from '../support/walk/whole-job.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** A walk ends only by a hang: it is long, and the machine may have other work (ms). */
const longest = 900_000;

/**
 * The most that each job may take: taps of a finger, presses of a key, presses of a pedal. A change that needs more is seen
 * here; one that needs less lowers its number. The remark says what could not be done without.
 */
const table: readonly (readonly [job: string, touch: number, keys: number, foot?: number])[] = [
  // Touch: four signs of a name, and ten steps: the shop, a wood, a variant, each opened and saved on its own page.
  // Keys: two of them pass by the way to the manual.
  ['a shop with one wood and one variant', 15, 56],
  // Touch: nine signs, and to the plan, open, two fields, save.
  ['a target on the plan, with its date', 14, 30],
  // Touch: to the trays, make up, a field and its sign, save.
  ['a tray made up', 5, 13],
  ['from the tray made up to its first stage', 1, 2],
  // A pass, its undo, a flaw and what becomes of it, and the rest: at once by finger, each by a press.
  ['three pieces, one of them mended, and a slip taken back', 5, 6, 6],
  // On to each stage by one; three passes, or one where the stage is done in bulk.
  ['two bench stages, and on to each', 6, 8, 8],
  // On, in and out.
  ['glue: on to it, loaded, taken out the next day', 3, 3, 3],
  ['four bench stages, and on to each', 14, 16, 16],
  ['sealer: on to it, loaded, taken out the next day', 3, 3, 3],
  ['four more bench stages, and on to each', 14, 16, 16],
  // On, a flaw and what becomes of it, two passes.
  ['on to the check, one lowered to a second', 5, 5, 5],
  // On, the firsts, the second.
  ['photographed, and so finished', 3, 4, 4],
  // Touch: the stage screen stands alone, so two lead out of it; to the shelf, move, sold, save.
  ['one sold from the shelf', 6, 30],
  ['the review of the batch', 2, 18],
];

/** The jobs that took more than the table says, and those that it does not know. */
function beyond(way: 'touch' | 'keys' | 'foot', counts: JobCounts): readonly string[] {
  const column = { touch: 1, keys: 2, foot: 3 } as const;
  return Object.entries(counts).flatMap(([job, count]) => {
    const most = table.find(([name]) => name === job)?.[column[way]];
    return most !== undefined && count <= most ? [] : [`${job}: ${count}, not ${most}`];
  });
}

test(
  'the whole job is done by a finger alone',
  async () => {
    const { page, troubles } = await openPage(browser, { size: 'tablet' });
    const hand = finger(page);
    const counts = {
      ...(await walkToTheBench(hand)),
      ...(await walkTheRoute(hand)),
      ...(await walkFromTheBench(hand)),
    };
    expect(Object.keys(counts)).toEqual(table.map(([job]) => job));
    expect(beyond('touch', counts)).toEqual([]);
    expect(troubles).toEqual([]);
    await page.context().close();
  },
  longest,
);

test(
  'the whole job is done by the keyboard alone; each stop has a name and a ring and is in sight, and no focus is lost',
  async () => {
    const { page, troubles } = await openPage(browser, { size: 'tablet', hasTouch: false });
    const hand = keyboard(page);
    const counts = {
      ...(await walkToTheBench(hand)),
      ...(await walkTheRoute(hand)),
      ...(await walkFromTheBench(hand)),
    };
    expect(Object.keys(counts)).toEqual(table.map(([job]) => job));
    expect(hand.faults).toEqual([]);
    expect(beyond('keys', counts)).toEqual([]);
    expect(troubles).toEqual([]);
    await page.context().close();
  },
  longest,
);

test(
  'a tray goes through the whole route by foot switch alone, and a pause, the next tray and a slip are one press each',
  async () => {
    const { page, troubles } = await openPage(browser, { size: 'tablet' });
    await walkToTheBench(finger(page), { trays: 2 });
    const foot = pedals(page);
    const here = page.url();
    await foot.act('pause');
    await foot.act('next-tray');
    await page.waitForURL((url) => url.href !== here);
    await foot.act('flaw-part-faulty');
    await foot.act('flaw-cancel');
    expect(foot.count()).toBe(4);
    // Nothing is left of the other tray, so that none but the first one waits, here and at the stages after.
    for (let piece = 0; piece < 3; piece += 1) {
      await foot.act('flaw-part-faulty');
      await foot.act('outcome-scrapped');
    }
    await at(page, 'pass').and(page.locator('[aria-disabled]')).waitFor();
    await foot.act('next-tray');
    await page.waitForURL(here);
    expect(beyond('foot', await walkTheRoute(foot))).toEqual([]);
    expect(troubles).toEqual([]);
    await page.context().close();
  },
  longest,
);
