import { setTimeout as pause } from 'node:timers/promises';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { compareTaps, whatWasSaid } from './compare.ts';
import { allKept, runKind, timeBox } from './kind-figures.ts';
import { dropProfile, freshProfile, openStation, randomTaps } from './station.ts';
import { addYoungYears } from './young-years.ts';

/** How long after its start the app lets old records be sealed, ms. */
const untilSealing = 15_000;

/** How many sealed runs the store has. */
function sealedRuns(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open('tallywright');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const counting = opening.result.transaction('runs').objectStore('runs').count();
          counting.onerror = () => reject(counting.error);
          counting.onsuccess = () => {
            opening.result.close();
            resolve(counting.result);
          };
        };
      }),
  );
}

test(
  'the browser killed while old records are sealed: each is there once, young or sealed, and so is each tap',
  async () => {
    let sealed = 0;
    const verdict = await runKind('seal', async ({ random }) => {
      const folder = freshProfile('seal');
      const first = await openStation(folder);
      await addYoungYears(first);
      await first.close();

      const station = await openStation(folder);
      const before = await station.look();
      const { page, tap } = await station.window();
      // Only this page's clock is put on, and with it the moment at which the app starts its worker.
      await page.clock.install();
      await page.reload();
      await page.locator('[data-testid=stage-left]').waitFor();
      await pause(1000);
      await page.clock.fastForward(untilSealing);
      const burst = tap(randomTaps(random, 20)).catch(() => undefined);
      await pause(random() * 2500);
      await station.kill();
      await burst;

      const again = await openStation(folder);
      sealed += await sealedRuns(again.context.pages()[0] ?? (await again.context.newPage()));
      const found = compareTaps({ before, now: await again.look(), taps: station.taps });
      await again.close();
      dropProfile(folder);
      return { ...found, ...whatWasSaid(again) };
    });
    expect(verdict).toMatchObject(allKept);
    // Kills that always come before the first run is sealed, or none at all, prove nothing.
    expect(sealed).toBeGreaterThan(0);
  },
  timeBox('seal'),
);
