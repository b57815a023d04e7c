import { base64 } from './as-json.ts';
import { type Found, laterOf, reasonOf, within } from './find.ts';

const longest = 20_000;
const title = 'Files';

/** Every file of the origin private file system: as lines where it is text, else as base64. */
export async function readFiles(storage: StorageManager | undefined): Promise<Found> {
  if (!storage?.getDirectory) return { title, lines: [], newest: null, unread: [] };
  const lines: string[] = [];
  const unread: string[] = [];
  let newest: number | null = null;

  async function readFile(name: string, handle: FileSystemFileHandle): Promise<void> {
    try {
      const file = await handle.getFile();
      const bytes = new Uint8Array(await file.arrayBuffer());
      newest = laterOf(newest, file.lastModified);
      lines.push(JSON.stringify({ file: name, changed: file.lastModified }));
      for (const part of partsOf(bytes)) lines.push(JSON.stringify({ file: name, ...part }));
    } catch (error) {
      unread.push(`${name}: ${reasonOf(error)}`);
    }
  }

  async function readFolder(under: string, folder: FileSystemDirectoryHandle): Promise<void> {
    try {
      for await (const [name, handle] of folder.entries()) {
        if (handle.kind === 'directory')
          await readFolder(`${under}${name}/`, handle as FileSystemDirectoryHandle);
        else await readFile(`${under}${name}`, handle as FileSystemFileHandle);
      }
    } catch (error) {
      unread.push(`${under || '/'}: ${reasonOf(error)}`);
    }
  }

  try {
    await within(
      longest,
      storage.getDirectory().then((root) => readFolder('', root)),
    );
  } catch (error) {
    unread.push(reasonOf(error));
  }
  return { title, lines, newest, unread };
}

/** A text line by line, so that each line of a journal is a record of its own; what is no text whole, as base64. */
function partsOf(bytes: Uint8Array): readonly ({ readonly line: string } | { readonly bytes: string })[] {
  try {
    const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
    return text.split('\n').map((line) => ({ line }));
  } catch {
    return [{ bytes: base64(bytes) }];
  }
}
