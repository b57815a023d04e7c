import type { Entry, Link } from '../../domain/log/chain.ts';
import type { FileShelf } from '../file-shelf.ts';
import { type CopyKind, type CopyName, copiesAmong, copyName, outdatedCopies } from './copy-names.ts';
import { type BackupReading, readBackup } from './read-backup.ts';
import { type AboutBackup, writeBackup } from './write-backup.ts';

export interface CopyToKeep {
  readonly entries: readonly Entry[];
  readonly about: AboutBackup;
  /** The shop day, `YYYY-MM-DD`. */
  readonly day: string;
  readonly kind: CopyKind;
}

export type KeptCopy =
  | {
      readonly kind: 'kept';
      readonly name: string;
      readonly entries: number;
      readonly removed: readonly string[];
    }
  | {
      /** The log lacks entries that an older copy has: that copy stays. */
      readonly kind: 'guarded';
      /** The new copy; null when the log has nothing that the older one has not, and none was made. */
      readonly name: string | null;
      readonly holder: string;
      /** How many entries of `holder` the log lacks. */
      readonly lacking: number;
    }
  | { readonly kind: 'failed'; readonly why: 'shelf' | 'read-back'; readonly problem: string };

/**
 * Puts a copy of the log on the shelf under a new name, reads it back and counts it, and only then takes outdated copies
 * away, none of which may hold an entry that the new one lacks. Never rejects. One window at a time: the caller sees to it.
 */
export async function keepCopy(shelf: FileShelf, copy: CopyToKeep): Promise<KeptCopy> {
  try {
    return await keep(shelf, copy);
  } catch (error) {
    return { kind: 'failed', why: 'shelf', problem: String(error) };
  }
}

async function keep(shelf: FileShelf, { entries, about, day, kind }: CopyToKeep): Promise<KeptCopy> {
  const links = new Set(entries.map(({ link }) => link));
  const older = await listCopies(shelf);
  const holder = await newestGood(shelf, older);
  const lacking = holder ? lackedBy(links, holder.links) : 0;
  if (holder && lacking > 0 && lackedBy(holder.links, links) === 0)
    return { kind: 'guarded', name: null, holder: holder.name, lacking };

  const name = copyName({ number: (older[0]?.number ?? 0) + 1, day, kind });
  const problem = await writeChecked(shelf, { name, bytes: writeBackup({ entries, about }), links });
  if (problem !== null) return { kind: 'failed', why: 'read-back', problem };

  const removed = await removeOutdated(shelf, links);
  if (holder && lacking > 0) return { kind: 'guarded', name, holder: holder.name, lacking };
  return { kind: 'kept', name, entries: links.size, removed };
}

/** The copies on the shelf, the newest first. Rejects when the shelf cannot be read. */
export async function listCopies(shelf: FileShelf): Promise<readonly CopyName[]> {
  return copiesAmong(await shelf.names());
}

/** Reads a copy; undefined when there is none of that name. Rejects when the shelf cannot be read. */
export async function readCopy(shelf: FileShelf, name: string): Promise<BackupReading | undefined> {
  const bytes = await shelf.read(name);
  return bytes && readBackup(bytes);
}

type Holder = Pick<CopyName, 'name'> & { readonly links: ReadonlySet<Link> };

/** The newest copy that can be read, also in part. */
async function newestGood(shelf: FileShelf, copies: readonly CopyName[]): Promise<Holder | undefined> {
  for (const { name } of copies) {
    const reading = await readCopy(shelf, name);
    if (reading?.kind === 'read') return { name, links: linksOf(reading) };
  }
  return undefined;
}

/** Writes a file and reads it back; what is wrong with it, or null. A bad one is taken off the shelf again. Rejects as the shelf does. */
async function writeChecked(
  shelf: FileShelf,
  { name, bytes, links }: Holder & { readonly bytes: Uint8Array },
): Promise<string | null> {
  try {
    await shelf.write(name, bytes);
    const problem = problemOf(await readCopy(shelf, name), links);
    if (problem !== null) await takeOff(shelf, name);
    return problem;
  } catch (error) {
    await takeOff(shelf, name);
    throw error;
  }
}

/** Tries to take a bad copy off the shelf. One that stays is found bad when it is read. */
async function takeOff(shelf: FileShelf, name: string): Promise<void> {
  await shelf.remove(name).catch(() => undefined);
}

function problemOf(reading: BackupReading | undefined, links: ReadonlySet<Link>): string | null {
  if (reading === undefined) return 'the copy is not there';
  if (reading.kind === 'refused') return `the copy is refused: ${reading.why}`;
  if (!reading.digestFits) return 'the digest of the copy does not fit';
  const lacking = lackedBy(linksOf(reading), links);
  return lacking === 0 ? null : `the copy lacks ${lacking} of ${links.size} entries`;
}

/** Takes away the outdated copies all of whose entries are in `links`. A copy that cannot be read now is left. */
async function removeOutdated(shelf: FileShelf, links: ReadonlySet<Link>): Promise<readonly string[]> {
  const removed: string[] = [];
  for (const { name } of outdatedCopies(await listCopies(shelf))) {
    try {
      if (!(await isCovered(shelf, name, links))) continue;
      await shelf.remove(name);
      removed.push(name);
    } catch {
      // One copy too many is no loss; the next copy comes by here again.
    }
  }
  return removed;
}

/** Whether `links` make up for a copy. One that is damaged may have held as many entries as its manifest says. */
async function isCovered(shelf: FileShelf, name: string, links: ReadonlySet<Link>): Promise<boolean> {
  const reading = await readCopy(shelf, name);
  if (reading === undefined || reading.kind === 'refused') return false;
  return lackedBy(links, linksOf(reading)) === 0 && (reading.manifest?.entries ?? 0) <= links.size;
}

const linksOf = ({ entries }: Extract<BackupReading, { kind: 'read' }>): ReadonlySet<Link> =>
  new Set(entries.map(({ link }) => link));

/** How many of `wanted` are not in `held`. */
function lackedBy(held: ReadonlySet<Link>, wanted: ReadonlySet<Link>): number {
  let lacking = 0;
  for (const link of wanted) if (!held.has(link)) lacking += 1;
  return lacking;
}
