import type { Link } from '../domain/log/chain.ts';
import { packStream } from '../domain/packed/pack-stream.ts';
import { countIn, linksIn, type Parcel, stationsIn } from '../domain/packed/parcel.ts';
import type { TextEntry } from '../domain/packed/text-entry.ts';
import { type CopyToKeep, type KeptCopy, keepCopy } from './backup/copies.ts';
import { linkLedger } from './backup/link-ledger.ts';
import { type OpenedBackup, openSealed } from './backup/open-sealed.ts';
import { type BackupAccount, goThroughBackup } from './backup/read-backup.ts';
import { readPacked } from './backup/read-packed.ts';
import { type RandomBytes, type SealedBackup, sealBackup } from './backup/seal-backup.ts';
import type { Secret } from './backup/sealing-keys.ts';
import { allNew, type Preview, whatItWouldAdd } from './backup/what-it-would-add.ts';
import { type AboutBackup, writeBackup } from './backup/write-backup.ts';
import type { FileShelf } from './file-shelf.ts';
import type { ReadParcel } from './log-store.ts';
import { type CopyOf, type LogSource, readLogToCopy } from './log-to-copy.ts';

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
  /** Reads a file from outside, and counts what it would add to a log. Rejects when that log cannot be read. */
  readonly read: (job: { readonly bytes: Uint8Array; readonly log: LogSource }) => Promise<FileReading>;
  readonly seal: (job: { readonly bytes: Uint8Array; readonly passphrase: string }) => Promise<SealedBackup>;
  readonly open: (job: { readonly bytes: Uint8Array; readonly secret: Secret }) => Promise<OpenedBackup>;
}

/** What was read of a file, packed for a merge; `held` is how many entries the log has. */
export type FileReading =
  | Extract<BackupAccount, { kind: 'refused' }>
  | (Extract<BackupAccount, { kind: 'read' }> & {
      readonly parcel: ReadParcel;
      readonly preview: Preview;
      readonly held: number;
    });

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
    async read({ bytes, log }) {
      const held = await readLogToCopy({ log, least: 0 });
      return (await readPackedFile(bytes, held)) ?? readFile(bytes, new Set(linksIn(held)));
    },
    seal: ({ bytes, passphrase }) => sealBackup(bytes, { passphrase, random: randomBytes }),
    open: ({ bytes, secret }) => openSealed(bytes, secret),
  };
}

const randomBytes: RandomBytes = (length) => crypto.getRandomValues(new Uint8Array(length));

function readFile(bytes: Uint8Array, held: ReadonlySet<Link>): FileReading {
  const { weigh, hasMet, preview } = whatItWouldAdd(held);
  const packing = packStream();
  const account = goThroughBackup(bytes, {
    take(entry) {
      const kind = weigh(entry);
      if (kind !== 'again') packing.take(entry, kind);
    },
  });
  if (account.kind === 'refused') return account;
  const weighed = { preview: preview(account.unreadable.length), held: held.size };
  return { ...account, parcel: packing.parcel(hasMet), ...weighed };
}

/** A file of which the log has no station: all of it is new, and its packed part can be taken as it is, if it is whole. */
async function readPackedFile(bytes: Uint8Array, held: Parcel): Promise<FileReading | undefined> {
  const packed = await readPacked(bytes);
  if (!packed) return undefined;
  const { manifest, parcel } = packed;
  const here = stationsIn(held);
  if (manifest.stations.some(({ station }) => here.has(station))) return undefined;
  const whole = { unreadable: [], cut: false, digestFits: true } as const;
  return {
    ...{ kind: 'read', manifest, parcel, entries: manifest.entries, ...whole },
    ...{ preview: allNew(packed), held: countIn(held) },
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
