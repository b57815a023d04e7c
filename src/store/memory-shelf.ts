import { type FileShelf, isShelfName } from './file-shelf.ts';

/** A shelf that lives as long as the page: for tests. It promises no durability. */
export function memoryShelf(files = new Map<string, Uint8Array>()): FileShelf {
  return {
    names: async () => [...files.keys()].toSorted(),
    read: async (name) => files.get(name)?.slice(),
    async write(name, bytes) {
      if (!isShelfName(name)) throw new Error(`no file can be named ${JSON.stringify(name)}`);
      files.set(name, bytes.slice());
    },
    async remove(name) {
      files.delete(name);
    },
  };
}
