import { expect, test } from 'vitest';
import { isFull } from './chaos-plan.ts';
import { compareTaps, whatWasSaid } from './compare.ts';
import { allKept, runKind, timeBox } from './kind-figures.ts';
import { canMount, smallDisk } from './small-disk.ts';
import { freshProfile, openStation, randomTaps } from './station.ts';

// Only where a small disk cannot be had at all, and then only in the short run: the full run fails there.
test.runIf(isFull || canMount)(
  'the disk fills up and is freed again: what was acknowledged is there once, and what was not is not claimed',
  async () => {
    const verdict = await runKind('disk-full', async ({ random }) => {
      const disk = smallDisk('disk-full');
      try {
        const folder = freshProfile('disk-full/profile');
        const first = await openStation(folder);
        const before = await first.look();
        const window = await first.window();
        await window.tap(randomTaps(random, 5));
        disk.fill();
        await window.tap(randomTaps(random, 8));
        disk.free();
        // What a maker does who has made room: the tap that is kept on the screen is tried again, then work goes on.
        const retry = window.page.locator('[data-testid=not-saved] button').first();
        if (await retry.isVisible()) await retry.click();
        await window.tap(randomTaps(random, 8));
        await first.close();
        const second = await openStation(folder);
        const now = await second.look();
        await second.close();
        return { ...compareTaps({ before, now, taps: first.taps }), ...whatWasSaid(first, second) };
      } finally {
        disk.remove();
      }
    });
    expect(verdict).toMatchObject(allKept);
  },
  timeBox('disk-full'),
);
