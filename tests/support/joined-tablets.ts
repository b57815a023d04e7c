/** Tablets of one shop in a browser, each with a context of its own, that meet through a broker. */
import type { Browser } from 'playwright-core';
import { expect } from 'vitest';
import { type OpenPage, openPage } from './browser.ts';
import { setUpShop } from './first-ten-minutes.ts';
import { holdingOfPage } from './holding-of-page.ts';
import { type Maker, maker } from './maker.ts';

export type Tablet = OpenPage & { readonly hand: Maker };

/** A line that was cut is told of by the browser, and by nothing else on the console. */
const aboutLines = /WebSocket connection to|broken close frame/;
export const realTroubles = ({ troubles }: OpenPage) =>
  troubles.filter((trouble) => !aboutLines.test(trouble));

/** How the tablet says that it stands, on the page of the other tablets. */
export const standing = ({ page }: Pick<Tablet, 'page'>, kind: string) =>
  page.locator(`[data-testid=replica-status][data-kind=${kind}]`);

interface Joining {
  readonly url: string;
  readonly link: string;
  readonly prepare?: ((hand: Maker) => Promise<void>) | undefined;
}

/** A tablet that joins by the invitation in its address: with the shop that was set up on it, or without one, at its first start. */
export async function joinedTablet(browser: Browser, { url, link, prepare }: Joining): Promise<Tablet> {
  const opened = await openPage(browser, { url });
  const hand = maker(opened.page);
  await prepare?.(hand);
  await opened.page.evaluate((to) => location.assign(to), link);
  await hand.tap('join-go');
  // Who had nothing is led to the bench, and told what has come.
  await (prepare ? standing(opened, 'up-to-date') : hand.at('arrived')).waitFor();
  // The key is left in no address.
  expect(opened.page.url()).not.toContain('join/');
  await hand.goTo('#/set-up/tablets');
  await standing(opened, 'up-to-date').waitFor();
  return { ...opened, hand };
}

/** Sets a shop up on a tablet, with one tray of beech; resolves with its code. */
export async function shopWithOneTray(hand: Maker, pieces: number): Promise<string> {
  const { beech } = await setUpShop(hand);
  await hand.goTo('#/trays/new');
  await hand.tap(beech);
  await hand.at('make-pieces').fill(String(pieces));
  await hand.at('make-count').fill('1');
  await hand.close('make-save');
  return hand.figure('made-code');
}

/** Waits until all hold the same entries, as many as are asked for; resolves with how many. */
export async function untilSame(
  tablets: readonly Pick<Tablet, 'page'>[],
  isSo = (_entries: number) => true,
): Promise<number> {
  let held: readonly string[] = [];
  // Only ends a run that hangs, and says where it stood.
  for (let look = 0; look < 300; look += 1) {
    held = await Promise.all(tablets.map(({ page }) => holdingOfPage(page)));
    const entries = Number(held[0]?.split(' ')[0]);
    if (new Set(held).size === 1 && isSo(entries)) return entries;
    await new Promise((resolve) => setTimeout(resolve, 250));
  }
  throw new Error(`they do not hold the same: ${held.join(', ')}`);
}

/** What is left at the stage that is open. */
export const leftOn = ({ hand }: Pick<Tablet, 'hand'>) =>
  hand.at('stage-left').locator('.figures').textContent();
