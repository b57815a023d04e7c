import { emptyJournal, memoryTwin } from '../../src/store/memory-twin.ts';
import { opfsTwin } from '../../src/store/opfs-twin.ts';
import { tailTwin } from '../../src/store/tail-twin.ts';
import type { Twin } from '../../src/store/twin.ts';
import type { FakeDisk } from './fake-folder.ts';
import { testFiles } from './test-files.ts';

/** A place where a copy is kept: each twin that is opened on it stands for one window. */
interface TwinPlace {
  readonly open: () => Promise<Twin>;
}

/** What a browser keeps in its small storage, without a browser. */
export function testStorage(kept = new Map<string, string>()): Pick<Storage, 'getItem' | 'setItem'> {
  return { getItem: (name) => kept.get(name) ?? null, setItem: (name, text) => void kept.set(name, text) };
}

/** Every kind of twin that must keep the same contract, a tail as long as it has room. */
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
  [
    'in the tail of a small storage',
    () => {
      const storage = testStorage();
      return { open: async () => tailTwin(storage, 'tallywright') };
    },
  ],
];
