import type { PhotoHash } from '../../domain/log/photo-facts.ts';
import { digestOf } from './digest-of.ts';
import { type Gathering, gathering } from './gathering.ts';
import { bytesInFile, photoMembers } from './photo-members.ts';
import { digestOfHashes, type SaidOfPhotos, setOf, volumeFormat } from './photos-said.ts';
import { type BackupToWrite, firstLine, piecesOfBackup } from './write-backup.ts';

/** The photos that go into a copy; each is read by itself. */
export interface PhotosToWrite {
  /** In the order in which they are written. */
  readonly hashes: readonly PhotoHash[];
  readonly bytes: (photo: PhotoHash) => Promise<Uint8Array<ArrayBuffer> | undefined>;
}

/** One of the files of a copy. */
export interface VolumeFile {
  readonly content: Blob;
  readonly photos: readonly PhotoHash[];
  /** Bytes of its photos. */
  readonly bytes: number;
}

export interface WrittenVolumes {
  /** The first one has the log. */
  readonly volumes: readonly VolumeFile[];
  /** Photos that are left out, because they are not there any more or are not what they were. */
  readonly leftOut: number;
}

/**
 * A file has no more bytes than this, unless the log alone has: readers from before there were photos in copies take 150 MB,
 * and a tablet has to share it in one go.
 */
const mostInVolume = 120_000_000;
/** Kept free for the first line. */
const forFirstLine = 20_000;

interface Filling {
  readonly content: Gathering;
  readonly photos: PhotoHash[];
  /** What else is in the file. */
  readonly beside: number;
  bytes: number;
}

/**
 * A log with its photos, in one file where they fit and in numbered ones where they do not. Photos stand between the lines
 * and the packed part, which older readers look for at the end. Without photos it is the file that `writeBackup` makes,
 * byte for byte. One photo at a time is in memory. Rejects when the photos cannot be read, and like `writeBackup`.
 */
export async function writeVolumes({
  photos,
  most = mostInVolume,
  ...backup
}: BackupToWrite & { photos: PhotosToWrite; most?: number }): Promise<WrittenVolumes> {
  const { manifest, lines, part } = piecesOfBackup(backup);
  const ofLog = lines.reduce((sum, { length }) => sum + length, part.length);
  const { filled, leftOut } = await fill(photos, { most, beside: ofLog + forFirstLine });
  const said = saidOf(filled);
  const volumes = filled.map(({ content, photos: its, bytes }, index): VolumeFile => {
    const file = gathering();
    const saidHere = said?.[index];
    if (index === 0) {
      file.push(firstLine(saidHere ? { ...manifest, photos: saidHere } : manifest));
      for (const line of lines) file.push(line);
    } else {
      const { version, shop } = backup.about;
      file.push(firstLine({ tallywright: 'photos', format: volumeFormat, version, shop, photos: saidHere }));
    }
    const pieces = [file.blob(), content.blob(), new Blob(index === 0 ? [new Uint8Array(part)] : [])];
    return { content: new Blob(pieces), photos: its, bytes };
  });
  return { volumes, leftOut };
}

async function fill(
  { hashes, bytes: read }: PhotosToWrite,
  { most, beside }: { readonly most: number; readonly beside: number },
) {
  const empty = (other: number): Filling => ({ content: gathering(), photos: [], beside: other, bytes: 0 });
  let now = empty(beside);
  const filled = [now];
  let leftOut = 0;
  for (const hash of hashes) {
    const bytes = await read(hash);
    if (!bytes || (await digestOf(bytes)) !== hash) {
      leftOut += 1;
      continue;
    }
    const isFull = now.beside + now.content.size() + bytesInFile(bytes.length) > most;
    // The first file is there for the log, however little room that leaves.
    if (isFull && (filled.length === 1 || now.photos.length > 0)) {
      now = empty(forFirstLine);
      filled.push(now);
    }
    now.content.push(photoMembers({ hash, bytes }));
    now.photos.push(hash);
    now.bytes += bytes.length;
  }
  return { filled, leftOut };
}

function saidOf(filled: readonly Filling[]): readonly SaidOfPhotos[] | undefined {
  const all = filled.reduce((sum, { photos }) => sum + photos.length, 0);
  if (all === 0) return undefined;
  const digests = filled.map(({ photos }) => digestOfHashes(photos));
  const set = setOf(digests);
  return filled.map(({ photos, bytes }, index) => ({
    form: 1,
    set,
    volume: index + 1,
    volumes: filled.length,
    photos: photos.length,
    bytes,
    digest: digests[index] ?? '',
    all,
  }));
}
