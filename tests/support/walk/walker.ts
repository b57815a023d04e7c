import type { Locator, Page } from 'playwright-core';

/** The places of the app that the job leads to. */
export type WalkedPlace = 'bench' | 'trays' | 'plan' | 'shelf' | 'set-up';

/** One who works the app in a single way: each tap, or each press of a key, is counted. */
export interface Walker {
  readonly page: Page;
  /** Taps or presses so far. */
  readonly count: () => number;
  /** Goes to a place by the rack of places. */
  readonly go: (place: WalkedPlace) => Promise<void>;
  /** Presses a button or follows a link. */
  readonly press: (target: Locator) => Promise<void>;
  /** Puts `text` in the place of what stands in a field; a date as YYYY-MM-DD. */
  readonly type: (field: Locator, text: string) => Promise<void>;
  /** Takes one of a row of choices. */
  readonly pick: (choice: Locator) => Promise<void>;
  /** Saves what stands in the fields; `id` is that of the button. */
  readonly save: (id: string) => Promise<void>;
  /** An act of the stage screen, by the id of its button. */
  readonly act: (id: string) => Promise<void>;
  /** Passes all `pieces` that wait at the stage. */
  readonly passAll: (pieces: number) => Promise<void>;
}

/** What it takes to work the stage screen alone. */
export type BenchWalker = Pick<Walker, 'page' | 'count' | 'act' | 'passAll'>;

/** A moment longer than the bounce of a button or a key, so that two presses are two (ms). */
const betweenPresses = 160;
/** What ends something is deaf this long (ms) after it acted. */
const afterClosing = 740;

const closes = /save|pass-rest|load-all|take-out|next-tray|pause|new-shop/;

/** Waits as one does who does not press twice by a slip. */
export async function breathe(page: Page, id: string): Promise<void> {
  await page.waitForTimeout(closes.test(id) ? afterClosing : betweenPresses);
}

export const at = (page: Page, id: string): Locator => page.locator(`[data-testid="${id}"]`);

export const idOf = async (target: Locator): Promise<string> =>
  (await target.getAttribute('data-testid')) ?? '';

export const placeLink = (page: Page, place: WalkedPlace): Locator =>
  page.locator(`nav.places .places-rack a[href="#/${place}"]`);
