import type { WrittenCopy } from '../store/copy-jobs.ts';
import type { CopyFolder } from './copy-folder.ts';
import { copyName } from './copy-name.ts';
import type { CopyWork } from './copy-work.ts';
import type { CopyOrder } from './keeper.ts';

/** A copy of the log under its name. */
interface OutsideFile extends WrittenCopy {
  readonly name: string;
}

/**
 * Writes a copy to the maker's folder, a file a day, and reads it back. One of the same name makes room only when the
 * new one has all that it has; else the new one is named for its time too. Rejects when the folder cannot be written to
 * or what was read back is not what was written. Photos do not go there: a file is written every day, and each would carry all of them again.
 */
export async function writeToFolder(
  folder: CopyFolder,
  { work, order, time }: { work: CopyWork; order: CopyOrder; time: string },
): Promise<OutsideFile> {
  const { log, least, about, day } = order;
  const daily = { name: copyName({ ...about, day }), ...(await work.write({ log, least, about })) };
  const older = await folder.read(daily.name);
  const isCovered = !older || (await work.covers({ bytes: daily.bytes, older }));
  const file = isCovered ? daily : { ...daily, name: copyName({ ...about, day, time }) };
  await folder.write(file.name, file.bytes);
  const back = await folder.read(file.name);
  if (!back || !(await holdsAll(work, { bytes: back, entries: file.entries })))
    throw new Error('the copy in the folder is not what was written');
  return file;
}

async function holdsAll(
  work: Pick<CopyWork, 'look'>,
  { bytes, entries }: { bytes: Uint8Array; entries: number },
): Promise<boolean> {
  const found = await work.look({ bytes });
  return found.kind === 'read' && found.digestFits && found.entries === entries;
}
