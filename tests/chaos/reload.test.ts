import { setTimeout as pause } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { planOf } from './chaos-plan.ts';
import { compareTaps, whatWasSaid } from './compare.ts';
import { allKept, runKind, timeBox } from './kind-figures.ts';
import { dropProfile, freshProfile, openStation } from './station.ts';

test(
  'the page is loaded anew again and again under a tapping hand: every tap is there once',
  async () => {
    const folder = freshProfile('reload');
    const station = await openStation(folder);
    const before = await station.look();
    const { page, tap, made } = await station.window();
    const reloads = planOf('reload').runs;
    const verdict = await runKind(
      'reload',
      async ({ random }) => {
        const began = performance.now();
        for (let reload = 0; reload < reloads; reload += 1) {
          // Ended by the reload, which may come before the tap is saved.
          const burst = tap(['pass', 'pass', 'pass']).catch(() => undefined);
          await pause(random() * 300);
          await page.reload();
          await burst;
          await page.locator('[data-testid=stage-left]').waitFor();
        }
        const seconds = Math.round((performance.now() - began) / 1000);
        const now = await station.look();
        const said = whatWasSaid(station);
        const notes = [`${reloads} reloads in ${seconds} s`, ...(said.notes ?? [])];
        return { ...compareTaps({ before, now, taps: await made() }), ...said, notes };
      },
      { runs: 1 },
    ).finally(() => station.close());
    dropProfile(folder);
    expect(verdict).toMatchObject(allKept);
  },
  timeBox('reload'),
);
