import type { Folder, OpenFile } from './folder.ts';

/** A folder of the origin private file system, made when it is missing. Rejects where the browser has none. */
export async function opfsFolder(name: string): Promise<Folder> {
  // Without it a write cannot be flushed, and what is not flushed is no second copy.
  if (!('createSyncAccessHandle' in FileSystemFileHandle.prototype)) throw new Error('no files to write to');
  const root = await navigator.storage.getDirectory();
  const folder = await root.getDirectoryHandle(name, { create: true });
  const handle = (file: string, create = false) => folder.getFileHandle(file, { create });
  return {
    async names() {
      const names: string[] = [];
      for await (const [file, { kind }] of folder.entries()) if (kind === 'file') names.push(file);
      return names.sort();
    },
    async read(file, from, to) {
      const blob = await (await handle(file)).getFile();
      return new Uint8Array(await blob.slice(from, to).arrayBuffer());
    },
    async open(file) {
      const access = await (await handle(file, true)).createSyncAccessHandle();
      return openFile(access);
    },
    remove: (file) => folder.removeEntry(file),
    async rename(file, to) {
      const old = await handle(file);
      if ('move' in old && typeof old.move === 'function') {
        await old.move(to);
        return;
      }
      const bytes = new Uint8Array(await (await old.getFile()).arrayBuffer());
      const made = openFile(await (await handle(to, true)).createSyncAccessHandle());
      try {
        made.truncate(0);
        if (made.write(bytes, 0) !== bytes.length) throw new Error('the file took a part only');
        made.flush();
      } finally {
        made.close();
      }
      await folder.removeEntry(file);
    },
  };
}

function openFile(access: FileSystemSyncAccessHandle): OpenFile {
  return {
    size: () => access.getSize(),
    write: (bytes, at) => access.write(bytes, { at }),
    truncate: (size) => access.truncate(size),
    flush: () => access.flush(),
    close: () => access.close(),
  };
}
