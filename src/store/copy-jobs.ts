import type { Entry, Link } from '../domain/log/chain.ts';
import { type CopyToKeep, type KeptCopy, keepCopy } from './backup/copies.ts';
import { type OpenedBackup, openSealed } from './backup/open-sealed.ts';
import { type BackupReading, readBackup } from './backup/read-backup.ts';
import { type RandomBytes, type SealedBackup, sealBackup } from './backup/seal-backup.ts';
import type { Secret } from './backup/sealing-keys.ts';
import { type Preview, whatItWouldAdd } from './backup/what-it-would-add.ts';
import { type AboutBackup, writeBackup } from './backup/write-backup.ts';
import type { FileShelf } from './file-shelf.ts';

/** The log, an entry a line: text goes between threads at a fraction of the cost of objects. */
type Lines = readonly string[];

/** What is heavy about copies of the log. `lines` are JSON that this app has just written. */
export interface CopyJobs {
  /** Puts a copy on the shelf. */
  readonly keep: (job: Omit<CopyToKeep, 'entries'> & { readonly lines: Lines }) => Promise<KeptCopy>;
  readonly write: (job: { readonly lines: Lines; readonly about: AboutBackup }) => Promise<Uint8Array>;
  /** Reads a file from outside, and counts what it would add to a log that holds the entries `held`. */
  readonly read: (job: {
    readonly bytes: Uint8Array;
    readonly held: readonly Link[];
  }) => Promise<FileReading>;
  readonly seal: (job: { readonly bytes: Uint8Array; readonly passphrase: string }) => Promise<SealedBackup>;
  readonly open: (job: { readonly bytes: Uint8Array; readonly secret: Secret }) => Promise<OpenedBackup>;
}

export type FileReading =
  | Extract<BackupReading, { kind: 'refused' }>
  | (Extract<BackupReading, { kind: 'read' }> & { readonly preview: Preview });

/** The jobs, done where they are called. Only `keep` needs the shelf. */
export function copyJobs(shelf: FileShelf | null): CopyJobs {
  return {
    async keep({ lines, ...copy }) {
      if (!shelf) return { kind: 'failed', why: 'shelf', problem: 'the tablet has no shelf' };
      return keepCopy(shelf, { ...copy, entries: parsed(lines) });
    },
    write: async ({ lines, about }) => writeBackup({ entries: parsed(lines), about }),
    async read({ bytes, held }) {
      const reading = readBackup(bytes);
      return reading.kind === 'refused'
        ? reading
        : { ...reading, preview: whatItWouldAdd(reading, new Set(held)) };
    },
    seal: ({ bytes, passphrase }) => sealBackup(bytes, { passphrase, random: randomBytes }),
    open: ({ bytes, secret }) => openSealed(bytes, secret),
  };
}

const randomBytes: RandomBytes = (length) => crypto.getRandomValues(new Uint8Array(length));

function parsed(lines: Lines): readonly Entry[] {
  return lines.map((line) => JSON.parse(line) as Entry);
}
