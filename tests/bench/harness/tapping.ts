/** Taps on the pass button of the app, and how long each took from pointer up to the screen. */
import type { BrowserContext, Page } from 'playwright-core';
import { allowToKeep } from '../../support/persistent-browser.ts';
import { slowDown } from './shop-profiles.ts';

const usualTaps = 60;
/** The first taps fetch code. */
const unmeasured = 8;
/** Two touches of one button nearer than 120 ms are one that bounced. */
const usualPause = 150;

export interface Times {
  readonly taps: readonly number[];
  /** Of one bare strict transaction in the same page after each tap. */
  readonly raw: readonly number[];
}

/** Opens a stage of the app on a page slowed down to a tablet's pace, past the rest of the start. */
export async function openStage(context: BrowserContext, address: string): Promise<Page> {
  await allowToKeep(context);
  await context.addInitScript(watchTaps);
  const page = await context.newPage();
  await slowDown(page);
  await page.goto(address);
  await page.locator('[data-testid=pass]').waitFor();
  // Past the rest of the start: the second copy is compared and the whole shop read beside the first screen.
  await page.waitForTimeout(5000);
  return page;
}

/** Taps pass again and again, so many measured times and so long (ms) apart; a page that answers to `tapSeen` is wanted. */
export async function tapOn(
  page: Page,
  { taps = usualTaps, pause = usualPause }: { taps?: number; pause?: number } = {},
): Promise<Times> {
  const box = await page.locator('[data-testid=pass]').boundingBox();
  if (!box) throw new Error('There is no pass button.');
  const times = { taps: [] as number[], raw: [] as number[] };
  let unanswered = 0;
  for (let count = 0; count < unmeasured + taps; count += 1) {
    const seen = page.evaluate(() => globalThis.tapSeen());
    // The page must be listening before the finger comes down.
    await page.evaluate(() => undefined);
    await page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2);
    const took = await seen;
    // A machine that stands still for a moment makes one touch of two: the button rightly feels the first only.
    if (took === null) unanswered += 1;
    if (unanswered > 3) throw new Error('Taps were not answered within 5 s.');
    const bare = await page.evaluate(() => globalThis.bareTransaction());
    if (count >= unmeasured && took !== null) {
      times.taps.push(took);
      times.raw.push(bare);
    }
    await page.waitForTimeout(pause);
  }
  return times;
}

declare global {
  /** Put there by `watchTaps`: ms from the next pointer up to what it changes on the screen, null when nothing does within 5 s; ms of a bare transaction. */
  var tapSeen: () => Promise<number | null>;
  var bareTransaction: () => Promise<number>;
}

/** Runs in the page, before anything of its own. */
export function watchTaps(): void {
  let lifted = 0;
  addEventListener(
    'pointerup',
    ({ timeStamp }) => {
      lifted = timeStamp;
    },
    { capture: true, passive: true },
  );
  const count = () => document.querySelector('[data-testid=stage-left] .figures')?.textContent;
  const mark = () => document.querySelector<HTMLElement>('[data-testid=saved-mark]')?.dataset.state;
  globalThis.tapSeen = () =>
    new Promise((resolve) => {
      setTimeout(() => resolve(null), 5000);
      const before = count();
      const observer = new MutationObserver(() => {
        if (count() === before || mark() !== 'saved') return;
        observer.disconnect();
        // A message that is sent while a frame is made comes once it has been handed over to be shown.
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => resolve(performance.now() - lifted);
          port2.postMessage(undefined);
        });
      });
      observer.observe(document, { subtree: true, childList: true, characterData: true, attributes: true });
    });
  let db: Promise<IDBDatabase> | undefined;
  let written = 0;
  globalThis.bareTransaction = async () => {
    db ??= new Promise((resolve, reject) => {
      const opening = indexedDB.open('bare');
      opening.onupgradeneeded = () => opening.result.createObjectStore('events');
      opening.onsuccess = () => resolve(opening.result);
      opening.onerror = () => reject(opening.error);
    });
    const opened = await db;
    written += 1;
    const start = performance.now();
    await new Promise((resolve, reject) => {
      const tx = opened.transaction('events', 'readwrite', { durability: 'strict' });
      tx.oncomplete = resolve;
      tx.onabort = () => reject(tx.error);
      tx.objectStore('events').put({ kind: 'passed', text: 'x'.repeat(600) }, written);
      tx.commit();
    });
    return performance.now() - start;
  };
}
