import type { FileShelf } from '../../src/store/file-shelf.ts';
import { memoryShelf } from '../../src/store/memory-shelf.ts';

/** Every kind of shelf that must keep the same contract; each window that opens it sees the same files. */
export const shelfMakers: readonly (readonly [
  name: string,
  make: () => { open: () => Promise<FileShelf> },
])[] = [
  [
    'in memory',
    () => {
      const files = new Map<string, Uint8Array>();
      return { open: async () => memoryShelf(files) };
    },
  ],
];
