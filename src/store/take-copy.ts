import type { PhotoHash } from '../domain/log/photo-facts.ts';
import { openVolume, weighPhotos } from './backup/read-volumes.ts';
import { type RandomBytes, sealBackup } from './backup/seal-backup.ts';
import type { AboutBackup } from './backup/write-backup.ts';
import { type PhotosToWrite, type VolumeFile, writeVolumes } from './backup/write-volumes.ts';
import { type CopyOf, readLogToCopy } from './log-to-copy.ts';
import { openPhotoStore } from './photos/photo-store.ts';
import { inOrderOfKeeping } from './photos/photo-volumes.ts';

/** A copy that a person takes away. */
export interface CopyToTake extends CopyOf {
  readonly about: AboutBackup;
  /** The shop whose photos go with it; null where none do. */
  readonly photos: string | null;
  /** Seals it. */
  readonly passphrase?: string | undefined;
}

/** Its files, of which the first has the log. */
export interface TakenCopy {
  readonly volumes: readonly VolumeFile[];
  readonly entries: number;
  /** Photos that could not be read, or were not what they had been. */
  readonly leftOut: number;
  /** Twelve words that open every one of its files; null where they are not sealed. */
  readonly words: readonly string[] | null;
}

const noPhotos: PhotosToWrite = { hashes: [], bytes: async () => undefined };

/** Rejects when the log or the photos cannot be read, or the log lacks what it ought to have. */
export async function takeCopy({ about, photos, passphrase, ...of }: CopyToTake): Promise<TakenCopy> {
  let entries = 0;
  const onLink = () => {
    entries += 1;
  };
  const log = await readLogToCopy(of);
  const { volumes, leftOut } = await withPhotosOf(photos, async (source) =>
    writeVolumes({ ...log, about, onLink, photos: source }),
  );
  await proveThatPhotosAreIn(volumes);
  return {
    entries,
    leftOut,
    ...(passphrase === undefined ? { volumes, words: null } : await sealed(volumes, passphrase)),
  };
}

async function withPhotosOf<Result>(
  shop: string | null,
  write: (photos: PhotosToWrite) => Promise<Result>,
): Promise<Result> {
  if (shop === null) return write(noPhotos);
  const store = openPhotoStore(shop);
  try {
    const hashes = inOrderOfKeeping(await store.notes()).map(({ hash }) => hash);
    return await write({ hashes, bytes: store.bytes });
  } finally {
    store.close();
  }
}

/** What the browser took over is read back and counted: a disk may be full. */
async function proveThatPhotosAreIn(volumes: readonly VolumeFile[]): Promise<void> {
  const none: ReadonlySet<PhotoHash> = new Set();
  for (const { content, photos } of volumes) {
    if (photos.length === 0) continue;
    const opened = await openVolume(content);
    const found = await weighPhotos([{ ...opened, file: content, said: undefined }], none);
    if (found?.fresh.length !== photos.length) throw new Error('the copy lacks photos that were put into it');
  }
}

const randomBytes: RandomBytes = (length) => crypto.getRandomValues(new Uint8Array(length));

async function sealed(volumes: readonly VolumeFile[], passphrase: string) {
  const entropy = randomBytes(16);
  const files: VolumeFile[] = [];
  let words: readonly string[] = [];
  for (const volume of volumes) {
    const made = await sealBackup(volume.content, { passphrase, random: randomBytes, entropy });
    files.push({ ...volume, content: made.content });
    words = made.words;
  }
  return { volumes: files, words };
}
