import { buffer } from 'node:stream/consumers';
import { promisify } from 'node:util';
import { fromBuffer, type Options, type ZipFile } from 'yauzl';

const open = promisify<Buffer, Options, ZipFile>(fromBuffer);

export interface ZippedFile {
  readonly name: string;
  readonly bytes: Buffer;
  readonly modified: Date;
}

/** The files of a zip file in their order, as yauzl reads them: it has nothing in common with what packs them. */
export async function filesInZip(zip: Uint8Array): Promise<readonly ZippedFile[]> {
  const opened = await open(Buffer.from(zip), { lazyEntries: true, strictFileNames: true });
  const files: ZippedFile[] = [];
  return new Promise((resolve, reject) => {
    opened.on('error', reject);
    opened.on('end', () => resolve(files));
    opened.on('entry', (entry) => {
      opened.openReadStream(entry, async (error, stream) => {
        if (error) return reject(error);
        files.push({ name: entry.fileName, bytes: await buffer(stream), modified: entry.getLastModDate() });
        opened.readEntry();
      });
    });
    opened.readEntry();
  });
}
