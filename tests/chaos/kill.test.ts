import { setTimeout as pause } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { compareTaps, whatWasSaid } from './compare.ts';
import { allKept, runKind, timeBox } from './kind-figures.ts';
import { dropProfile, freshProfile, isOpen, openStation, randomTaps } from './station.ts';

test(
  'the browser killed in mid-burst: what was acknowledged is there once',
  async () => {
    const folder = freshProfile('kill');
    let station = await openStation(folder);
    let before = await station.look();
    const verdict = await runKind('kill', async ({ random }) => {
      if (!isOpen(station)) {
        // A run that broke off has closed it: this one begins where that one ended.
        station = await openStation(folder);
        before = await station.look();
      }
      const { tap } = await station.window();
      // Ended by the kill.
      const burst = tap(randomTaps(random, 20)).catch(() => undefined);
      await pause(200 + random() * 1300);
      await station.kill();
      await burst;
      const { taps } = station;
      station = await openStation(folder);
      const now = await station.look();
      const found = compareTaps({ before, now, taps });
      before = now;
      return { ...found, ...whatWasSaid(station) };
    }).finally(() => station.close());
    dropProfile(folder);
    expect(verdict).toMatchObject(allKept);
  },
  timeBox('kill'),
);
