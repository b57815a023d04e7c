/**
 * How long an offline start takes, from the beginning of the navigation, with the service worker stopped and the main
 * thread slowed down to a tablet's: until the counts stand on the bench, however long the log is, and to the first paint.
 */
import type { BrowserContext, Page } from 'playwright-core';
import { makeReadyOffline } from '../support/browser.ts';
import { allowToKeep } from '../support/persistent-browser.ts';
import type { Bench } from './harness/bench.ts';
import { type Measured, median } from './harness/row.ts';
import { shopProfile, slowDown } from './harness/shop-profiles.ts';

/** Starts in one browser, of which the median counts. */
const starts = 5;
/** What a start leaves to be done in the background is given so long (ms) before the next. */
const between = 1500;

interface Start {
  readonly shown: number;
  readonly painted: number;
}

/** Where to start, and what shows that it has: a test id. */
interface Place {
  readonly profile: string;
  readonly url: string;
  readonly shown: string;
}

export async function measure(bench: Bench): Promise<readonly Measured[]> {
  const url = `${bench.appUrl()}#/bench`;
  const places: Record<string, Place> = {
    'static page': { profile: await staticProfile(bench), url: bench.staticUrl, shown: 'main' },
  };
  for (const events of [0, 100_000, 1_000_000]) {
    const { profile } = await shopProfile(bench, events);
    places[events] = { profile: bench.copyOf(profile), url, shown: '[data-testid=stage-kit-parts]' };
  }
  const shown: Record<string, number[]> = {};
  const painted: Record<string, number[]> = {};
  const names = Object.keys(places);
  for (let round = 0; round < bench.rounds; round += 1) {
    for (let turn = 0; turn < names.length; turn += 1) {
      const name = names[(turn + round) % names.length] ?? '';
      const place = places[name];
      if (!place) continue;
      const each = await bench.inBrowser(place.profile, (context) => startsIn(context, place));
      shown[name] = [...(shown[name] ?? []), median(each.map((start) => start.shown))];
      painted[name] = [...(painted[name] ?? []), median(each.map((start) => start.painted))];
    }
  }
  const [empty = [], small = [], large = []] = [shown[0], shown[100_000], shown[1_000_000]];
  const flat = { kind: 'at-most-times', times: 1.25, of: 'limit' } as const;
  const work = 'offline start to counts on the bench, CPU 4 × slower; limit: the empty log';
  return [
    { id: 'start-0', work, unit: 'ms', figures: { ours: empty }, bars: [] },
    { id: 'start-100000', work, unit: 'ms', figures: { ours: small, limit: empty }, bars: [flat] },
    { id: 'start-1000000', work, unit: 'ms', figures: { ours: large, limit: empty }, bars: [flat] },
    {
      id: 'start-first-paint',
      work: 'first paint of the same with 1,000,000 events; limit: a static page with a small worker',
      unit: 'ms',
      figures: { ours: painted[1_000_000] ?? [], limit: painted['static page'] ?? [] },
      bars: [{ kind: 'at-most-times', times: 1.2, of: 'limit' }],
    },
  ];
}

async function staticProfile(bench: Bench): Promise<string> {
  const profile = bench.newProfile();
  await bench.inBrowser(profile, async (context) => {
    const page = await context.newPage();
    await page.goto(bench.staticUrl);
    await makeReadyOffline(page);
  });
  return profile;
}

async function startsIn(context: BrowserContext, place: Place): Promise<readonly Start[]> {
  await allowToKeep(context);
  await context.setOffline(true);
  await context.addInitScript(watchStart, place.shown);
  const all: Start[] = [];
  for (let count = 0; count < starts; count += 1) {
    const page = await context.newPage();
    await stopWorkers(page);
    await slowDown(page);
    await page.goto(place.url, { waitUntil: 'commit' });
    all.push(await page.evaluate(() => globalThis.startSeen));
    await page.waitForTimeout(between);
    await page.close();
  }
  return all;
}

/** Service workers are stopped as the browser stops those that it has not needed for a while. */
async function stopWorkers(page: Page): Promise<void> {
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('ServiceWorker.enable');
  await devtools.send('ServiceWorker.stopAllWorkers');
  await devtools.detach();
}

declare global {
  /** Put there by `watchStart`. */
  var startSeen: Promise<Start>;
}

/** Runs in the page, before anything of its own. */
function watchStart(selector: string): void {
  globalThis.startSeen = new Promise((resolve) => {
    const observer = new MutationObserver(() => {
      if (!document.querySelector(selector)) return;
      observer.disconnect();
      // A message that is sent while a frame is made comes once it has been handed over to be shown.
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => {
          const shown = performance.now();
          const told = () => performance.getEntriesByName('first-paint')[0]?.startTime;
          const wait = () => {
            const painted = told();
            if (painted === undefined) setTimeout(wait, 20);
            else resolve({ shown, painted });
          };
          wait();
        };
        port2.postMessage(undefined);
      });
    });
    observer.observe(document, { subtree: true, childList: true });
  });
}
