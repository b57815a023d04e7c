import type { Entry, Link } from '../domain/log/chain.ts';
import type { CopyFolder } from './copy-folder.ts';
import { copyName } from './copy-name.ts';
import type { CopyWork } from './copy-work.ts';
import type { CopyOrder } from './keeper.ts';

/** A copy ready to leave the tablet. */
export interface OutsideFile {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly entries: number;
}

/** Makes the file of a copy; `time` (HH:MM) tells two of one day apart. */
export async function outsideFile(
  work: Pick<CopyWork, 'write'>,
  { order, time }: { readonly order: CopyOrder; readonly time?: string },
): Promise<OutsideFile> {
  const { entries, about, day } = order;
  const name = copyName({ shop: about.shop, day, ...(time ? { time } : {}) });
  return { name, bytes: await work.write(entries, { about }), entries: entries.length };
}

/**
 * Writes a copy to the maker's folder, a file a day, and reads it back. One of the same name makes room only when the
 * new one has all that it has; else the new one is named for its time too. Rejects when the folder cannot be written to
 * or what was read back is not what was written.
 */
export async function writeToFolder(
  folder: CopyFolder,
  { work, order, time }: { work: CopyWork; order: CopyOrder; time: string },
): Promise<OutsideFile> {
  const held = order.entries.map(({ link }) => link);
  const daily = await outsideFile(work, { order });
  const older = await folder.read(daily.name);
  const isCovered = !older || (await covers(work, { bytes: older, held }));
  const file = isCovered ? daily : { ...daily, name: copyName({ ...order.about, day: order.day, time }) };
  await folder.write(file.name, file.bytes);
  const back = await folder.read(file.name);
  if (!back || !(await holdsAll(work, { bytes: back, entries: order.entries })))
    throw new Error('the copy in the folder is not what was written');
  return file;
}

type Read = Pick<CopyWork, 'read'>;

async function covers(work: Read, job: { bytes: Uint8Array; held: readonly Link[] }): Promise<boolean> {
  const reading = await work.read(job);
  return (
    reading.kind === 'read' && reading.preview.adds === 0 && !reading.cut && reading.unreadable.length === 0
  );
}

async function holdsAll(
  work: Read,
  { bytes, entries }: { bytes: Uint8Array; entries: readonly Entry[] },
): Promise<boolean> {
  const reading = await work.read({ bytes, held: [] });
  return reading.kind === 'read' && reading.digestFits && reading.entries.length === entries.length;
}
