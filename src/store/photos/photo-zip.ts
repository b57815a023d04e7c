import { unzipSync, type Zippable, zipSync } from 'fflate';
import * as v from 'valibot';
import { mostPhotoBytes, type PhotoHash, photoHash } from '../../domain/log/photo-facts.ts';
import { zipMoment } from './zip-moment.ts';

export interface HeldPhoto {
  readonly hash: PhotoHash;
  /** When it was kept, ms UTC. */
  readonly kept: number;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

const ending = '.jpg';

/** A zip file with photos under their hash. They are JPEGs, so that nothing is gained by packing them. */
export function zipOfPhotos(photos: readonly HeldPhoto[]): Uint8Array<ArrayBuffer> {
  const files: Zippable = {};
  for (const { hash, kept, bytes } of photos) {
    files[`${hash}${ending}`] = [bytes, { level: 0, mtime: zipMoment(kept) }];
  }
  return zipSync(files);
}

export interface FoundPhotos {
  /** By the hash that they are named after; whether it is theirs is still to be seen. */
  readonly photos: ReadonlyMap<PhotoHash, Uint8Array<ArrayBuffer>>;
  /** Files that are no photos, or too large to be. */
  readonly others: number;
}

/** What a zip file has under the names of photos; undefined when it is none. Nothing else of it is unpacked. */
export function photosInZip(bytes: Uint8Array): FoundPhotos | undefined {
  let others = 0;
  try {
    const files = unzipSync(bytes, {
      filter({ name, originalSize }) {
        const isWanted = hashNamed(name) !== undefined && originalSize <= mostPhotoBytes;
        if (!isWanted) others += 1;
        return isWanted;
      },
    });
    const photos = new Map<PhotoHash, Uint8Array<ArrayBuffer>>();
    for (const [name, photo] of Object.entries(files)) {
      const hash = hashNamed(name);
      if (hash) photos.set(hash, photo);
    }
    return { photos, others };
  } catch {
    return undefined;
  }
}

function hashNamed(name: string): PhotoHash | undefined {
  if (!name.endsWith(ending)) return undefined;
  const read = v.safeParse(photoHash, name.slice(0, -ending.length));
  return read.success ? read.output : undefined;
}
