import type { Folder, OpenFile } from './folder.ts';

const newline = 0x0a;

/** The one segment that a window adds to. After a write that failed it goes on behind what is known to be whole. */
export function segmentWriter(folder: Pick<Folder, 'open'>, newName: () => string) {
  let file: OpenFile | undefined;
  let name = '';
  let size = 0;
  /** What lies behind `size` may be half a line. */
  let isTorn = false;

  async function ensure(): Promise<OpenFile> {
    if (file) return file;
    const wanted = newName();
    const opened = await folder.open(wanted);
    [file, name, size] = [opened, wanted, opened.size()];
    isTorn = size > 0;
    return opened;
  }

  /** Leaves a file that failed; the next write takes another. */
  function leave(): void {
    try {
      file?.close();
    } catch {
      // It is of no use any more either way.
    }
    file = undefined;
  }

  return {
    /**
     * Adds whole lines in one write and flushes them. Returns where they begin.
     * @throws whatever the platform throws; nothing is then taken for written.
     */
    async add(lines: Uint8Array): Promise<{ name: string; at: number }> {
      const open = await ensure();
      const bytes = isTorn ? withNewlineBefore(lines) : lines;
      const at = size + (bytes.length - lines.length);
      try {
        if (open.write(bytes, size) !== bytes.length) throw new Error('the file took a part only');
        open.flush();
      } catch (error) {
        isTorn = true;
        try {
          open.truncate(size);
        } catch {
          leave();
        }
        throw error;
      }
      size += bytes.length;
      isTorn = false;
      return { name, at };
    },
    close: leave,
  };
}

function withNewlineBefore(lines: Uint8Array): Uint8Array {
  const bytes = new Uint8Array(lines.length + 1);
  bytes[0] = newline;
  bytes.set(lines, 1);
  return bytes;
}
