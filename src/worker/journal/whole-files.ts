import type { Folder } from './folder.ts';

const part = '.part';

/** Whole files in a folder: a new one takes its name only once it is on the disk and was read back. */
export function wholeFiles(folder: Folder) {
  return {
    async fileNames(): Promise<readonly string[]> {
      return (await folder.names()).filter((name) => !name.endsWith(part));
    },
    async readFile(name: string): Promise<Uint8Array | undefined> {
      return (await folder.names()).includes(name) ? folder.read(name, 0) : undefined;
    },
    async writeFile({ name, bytes }: { name: string; bytes: Uint8Array }): Promise<void> {
      const file = await folder.open(name + part);
      try {
        file.truncate(0);
        if (file.write(bytes, 0) !== bytes.length) throw new Error('the file took a part only');
        file.flush();
      } finally {
        file.close();
      }
      const back = await folder.read(name + part, 0);
      if (back.length !== bytes.length || back.some((byte, at) => byte !== bytes[at])) {
        throw new Error('the file reads otherwise than it was written');
      }
      await folder.rename(name + part, name);
    },
    async removeFile(name: string): Promise<void> {
      if ((await folder.names()).includes(name)) await folder.remove(name);
    },
  };
}
