import type { Folder, HeldFile } from '../../src/worker/journal/folder.ts';

export interface FakeFile {
  bytes: Uint8Array<ArrayBuffer>;
  holder: object | undefined;
}
/** Folders by their names, files by theirs: what all windows share. */
export type FakeDisk = Map<string, Map<string, FakeFile>>;

/**
 * How a call goes wrong: before it does anything, half-way, once all is done, it never ends, or, where it writes, other
 * bytes are on the disk than were given.
 */
export type Fault = 'throws' | 'half' | 'done' | 'hangs' | 'spoils';

/** One window's view of a disk in memory. Its call of number `at`, counted from 1, goes wrong. */
export function fakeWindow(disk: FakeDisk, fault?: { at: number; how: Fault }) {
  const self = {};
  let calls = 0;
  let appends = 0;
  let bytesRead = 0;
  let hang = () => {};
  const hung = new Promise<void>((resolve) => {
    hang = resolve;
  });

  async function call<Result>(
    whole: () => Result,
    { half = () => {}, spoilt = whole }: { half?: () => void; spoilt?: () => Result } = {},
  ): Promise<Result> {
    calls += 1;
    if (calls !== fault?.at) return whole();
    if (fault.how === 'spoils') return spoilt();
    if (fault.how === 'half') half();
    if (fault.how === 'done') whole();
    if (fault.how === 'hangs') {
      hang();
      return new Promise(() => {});
    }
    throw new Error(`call ${calls} goes wrong`);
  }

  function folderIn(files: Map<string, FakeFile>): Folder {
    const must = (name: string): FakeFile => {
      const file = files.get(name);
      if (!file) throw new Error(`there is no file ${name}`);
      return file;
    };
    const mustBeFree = (name: string) => {
      const { holder } = must(name);
      if (holder) throw new Error(`${name} is held`);
    };
    const heldFile = (file: FakeFile): HeldFile => {
      const add = (bytes: Uint8Array) => {
        if (file.holder !== self) throw new Error('the file is not held');
        const longer = new Uint8Array(file.bytes.length + bytes.length);
        longer.set(file.bytes);
        longer.set(bytes, file.bytes.length);
        file.bytes = longer;
      };
      return {
        append: (bytes) => {
          appends += 1;
          return call(() => add(bytes), {
            half: () => add(bytes.subarray(0, bytes.length / 2)),
            spoilt: () => add(bytes.map((byte, at) => (at === bytes.length >> 1 ? byte ^ 2 : byte))),
          });
        },
        release() {
          if (file.holder === self) file.holder = undefined;
        },
      };
    };
    const make = (name: string): FakeFile => {
      if (files.has(name)) throw new Error(`there is a file ${name}`);
      const file = { bytes: new Uint8Array(), holder: self };
      files.set(name, file);
      return file;
    };
    return {
      list: () => call(() => [...files].map(([name, { bytes }]) => ({ name, size: bytes.length }))),
      read: (name, { from, to }) =>
        call(() => {
          const bytes = must(name).bytes.slice(from, to);
          bytesRead += bytes.length;
          return bytes;
        }),
      create: (name) => call(() => heldFile(make(name)), { half: () => void make(name) }),
      hold: (name) =>
        call(() => {
          const file = files.get(name);
          if (!file || file.holder) return undefined;
          file.holder = self;
          return heldFile(file);
        }),
      rename: (name, to) =>
        call(
          () => {
            mustBeFree(name);
            files.set(to, must(name));
            files.delete(name);
          },
          { half: () => void files.set(to, { bytes: must(name).bytes.slice(0, 5), holder: undefined }) },
        ),
      remove: (name) =>
        call(() => {
          mustBeFree(name);
          files.delete(name);
        }),
    };
  }

  return {
    openFolder: async (name: string): Promise<Folder> => {
      const files = disk.get(name) ?? new Map<string, FakeFile>();
      disk.set(name, files);
      return folderIn(files);
    },
    /** The window is gone: what it held is free. */
    die() {
      for (const files of disk.values())
        for (const file of files.values()) if (file.holder === self) file.holder = undefined;
    },
    /** Resolves when a call hangs. */
    hung,
    calls: () => calls,
    appends: () => appends,
    bytesRead: () => bytesRead,
  };
}
