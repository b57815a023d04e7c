import { expect, test } from 'vitest';
import { fuzzBackups } from '../support/fuzz-backups.ts';
import { planOf } from './chaos-plan.ts';
import { allKept, runKind, timeBox } from './kind-figures.ts';

/** Files read in one go, between two looks at the clock. */
const batch = 500;

test(
  'spoilt backup files are refused or read in part: never a throw, and the shop stays what it was',
  async () => {
    const rounds = planOf('fuzzed-backup').runs / batch;
    const verdict = await runKind(
      'fuzzed-backup',
      async ({ random }) => {
        const { read, refused, offered, unharmed, changed, invented, ...faults } = fuzzBackups(
          batch,
          Math.floor(random() * 2 ** 31),
        );
        expect(faults).toEqual({ runs: batch, threw: 0, overworked: 0, unnamed: 0 });
        // No file may be taken for granted: some must be read, some refused, most be harmed.
        expect(Math.min(read, refused, offered, batch - unharmed)).toBeGreaterThan(0);
        return { acknowledged: offered, lost: changed, doubled: invented };
      },
      { runs: rounds, each: batch },
    );
    expect(verdict).toMatchObject(allKept);
  },
  timeBox('fuzzed-backup'),
);
