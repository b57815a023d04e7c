/**
 * From the finger that leaves *pass* to the saved mark and the new count on the screen, with the main thread slowed down
 * to a tablet's; beside it, in the same page after each tap, one bare strict transaction.
 */
import type { BrowserContext, Page } from 'playwright-core';
import type { Bench } from './harness/bench.ts';
import { type Measured, median, quantile } from './harness/row.ts';
import { type ShopProfile, shopProfile, slowDown } from './harness/shop-profiles.ts';
import { openStage, type Times, tapOn, watchTaps } from './harness/tapping.ts';

/** A forecast makes way for taps that follow each other: it is at work when each of these comes (ms from tap to tap). */
const oneByOne = { taps: 30, pause: 2500 };
/** The same taps with and without a forecast. */
const unhurried = ['forecasting', 'unhurried'] as const;

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
    for (const name of round % 2 ? unhurried.toReversed() : unhurried)
      note(
        name,
        await bench.inBrowser(forecasting, async (context) => {
          const page = await appPage(context, stage);
          const { call } = await bench.openModule(context, 'forecast');
          if (name === 'forecasting') await call('keepForecasting');
          await page.bringToFront();
          return tapOn(page, oneByOne);
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
      work: `${work}; a tap now and then, while a worker beside it forecasts`,
      unit: 'ms',
      figures: { ...figuresAt('forecasting'), 'no forecast': tapped.unhurried ?? [] },
      bars: [soon, { kind: 'at-most-times', times: 1.1, of: 'no forecast' }],
    },
  ];
}

/** What the browser and this machine need themselves, from pointer up to the screen: see in-page/bare-tap.ts. */
async function barePage(bench: Bench, context: BrowserContext): Promise<Page> {
  await context.addInitScript(watchTaps);
  const { page, call } = await bench.openModule(context, 'bare-tap');
  await slowDown(page);
  await call('showBareTap');
  return page;
}
