interface FakeOpfsFile {
  /** What is read of it. */
  bytes: Uint8Array<ArrayBuffer>;
  /** What a power cut leaves. */
  flushed: Uint8Array<ArrayBuffer>;
  open: boolean;
}

export interface FakeOpfsOptions {
  /** Whether the engine moves a file to a new name, also over another, or at all. */
  readonly moves?: 'always' | 'to free names' | 'never';
  /** So many bytes a write may bring; it writes no more, and does not throw. */
  readonly most?: number;
}

/** One folder of an origin private file system, as a browser gives it to a worker. */
export function fakeOpfs({ moves = 'always', most = Number.POSITIVE_INFINITY }: FakeOpfsOptions = {}) {
  const files = new Map<string, FakeOpfsFile>();
  /** Files that go between being listed and being looked at. */
  const fleeting = new Set<string>();

  function existing(name: string): FakeOpfsFile {
    const file = files.get(name);
    if (!file) throw new DOMException(name, 'NotFoundError');
    return file;
  }
  function mustBeShut(name: string): void {
    if (files.get(name)?.open) throw new DOMException(name, 'NoModificationAllowedError');
  }

  function accessTo(file: FakeOpfsFile) {
    const ifOpen = () => {
      if (!file.open) throw new DOMException('closed', 'InvalidStateError');
    };
    return {
      getSize: () => file.bytes.length,
      read(into: Uint8Array, { at }: { at: number }) {
        ifOpen();
        const part = file.bytes.subarray(at, at + into.length);
        into.set(part);
        return part.length;
      },
      write(bytes: Uint8Array, { at }: { at: number }) {
        ifOpen();
        const some = bytes.subarray(0, most);
        const longer = new Uint8Array(Math.max(file.bytes.length, at + some.length));
        longer.set(file.bytes);
        longer.set(some, at);
        file.bytes = longer;
        return some.length;
      },
      truncate(size: number) {
        ifOpen();
        file.bytes = file.bytes.slice(0, size);
      },
      flush() {
        ifOpen();
        file.flushed = file.bytes;
      },
      close() {
        file.open = false;
      },
    };
  }

  function handleOf(name: string) {
    return {
      kind: 'file',
      async getFile() {
        if (fleeting.delete(name)) files.delete(name);
        return new Blob([existing(name).bytes]);
      },
      async createSyncAccessHandle() {
        const file = existing(name);
        mustBeShut(name);
        file.open = true;
        return accessTo(file);
      },
      ...(moves !== 'never' && {
        async move(_: unknown, to: string) {
          mustBeShut(name);
          if (moves === 'to free names' && files.has(to))
            throw new DOMException(to, 'InvalidModificationError');
          files.set(to, existing(name));
          files.delete(name);
        },
      }),
    };
  }

  const folder = {
    async *entries() {
      yield ['a-folder', { kind: 'directory' }];
      for (const name of [...files.keys()]) yield [name, handleOf(name)];
    },
    async getFileHandle(name: string, { create = false } = {}) {
      if (create && !files.has(name))
        files.set(name, { bytes: new Uint8Array(), flushed: new Uint8Array(), open: false });
      existing(name);
      return handleOf(name);
    },
    async removeEntry(name: string) {
      existing(name);
      mustBeShut(name);
      files.delete(name);
    },
  };

  return {
    files,
    fleeting,
    open: async () => folder as unknown as FileSystemDirectoryHandle,
    /** The power goes: every file is shut, and of what was not flushed half is there. */
    cutPower() {
      for (const file of files.values()) {
        const half = file.flushed.length + Math.floor((file.bytes.length - file.flushed.length) / 2);
        file.bytes = file.bytes.slice(0, half);
        file.flushed = file.bytes;
        file.open = false;
      }
    },
  };
}
