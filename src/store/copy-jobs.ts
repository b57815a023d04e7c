import type { TextEntry } from '../domain/packed/text-entry.ts';
import { type CopyToKeep, type KeptCopy, keepCopy } from './backup/copies.ts';
import { linkLedger } from './backup/link-ledger.ts';
import { type OpenedBackup, openSealed } from './backup/open-sealed.ts';
import { type BackupAccount, goThroughBackup } from './backup/read-backup.ts';
import type { Secret } from './backup/sealing-keys.ts';
import { type AboutBackup, writeBackup } from './backup/write-backup.ts';
import type { FileShelf } from './file-shelf.ts';
import { type CopyOf, readLogToCopy } from './log-to-copy.ts';
import { type FilesReading, type FilesToRead, readFiles } from './read-files.ts';
import { type CopyToTake, type TakenCopy, takeCopy } from './take-copy.ts';

/** A backup file, and how many entries it has. */
export interface WrittenCopy {
  readonly bytes: Uint8Array;
  readonly entries: number;
}

/** What a look at a file finds: how many entries can be read, whether its sums fit, and whether anything in it is missing or damaged. */
type FileLook =
  | Extract<BackupAccount, { kind: 'refused' }>
  | {
      readonly kind: 'read';
      readonly entries: number;
      readonly digestFits: boolean;
      readonly whole: boolean;
    };

/** What is heavy about copies of the log. */
export interface CopyJobs {
  /** Puts a copy on the shelf. Rejects when the log cannot be read, or lacks what it ought to have. */
  readonly keep: (job: Omit<CopyToKeep, 'entries' | 'runs'> & CopyOf) => Promise<KeptCopy>;
  /** Rejects like `keep`. */
  readonly write: (job: CopyOf & { readonly about: AboutBackup }) => Promise<WrittenCopy>;
  readonly look: (job: { readonly bytes: Uint8Array }) => Promise<FileLook>;
  /** Whether a file can be read whole and another one has every entry of it. */
  readonly covers: (job: { readonly bytes: Uint8Array; readonly older: Uint8Array }) => Promise<boolean>;
  /** Makes the files of a copy that a person takes away. Rejects like `keep`. */
  readonly take: (job: CopyToTake) => Promise<TakenCopy>;
  /** Reads the files of a copy from outside, and counts what they would add. Rejects when the log here cannot be read. */
  readonly read: (job: FilesToRead) => Promise<FilesReading>;
  readonly open: (job: { readonly file: Blob; readonly secret: Secret }) => Promise<OpenedBackup>;
}

/** The jobs, done where they are called. Only `keep` needs the shelf. */
export function copyJobs(shelf: FileShelf | null): CopyJobs {
  return {
    async keep({ log, least, ...copy }) {
      if (!shelf) return { kind: 'failed', why: 'shelf', problem: 'the tablet has no shelf' };
      return keepCopy(shelf, { ...copy, ...(await readLogToCopy({ log, least })) });
    },
    async write({ about, ...of }) {
      let entries = 0;
      const onLink = () => {
        entries += 1;
      };
      const bytes = writeBackup({ ...(await readLogToCopy(of)), about, onLink });
      return { bytes, entries };
    },
    look: async ({ bytes }) => lookAt(bytes),
    covers: async ({ bytes, older }) => covers(bytes, older),
    take: takeCopy,
    read: readFiles,
    open: ({ file, secret }) => openSealed(file, secret),
  };
}

function lookAt(bytes: Uint8Array, take: (entry: TextEntry) => void = () => {}): FileLook {
  const account = goThroughBackup(bytes, { take });
  if (account.kind === 'refused') return account;
  const { entries, digestFits, cut, unreadable } = account;
  return { kind: 'read', entries, digestFits, whole: !cut && unreadable.length === 0 };
}

function covers(bytes: Uint8Array, older: Uint8Array): boolean {
  const ledger = linkLedger();
  lookAt(bytes, ({ link }) => ledger.add(link));
  const { meet, lacking } = ledger.compare();
  const found = lookAt(older, ({ link }) => meet(link));
  return found.kind === 'read' && found.whole && lacking() === 0;
}
