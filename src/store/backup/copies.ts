import type { FileShelf } from '../file-shelf.ts';
import { type CopyKind, type CopyName, copiesAmong, copyName, outdatedCopies } from './copy-names.ts';
import { type LinkLedger, linkLedger } from './link-ledger.ts';
import { type BackupAccount, goThroughBackup } from './read-backup.ts';
import { type AboutBackup, type LogToWrite, writeBackup } from './write-backup.ts';

export interface CopyToKeep extends LogToWrite {
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

async function keep(shelf: FileShelf, { about, day, kind, ...log }: CopyToKeep): Promise<KeptCopy> {
  const ledger = linkLedger();
  const bytes = writeBackup({ ...log, about, onLink: ledger.add });
  const older = await listCopies(shelf);
  const holder = await newestGood(shelf, { copies: older, ledger });
  const lacking = holder?.lacking ?? 0;
  if (holder && lacking > 0 && holder.missing === 0)
    return { kind: 'guarded', name: null, holder: holder.name, lacking };

  const name = copyName({ number: (older[0]?.number ?? 0) + 1, day, kind });
  const problem = await writeChecked(shelf, { name, bytes, ledger });
  if (problem !== null) return { kind: 'failed', why: 'read-back', problem };

  const removed = await removeOutdated(shelf, { ledger, holder });
  if (holder && lacking > 0) return { kind: 'guarded', name, holder: holder.name, lacking };
  return { kind: 'kept', name, entries: ledger.size(), removed };
}

/** The copies on the shelf, the newest first. Rejects when the shelf cannot be read. */
export async function listCopies(shelf: FileShelf): Promise<readonly CopyName[]> {
  return copiesAmong(await shelf.names());
}

/** A copy as it was read, held against a log: how many entries the log lacks, and how many the copy is missing. */
interface Compared {
  readonly account: BackupAccount;
  readonly lacking: number;
  readonly missing: number;
}

/** Reads a copy and holds it against a log; undefined when there is none of that name. Rejects when the shelf cannot be read. */
async function compareCopy(
  shelf: FileShelf,
  { name, ledger }: { readonly name: string; readonly ledger: LinkLedger },
): Promise<Compared | undefined> {
  const bytes = await shelf.read(name);
  if (!bytes) return undefined;
  const { meet, lacking, missing } = ledger.compare();
  const account = goThroughBackup(bytes, { take: ({ link }) => meet(link) });
  return { account, lacking: lacking(), missing: missing() };
}

type Holder = Pick<CopyName, 'name'> & Compared;

/** The newest copy that can be read, also in part. */
async function newestGood(
  shelf: FileShelf,
  { copies, ledger }: { readonly copies: readonly CopyName[]; readonly ledger: LinkLedger },
): Promise<Holder | undefined> {
  for (const { name } of copies) {
    const copy = await compareCopy(shelf, { name, ledger });
    if (copy?.account.kind === 'read') return { name, ...copy };
  }
  return undefined;
}

interface NewCopy {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly ledger: LinkLedger;
}

/** Writes a file and reads it back; what is wrong with it, or null. A bad one is taken off the shelf again. Rejects as the shelf does. */
async function writeChecked(shelf: FileShelf, { name, bytes, ledger }: NewCopy): Promise<string | null> {
  try {
    await shelf.write(name, bytes);
    const problem = problemOf(await compareCopy(shelf, { name, ledger }), ledger);
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

function problemOf(copy: Compared | undefined, ledger: LinkLedger): string | null {
  if (copy === undefined) return 'the copy is not there';
  const { account, missing } = copy;
  if (account.kind === 'refused') return `the copy is refused: ${account.why}`;
  if (!account.digestFits) return 'the digest of the copy does not fit';
  return missing === 0 ? null : `the copy lacks ${missing} of ${ledger.size()} entries`;
}

/** Takes away the outdated copies all of whose entries the log has. A copy that cannot be read now is left. */
async function removeOutdated(
  shelf: FileShelf,
  { ledger, holder }: { readonly ledger: LinkLedger; readonly holder: Holder | undefined },
): Promise<readonly string[]> {
  const removed: string[] = [];
  for (const { name } of outdatedCopies(await listCopies(shelf))) {
    try {
      // The one that was read before is seldom not among them, and reading takes its time.
      const copy = name === holder?.name ? holder : await compareCopy(shelf, { name, ledger });
      if (!isCovered(copy, ledger)) continue;
      await shelf.remove(name);
      removed.push(name);
    } catch {
      // One copy too many is no loss; the next copy comes by here again.
    }
  }
  return removed;
}

/** Whether a log makes up for a copy. One that is damaged may have held as many entries as its manifest says. */
function isCovered(copy: Compared | undefined, ledger: LinkLedger): boolean {
  if (copy === undefined || copy.account.kind === 'refused') return false;
  return copy.lacking === 0 && (copy.account.manifest?.entries ?? 0) <= ledger.size();
}
