/** Profiles of a shop as it is after years of taps: begun by hand in the app, filled, and opened by the app. */
import type { Page } from 'playwright-core';
import { prepareShop } from '../../chaos/prepared-shop.ts';
import { allowToKeep } from '../../support/persistent-browser.ts';
import type { Bench } from './bench.ts';

export interface ShopProfile {
  readonly profile: string;
  /** The address behind the app's where the great tray is worked on, with pieces for some thousand taps. */
  readonly stage: string;
}

/** How long (ms) the app may take to get its second copy and its snapshot right after years have come in at once. */
const longestFirstOpening = 600_000;

/** A profile with `events` events besides those that began the shop; prepared once a run, to be copied. */
export function shopProfile(bench: Bench, events: number): Promise<ShopProfile> {
  return bench.once(`shop of ${events}`, async () => {
    if (events === 0) return beginShop(bench);
    const empty = await shopProfile(bench, 0);
    const profile = bench.copyOf(empty.profile);
    const records = await bench.inPage({ profile, module: 'fill-shop' }, ({ call }) =>
      call<number>('fillShop', { events, until: Date.now() }),
    );
    await letAppTakeIn(bench, { profile, stage: empty.stage, records });
    return { profile, stage: empty.stage };
  });
}

async function beginShop(bench: Bench): Promise<ShopProfile> {
  const profile = bench.newProfile();
  const stage = await bench.inBrowser(profile, async (context) => {
    await allowToKeep(context);
    return prepareShop(context, bench.appUrl());
  });
  return { profile, stage };
}

/** Opens the app and taps once, so that it keeps a snapshot, until its second copy has all that the store has. */
async function letAppTakeIn(
  bench: Bench,
  { profile, stage, records }: ShopProfile & { readonly records: number },
): Promise<void> {
  await bench.inBrowser(profile, async (context) => {
    await allowToKeep(context);
    const page = await context.newPage();
    await page.goto(`${bench.appUrl()}${stage}`);
    const patience = { timeout: longestFirstOpening };
    await page.locator('[data-testid=stage-left]').waitFor(patience);
    await page.waitForTimeout(500);
    await page.locator('[data-testid=pass]').click();
    await page.locator('[data-testid=saved-mark][data-state=saved]').waitFor(patience);
    await page.waitForFunction(
      (least) => {
        const { mark } = JSON.parse(localStorage.getItem('tallywright mark') ?? '{}');
        return mark?.entries >= least;
      },
      records,
      { ...patience, polling: 500 },
    );
    // What is written beside the taps, snapshot and sealing, is given time to end.
    await page.waitForTimeout(5000);
  });
}

/** Slows the main thread of a page to the pace of a tablet. */
export async function slowDown(page: Page, times = 4): Promise<void> {
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: times });
}
