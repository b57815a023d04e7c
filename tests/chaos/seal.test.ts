import { setTimeout as pause } from 'node:timers/promises';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { copyProfile } from '../support/persistent-browser.ts';
import { compareTaps, whatWasSaid } from './compare.ts';
import { allKept, runKind, timeBox } from './kind-figures.ts';
import { dropProfile, freshProfile, type Look, openStation, randomTaps } from './station.ts';
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

/** Lets the app on the page begin to seal at once: only its clock is put on, not that of its workers. */
async function beginSealing(page: Page): Promise<void> {
  await page.clock.install();
  await page.reload();
  await page.locator('[data-testid=stage-left]').waitFor();
  await pause(1000);
  await page.clock.fastForward(untilSealing);
}

interface ManyYoung {
  readonly profile: string;
  readonly before: Look;
  /** How long it takes in it until the first of them are sealed, ms. */
  readonly took: number;
}

/** A profile with many young records, and what it holds. */
async function manyYoung(): Promise<ManyYoung> {
  const profile = freshProfile('seal-young');
  const station = await openStation(profile);
  await addYoungYears(station);
  // The second copy gets them, too, when the app is opened anew.
  for (const page of station.context.pages()) await page.goto('about:blank');
  const before = await station.look();
  await station.close();

  const tried = `${profile}-tried`;
  copyProfile(profile, tried);
  const again = await openStation(tried);
  const { page } = await again.window();
  await beginSealing(page);
  const began = performance.now();
  await expect.poll(() => sealedRuns(page), { timeout: 60_000, interval: 50 }).toBeGreaterThan(0);
  const took = performance.now() - began;
  await again.close();
  dropProfile(tried);
  return { profile, before, took };
}

test(
  'the browser killed while old records are sealed: each is there once, young or sealed, and so is each tap',
  async () => {
    const { profile, before, took } = await manyYoung();
    const verdict = await runKind('seal', async ({ random }) => {
      const folder = `${profile}-killed`;
      copyProfile(profile, folder);
      const station = await openStation(folder);
      const { page, tap } = await station.window();
      await beginSealing(page);
      const burst = tap(randomTaps(random, 20)).catch(() => undefined);
      // Before the first step, within it, or after it.
      await pause(random() * 2 * took);
      await station.kill();
      await burst;
      const again = await openStation(folder);
      const found = compareTaps({ before, now: await again.look(), taps: station.taps });
      await again.close();
      dropProfile(folder);
      return { ...found, ...whatWasSaid(again) };
    });
    dropProfile(profile);
    expect(verdict).toMatchObject(allKept);
  },
  timeBox('seal'),
);
