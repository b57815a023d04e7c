import type { FileShelf } from '../../src/store/file-shelf.ts';
import { memoryShelf } from '../../src/store/memory-shelf.ts';
import { opfsShelf } from '../../src/store/opfs-twin.ts';
import type { FakeDisk } from './fake-folder.ts';
import { testFiles } from './test-files.ts';

/** Where files are kept: each shelf that is opened on it stands for one window. */
interface ShelfPlace {
  readonly open: () => Promise<FileShelf>;
}

/** Every kind of shelf that must keep the same contract. */
export const shelfMakers: readonly (readonly [name: string, make: () => ShelfPlace])[] = [
  [
    'in memory',
    () => {
      const files = new Map<string, Uint8Array>();
      return { open: async () => memoryShelf(files) };
    },
  ],
  [
    'in a folder',
    () => {
      const disk: FakeDisk = new Map();
      return { open: async () => opfsShelf(testFiles(disk)) };
    },
  ],
];
