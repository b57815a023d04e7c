import { emptyJournal, memoryTwin } from '../../src/store/memory-twin.ts';
import { opfsTwin } from '../../src/store/opfs-twin.ts';
import type { Twin } from '../../src/store/twin.ts';
import type { FakeDisk } from './fake-folder.ts';
import { testFiles } from './test-files.ts';

/** A place where a copy is kept: each twin that is opened on it stands for one window. */
interface TwinPlace {
  readonly open: () => Promise<Twin>;
}

/** Every kind of twin that keeps the whole log, and must keep the same contract. */
export const twinMakers: readonly (readonly [name: string, make: () => TwinPlace])[] = [
  [
    'in memory',
    () => {
      const journal = emptyJournal();
      return { open: async () => memoryTwin(journal) };
    },
  ],
  [
    'in a journal',
    () => {
      const disk: FakeDisk = new Map();
      return { open: async () => opfsTwin(testFiles(disk)) };
    },
  ],
];
