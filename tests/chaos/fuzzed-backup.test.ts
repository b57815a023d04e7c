import { expect, test } from 'vitest';
import { fuzzBackups } from '../support/fuzz-backups.ts';
import { fuzzPhotoCopies } from '../support/fuzz-photo-copies.ts';
import { planOf } from './chaos-plan.ts';
import { allKept, runKind, timeBox } from './kind-figures.ts';

/** Files read in one go, between two looks at the clock. */
const batch = 500;
/** So many of them are copies with photos, of one file or of several. */
const withPhotos = 100;

test(
  'spoilt backup files are refused or read in part: never a throw, and the shop stays what it was',
  async () => {
    const rounds = planOf('fuzzed-backup').runs / batch;
    const verdict = await runKind(
      'fuzzed-backup',
      async ({ random }) => {
        const seedOfRound = () => Math.floor(random() * 2 ** 31);
        const runs = batch - withPhotos;
        const { read, refused, offered, unharmed, changed, invented, ...faults } = fuzzBackups(
          runs,
          seedOfRound(),
        );
        expect(faults).toEqual({ runs, threw: 0, overworked: 0, unnamed: 0 });
        // No file may be taken for granted: some must be read, some refused, most be harmed.
        expect(Math.min(read, refused, offered, runs - unharmed)).toBeGreaterThan(0);
        const photos = await fuzzPhotoCopies(withPhotos, seedOfRound());
        expect([photos.threw, photos.unnamed]).toEqual([0, 0]);
        expect(Math.min(photos.read - photos.unharmed, photos.refused, photos.offered)).toBeGreaterThan(0);
        return { acknowledged: offered, lost: changed, doubled: invented + photos.invented };
      },
      { runs: rounds, each: batch },
    );
    expect(verdict).toMatchObject(allKept);
  },
  timeBox('fuzzed-backup'),
);
