/** Yield and Day opened by a tap on their tab with 1,000,000 events in the store, the main thread slowed down to a tablet's. */
import type { BrowserContext } from 'playwright-core';
import { allowToKeep } from '../support/persistent-browser.ts';
import type { Bench } from './harness/bench.ts';
import { type Measured, median } from './harness/row.ts';
import { shopProfile, slowDown } from './harness/shop-profiles.ts';

const screens = ['yield', 'day'] as const;
/** Pages in one browser: each opens each screen once, as it is opened first. */
const pages = 3;

interface Opened {
  /** From pointer up to the screen with its figures, ms. */
  readonly answer: number;
  /** From pointer up to the screen with all that comes on it bit by bit, ms. */
  readonly whole: number;
  /** The longest task over 50 ms until a while later, ms; 0 when there was none. */
  readonly longest: number;
}

export async function measure(bench: Bench): Promise<readonly Measured[]> {
  const { profile } = await shopProfile(bench, 1_000_000);
  const copy = bench.copyOf(profile);
  const answers: Record<string, number[]> = {};
  const wholes: Record<string, number[]> = {};
  const longest: Record<string, number[]> = {};
  for (let round = 0; round < bench.rounds; round += 1) {
    const opened = await bench.inBrowser(copy, (context) => openScreens(context, bench.appUrl()));
    for (const screen of screens) {
      answers[screen] = [...(answers[screen] ?? []), median(opened[screen].map(({ answer }) => answer))];
      wholes[screen] = [...(wholes[screen] ?? []), median(opened[screen].map(({ whole }) => whole))];
      longest[screen] = [...(longest[screen] ?? []), Math.max(...opened[screen].map((each) => each.longest))];
    }
  }
  return screens.flatMap((screen): readonly Measured[] => [
    {
      id: `screen-${screen}`,
      work: `${screen} opened with 1,000,000 events, CPU 4 × slower: tap to figures on screen`,
      unit: 'ms',
      figures: { ours: answers[screen] ?? [] },
      bars: [{ kind: 'at-most', value: 300 }],
    },
    {
      id: `screen-${screen}-task`,
      work: 'the longest task over 50 ms on the main thread meanwhile; 0: none',
      unit: 'ms',
      figures: { ours: longest[screen] ?? [] },
      bars: [{ kind: 'at-most', value: 50 }],
    },
    {
      id: `screen-${screen}-whole`,
      work: 'tap to the last of what is drawn bit by bit, most of it below the first view',
      unit: 'ms',
      figures: { ours: wholes[screen] ?? [] },
      bars: [],
    },
  ]);
}

async function openScreens(context: BrowserContext, appUrl: string) {
  await allowToKeep(context);
  await context.addInitScript(watchScreens);
  const opened: Record<(typeof screens)[number], Opened[]> = { yield: [], day: [] };
  for (let count = 0; count < pages; count += 1) {
    const page = await context.newPage();
    await slowDown(page);
    await page.goto(`${appUrl}#/bench`);
    await page.locator('[data-testid=stage-kit-parts]').waitFor();
    // Past the rest of the start: the second copy is compared and the whole shop read beside the first screen.
    await page.waitForTimeout(4000);
    for (const screen of screens) {
      const seen = page.evaluate((name) => globalThis.screenSeen(name), screen);
      await page.evaluate(() => undefined);
      await page.locator(`a[href="#/${screen}"]`).first().tap();
      opened[screen].push(await seen);
    }
    await page.close();
  }
  return opened;
}

declare global {
  /** Put there by `watchScreens`. */
  var screenSeen: (screen: string) => Promise<Opened>;
}

/** Runs in the page, before anything of its own. */
function watchScreens(): void {
  let lifted = 0;
  addEventListener(
    'pointerup',
    ({ timeStamp }) => {
      lifted = timeStamp;
    },
    { capture: true, passive: true },
  );
  const stands = (screen: string) => {
    const main = document.querySelector(`main.${screen}`);
    return main !== null && /\d/.test(main.textContent ?? '') && !main.querySelector('[aria-busy=true]');
  };
  const isWhole = (screen: string) =>
    stands(screen) && document.querySelector(`main.${screen}`)?.getAttribute('aria-busy') !== 'true';
  /** When that is so and painted, ms after pointer up. */
  const painted = (is: () => boolean) =>
    new Promise<number>((resolve) => {
      const observer = new MutationObserver(() => {
        if (!is()) return;
        observer.disconnect();
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => resolve(performance.now() - lifted);
          port2.postMessage(undefined);
        });
      });
      observer.observe(document, { subtree: true, childList: true, characterData: true, attributes: true });
    });
  globalThis.screenSeen = async (screen) => {
    const tasks: { start: number; ms: number }[] = [];
    const tasksSeen = new PerformanceObserver((list) => {
      for (const { startTime, duration } of list.getEntries()) tasks.push({ start: startTime, ms: duration });
    });
    tasksSeen.observe({ type: 'longtask' });
    const [answer, whole] = await Promise.all([
      painted(() => stands(screen)),
      painted(() => isWhole(screen)),
    ]);
    await new Promise((resolve) => setTimeout(resolve, 1000));
    tasksSeen.disconnect();
    const since = tasks.filter(({ start, ms }) => start + ms > lifted);
    return { answer, whole, longest: Math.max(0, ...since.map(({ ms }) => ms)) };
  };
}
