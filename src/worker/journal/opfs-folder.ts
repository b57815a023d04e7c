import type { Folder, HeldFile } from './folder.ts';

/** Every engine that moves files takes a folder and a name; the compiler's library does not know it yet. */
interface Movable {
  readonly move?: (folder: FileSystemDirectoryHandle, name: string) => Promise<void>;
}

/** A folder of the origin private file system; undefined where the browser has none, or none that a worker may write. */
export async function opfsFolder(name: string): Promise<Folder | undefined> {
  if (!('FileSystemFileHandle' in self) || !('createSyncAccessHandle' in FileSystemFileHandle.prototype))
    return undefined;
  const root = await rootFolder();
  return root && folderIn(() => root.getDirectoryHandle(name, { create: true }));
}

async function rootFolder(): Promise<FileSystemDirectoryHandle | undefined> {
  try {
    return await navigator.storage?.getDirectory?.();
  } catch (error) {
    // Private windows of some browsers refuse it; any other failure may pass.
    if (error instanceof DOMException && error.name === 'SecurityError') return undefined;
    throw error;
  }
}

/** @param open finds the folder anew each time: it may have been cleared away meanwhile */
export function folderIn(open: () => Promise<FileSystemDirectoryHandle>): Folder {
  const held = new Map<string, FileSystemSyncAccessHandle>();

  function holdOf(name: string, handle: FileSystemSyncAccessHandle): HeldFile {
    held.set(name, handle);
    return {
      async append(bytes) {
        // Older engines answer these with promises.
        const written = await handle.write(bytes, { at: await handle.getSize() });
        if (written !== bytes.length) throw new Error('only a part was written');
        await handle.flush();
      },
      release() {
        if (held.get(name) === handle) held.delete(name);
        handle.close();
      },
    };
  }

  async function read(name: string, { from, to }: { from: number; to: number }) {
    const own = held.get(name);
    if (own) {
      const bytes = new Uint8Array(to - from);
      return bytes.slice(0, await own.read(bytes, { at: from }));
    }
    const file = await (await (await open()).getFileHandle(name)).getFile();
    return new Uint8Array(await file.slice(from, to).arrayBuffer());
  }

  async function hold(name: string): Promise<HeldFile | undefined> {
    try {
      const handle = await (await open()).getFileHandle(name);
      return holdOf(name, await handle.createSyncAccessHandle());
    } catch (error) {
      if (error instanceof DOMException && isTaken.has(error.name)) return undefined;
      throw error;
    }
  }

  async function create(name: string): Promise<HeldFile> {
    const handle = await (await open()).getFileHandle(name, { create: true });
    const access = await handle.createSyncAccessHandle();
    if ((await access.getSize()) > 0) {
      access.close();
      throw new Error(`there is a file ${name}`);
    }
    return holdOf(name, access);
  }

  async function copy(name: string, to: string): Promise<void> {
    const folder = await open();
    const bytes = new Uint8Array(await (await (await folder.getFileHandle(name)).getFile()).arrayBuffer());
    const access = await (await folder.getFileHandle(to, { create: true })).createSyncAccessHandle();
    try {
      await access.truncate(0);
      if ((await access.write(bytes, { at: 0 })) !== bytes.length) throw new Error('only a part was written');
      await access.flush();
    } finally {
      access.close();
    }
    await folder.removeEntry(name);
  }

  return {
    async list() {
      const files: { name: string; size: number }[] = [];
      for await (const [name, handle] of (await open()).entries()) {
        if (handle.kind !== 'file') continue;
        const size = await sizeOf(handle as FileSystemFileHandle);
        if (size !== undefined) files.push({ name, size });
      }
      return files;
    },
    read,
    create,
    hold,
    async rename(name, to) {
      const folder = await open();
      const handle: FileSystemFileHandle & Movable = await folder.getFileHandle(name);
      if (!handle.move) return copy(name, to);
      try {
        await handle.move(folder, to);
      } catch {
        // Not every engine moves a file over another.
        await copy(name, to);
      }
    },
    remove: async (name) => (await open()).removeEntry(name),
  };
}

/** What is said of a file that another window holds, or has just taken away. */
const isTaken: ReadonlySet<string> = new Set([
  'NoModificationAllowedError',
  'InvalidStateError',
  'NotFoundError',
]);

/** Undefined when the file went while the folder was listed. */
async function sizeOf(handle: FileSystemFileHandle): Promise<number | undefined> {
  try {
    return (await handle.getFile()).size;
  } catch (error) {
    if (error instanceof DOMException && error.name === 'NotFoundError') return undefined;
    throw error;
  }
}
