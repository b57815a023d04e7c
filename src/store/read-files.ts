import type { Link } from '../domain/log/chain.ts';
import { packStream } from '../domain/packed/pack-stream.ts';
import { countIn, linksIn, type Parcel, stationsIn } from '../domain/packed/parcel.ts';
import { usualLimits } from './backup/backup-format.ts';
import { bytesOfBlob } from './backup/gathering.ts';
import { isSealed } from './backup/open-sealed.ts';
import { type BackupAccount, goThroughBackup, type RefusedBackup } from './backup/read-backup.ts';
import { readPacked } from './backup/read-packed.ts';
import { openVolume, type PhotosFound, type VolumeToWeigh, weighPhotos } from './backup/read-volumes.ts';
import { allNew, type Preview, whatItWouldAdd } from './backup/what-it-would-add.ts';
import type { ReadParcel } from './log-store.ts';
import { type LogSource, readLogToCopy } from './log-to-copy.ts';
import { openPhotoStore } from './photos/photo-store.ts';

/** The files of a copy, in any order, and what they are held against. */
export interface FilesToRead {
  readonly files: readonly Blob[];
  readonly log: LogSource;
  /** The shop whose photos are here already; null where none are kept. */
  readonly photos: string | null;
}

/** Why files are not taken: `several` are logs, and a copy has one. */
export type RefusedFile = RefusedBackup | 'several';

export type FilesReading =
  | {
      readonly kind: 'refused';
      readonly why: RefusedFile;
      /** Which of the files it is about, from 0. */
      readonly at: readonly number[];
    }
  | (LogReading & { readonly photos: PhotosFound | null });

/** What was read of a log, packed for a merge; `held` is how many entries the log here has. */
type LogReading = Extract<BackupAccount, { kind: 'read' }> & {
  readonly parcel: ReadParcel;
  readonly preview: Preview;
  readonly held: number;
};

/**
 * Reads the files of a copy: one with the log, others with photos that did not fit into it; any of them may be missing. Photos
 * are passed over as if they were not there when the log is read, and are read one at a time.
 */
export async function readFiles({ files, log, photos }: FilesToRead): Promise<FilesReading> {
  const sealed = await sealedAmong(files);
  if (sealed.length > 0) return { kind: 'refused', why: 'sealed', at: sealed };
  const held = await readLogToCopy({ log, least: 0 });
  const volumes: VolumeToWeigh[] = [];
  let read: LogReading | undefined;
  for (const [index, file] of files.entries()) {
    const refused = (why: RefusedFile): FilesReading => ({ kind: 'refused', why, at: [index] });
    const volume = await openVolume(file);
    if (volume.line === 'newer-format') return refused('newer-format');
    const account = volume.line ? undefined : await readLog(volume.rest, held);
    if (account?.kind === 'read' && read) return refused('several');
    if (account?.kind === 'read') read = account;
    else if (account && volume.photos.length === 0) return refused(account.why);
    const said = account?.kind === 'read' ? account.manifest?.photos : volume.line;
    volumes.push({ ...volume, file, said });
  }
  const found = await weighPhotos(volumes, await photosHeld(photos));
  return { ...(read ?? nothingOf(held)), photos: found ?? null };
}

async function sealedAmong(files: readonly Blob[]): Promise<readonly number[]> {
  const heads = await Promise.all(files.map((file) => bytesOfBlob(file.slice(0, 64))));
  return heads.flatMap((head, index) => (isSealed(head) ? [index] : []));
}

async function photosHeld(shop: string | null) {
  if (shop === null) return new Set<never>();
  const store = openPhotoStore(shop);
  try {
    return new Set((await store.notes()).map(({ hash }) => hash));
  } finally {
    store.close();
  }
}

async function readLog(
  file: Blob,
  held: Parcel,
): Promise<LogReading | Extract<BackupAccount, { kind: 'refused' }>> {
  if (file.size > usualLimits.file) return { kind: 'refused', why: 'too-big' };
  const bytes = await bytesOfBlob(file);
  return (await readByItsPart(bytes, held)) ?? readByItsLines(bytes, new Set(linksIn(held)));
}

function readByItsLines(bytes: Uint8Array, held: ReadonlySet<Link>) {
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
async function readByItsPart(bytes: Uint8Array, held: Parcel): Promise<LogReading | undefined> {
  const packed = await readPacked(bytes);
  if (!packed) return undefined;
  const { manifest, parcel } = packed;
  const here = stationsIn(held);
  if (manifest.stations.some(({ station }) => here.has(station))) return undefined;
  return {
    ...{ kind: 'read', manifest, parcel, entries: manifest.entries, ...whole },
    ...{ preview: allNew(packed), held: countIn(held) },
  };
}

const whole = { unreadable: [], cut: false, digestFits: true } as const;

/** Of photos without a log. */
function nothingOf(held: Parcel): LogReading {
  const { hasMet, preview } = whatItWouldAdd(new Set());
  return {
    ...{ kind: 'read', manifest: null, parcel: packStream().parcel(hasMet), entries: 0, ...whole },
    ...{ preview: preview(0), held: countIn(held) },
  };
}
