/**
 * From the finger that leaves *pass* to the saved mark and the new count on the screen, with the main thread slowed down
 * to a tablet's; beside it, in the same page after each tap, one bare strict transaction.
 */
import type { BrowserContext, Page } from 'playwright-core';
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
  const bareProfile = bench.newProfile();
  const appPage = (context: BrowserContext, stage: string) => openStage(context, `${bench.appUrl()}${stage}`);
  const forecasting = bench.copyOf((await shopProfile(bench, 0)).profile);
  const tapped: Record<string, number[]> = { bare: [] };
  const raw: Record<string, number[]> = { bare: [] };
  const note = (name: string | number, times: Times) => {
    tapped[name] = [...(tapped[name] ?? []), quantile(times.taps, 0.95)];
    raw[name] = [...(raw[name] ?? []), median(times.raw)];
  };
  for (let round = 0; round < bench.rounds; round += 1) {
    for (const [events, { profile, stage }] of round % 2 ? [...shops].reverse() : shops)
      note(events, await bench.inBrowser(profile, async (context) => tapOn(await appPage(context, stage))));
    const { stage } = await shopProfile(bench, 0);
    note(
      'forecasting',
      await bench.inBrowser(forecasting, async (context) => {
        const page = await appPage(context, stage);
        const { call } = await bench.openModule(context, 'forecast');
        await call('keepForecasting');
        await page.bringToFront();
        return tapOn(page);
      }),
    );
    note(
      'bare',
      await bench.inBrowser(bareProfile, async (context) => tapOn(await barePage(bench, context))),
    );
  }
  const work = 'pointer up on pass to the saved mark on screen, CPU 4 × slower, 95th percentile';
  const soon = { kind: 'at-most-more', more: 50, than: 'limit' } as const;
  const figuresAt = (events: number | 'forecasting') => ({
    ours: tapped[events] ?? [],
    limit: raw[events] ?? [],
    'bare page': tapped.bare ?? [],
  });
  return [
    {
      id: 'tap-screen',
      work: `${work}; limit: median of one strict transaction`,
      unit: 'ms',
      figures: figuresAt(0),
      bars: [soon],
    },
    {
      id: 'tap-screen-1000000',
      work: `${work}; 1,000,000 events in the store`,
      unit: 'ms',
      figures: { ...figuresAt(1_000_000), 'empty log': tapped[0] ?? [] },
      bars: [soon, { kind: 'at-most-times', times: 1.1, of: 'empty log' }],
    },
    {
      id: 'tap-screen-forecasting',
      work: `${work}; while a worker beside it forecasts`,
      unit: 'ms',
      figures: { ...figuresAt('forecasting'), 'no forecast': tapped[0] ?? [] },
      bars: [soon, { kind: 'at-most-times', times: 1.1, of: 'no forecast' }],
    },
  ];
}

async function openStage(context: BrowserContext, address: string): Promise<Page> {
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

/** What the browser and this machine need themselves, from pointer up to the screen: see in-page/bare-tap.ts. */
async function barePage(bench: Bench, context: BrowserContext): Promise<Page> {
  await context.addInitScript(watchTaps);
  const { page, call } = await bench.openModule(context, 'bare-tap');
  await slowDown(page);
  await call('showBareTap');
  return page;
}

async function tapOn(page: Page): Promise<Times> {
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
    await page.waitForTimeout(betweenTaps);
  }
  return times;
}

declare global {
  /** Put there by `watchTaps`: ms from the next pointer up to what it changes on the screen, null when nothing does within 5 s; ms of a bare transaction. */
  var tapSeen: () => Promise<number | null>;
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
