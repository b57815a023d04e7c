import { setTimeout as pause } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { compareTaps, whatWasSaid } from './compare.ts';
import { allKept, runKind, timeBox } from './kind-figures.ts';
import { dropProfile, freshProfile, isOpen, openStation, randomTaps } from './station.ts';

test(
  'the page crashes in mid-burst: a tap is there once, or was not acknowledged',
  async () => {
    const folder = freshProfile('crash');
    let station = await openStation(folder);
    let before = await station.look();
    const verdict = await runKind('crash', async ({ random }) => {
      if (!isOpen(station)) {
        // A run that broke off has closed it: this one begins where that one ended.
        station = await openStation(folder);
        before = await station.look();
      }
      const from = station.taps.length;
      const { page, tap } = await station.window();
      const devtools = await station.context.newCDPSession(page);
      const crashed = page.waitForEvent('crash');
      const burst = tap(randomTaps(random, 16)).catch(() => undefined);
      await pause(100 + random() * 1200);
      // The answer never comes: the page that should give it is gone.
      void devtools.send('Page.crash').catch(() => undefined);
      await Promise.all([burst, crashed]);
      await page.close();
      const now = await station.look();
      const found = compareTaps({ before, now, taps: station.taps.slice(from) });
      before = now;
      return { ...found, ...whatWasSaid(station) };
    }).finally(() => station.close());
    dropProfile(folder);
    expect(verdict).toMatchObject(allKept);
  },
  timeBox('crash'),
);
