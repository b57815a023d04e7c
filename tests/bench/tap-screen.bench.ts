/**
 * From the finger that leaves *pass* to the saved mark and the new count on the screen, with the main thread slowed down
 * to a tablet's; beside it, in the same page after each tap, one bare strict transaction.
 */
import type { BrowserContext } from 'playwright-core';
import { allowToKeep } from '../support/persistent-browser.ts';
import type { Bench } from './harness/bench.ts';
import { type Measured, median, quantile } from './harness/row.ts';
import { type ShopProfile, shopProfile, slowDown } from './harness/shop-profiles.ts';

const taps = 60;
/** The first taps fetch code. */
const unmeasured = 8;
/** Two touches of one button nearer than 120 ms are one that bounced. */
const betweenTaps = 150;

interface Times {
  readonly taps: readonly number[];
  readonly raw: readonly number[];
}

export async function measure(bench: Bench): Promise<readonly Measured[]> {
  const sizes = [0, 1_000_000];
  const shops = new Map<number, ShopProfile>();
  for (const events of sizes) {
    const { profile, stage } = await shopProfile(bench, events);
    shops.set(events, { profile: bench.copyOf(profile), stage });
  }
  const tapped: Record<number, number[]> = {};
  const raw: Record<number, number[]> = {};
  for (let round = 0; round < bench.rounds; round += 1) {
    for (const [events, { profile, stage }] of round % 2 ? [...shops].reverse() : shops) {
      const times = await bench.inBrowser(profile, (context) => tapOn(context, `${bench.appUrl()}${stage}`));
      tapped[events] = [...(tapped[events] ?? []), quantile(times.taps, 0.95)];
      raw[events] = [...(raw[events] ?? []), median(times.raw)];
    }
  }
  const work =
    'pointer up on pass to the saved mark on screen, CPU 4 × slower, 95th percentile; limit: median of one strict transaction';
  const [empty = [], full = []] = sizes.map((events) => tapped[events]);
  const [limitEmpty = [], limitFull = []] = sizes.map((events) => raw[events]);
  const soon = { kind: 'at-most-more', more: 50, than: 'limit' } as const;
  return [
    { id: 'tap-screen', work, unit: 'ms', figures: { ours: empty, limit: limitEmpty }, bars: [soon] },
    {
      id: 'tap-screen-1000000',
      work: `${work}; 1,000,000 events in the store`,
      unit: 'ms',
      figures: { ours: full, limit: limitFull, 'empty log': empty },
      bars: [soon, { kind: 'at-most-times', times: 1.1, of: 'empty log' }],
    },
  ];
}

async function tapOn(context: BrowserContext, address: string): Promise<Times> {
  await allowToKeep(context);
  await context.addInitScript(watchTaps);
  const page = await context.newPage();
  await slowDown(page);
  await page.goto(address);
  const pass = page.locator('[data-testid=pass]');
  await pass.waitFor();
  // Past the rest of the start: the second copy is compared and the whole shop read beside the first screen.
  await page.waitForTimeout(3000);
  const box = await pass.boundingBox();
  if (!box) throw new Error('There is no pass button.');
  const times = { taps: [] as number[], raw: [] as number[] };
  for (let count = 0; count < unmeasured + taps; count += 1) {
    const seen = page.evaluate(() => globalThis.tapSeen());
    // The page must be listening before the finger comes down.
    await page.evaluate(() => undefined);
    await page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2);
    const took = await seen;
    const bare = await page.evaluate(() => globalThis.bareTransaction());
    if (count >= unmeasured) {
      times.taps.push(took);
      times.raw.push(bare);
    }
    await page.waitForTimeout(betweenTaps);
  }
  return times;
}

declare global {
  /** Put there by `watchTaps`: ms from the next pointer up to what it changes on the screen; ms of a bare transaction. */
  var tapSeen: () => Promise<number>;
  var bareTransaction: () => Promise<number>;
}

/** Runs in the page, before anything of its own. */
function watchTaps(): void {
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
