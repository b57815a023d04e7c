import { expect, test } from 'vitest';
import type { TapKind } from '../support/tap-ledger.ts';
import { planOf } from './chaos-plan.ts';
import { compareTaps, whatWasSaid } from './compare.ts';
import { allKept, runKind, timeBox } from './kind-figures.ts';
import { dropProfile, freshProfile, openStation } from './station.ts';

/** Waited for on a busy machine, too. */
const late = { timeout: 10_000 };

test(
  'two windows tap the same tray at once: every tap is there once, and both show the same',
  async () => {
    const folder = freshProfile('two-windows');
    const station = await openStation(folder);
    const before = await station.look();
    const [here, there] = [await station.window(), await station.window()];
    const each = new Array<TapKind>(planOf('two-windows').runs / 2).fill('pass');
    const verdict = await runKind(
      'two-windows',
      async () => {
        await Promise.all([here.tap(each, 'mark'), there.tap(each, 'mark')]);
        const { taps } = station;
        // No fault: each tap must have been felt and acknowledged.
        const acknowledged = () => taps.filter((tap) => tap.acknowledged).length;
        await expect
          .poll(() => [taps.length, acknowledged()], late)
          .toEqual([2 * each.length, 2 * each.length]);
        await expect.poll(async () => (await here.left()) - (await there.left()), late).toBe(0);
        const now = await station.look();
        return { ...compareTaps({ before, now, taps }), ...whatWasSaid(station) };
      },
      { runs: 1 },
    ).finally(() => station.close());
    dropProfile(folder);
    expect(verdict).toMatchObject(allKept);
  },
  timeBox('two-windows'),
);
