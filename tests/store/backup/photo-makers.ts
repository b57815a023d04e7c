import { createHash } from 'node:crypto';
import * as v from 'valibot';
import { seededRandom } from '../../../src/domain/chance/seeded-random.ts';
import { type PhotoHash, photoHash } from '../../../src/domain/log/photo-facts.ts';
import type { PhotosToWrite } from '../../../src/store/backup/write-volumes.ts';

type Bytes = Uint8Array<ArrayBuffer>;

/** SHA-256 by node:crypto (FIPS 180-4). */
export const hashOf = (bytes: Uint8Array): PhotoHash =>
  v.parse(photoHash, createHash('sha256').update(bytes).digest('hex'));

/** Bytes that no packer could shrink, as those of a JPEG are; by their number. */
export function photoOf(number: number, length: number): { readonly hash: PhotoHash; readonly bytes: Bytes } {
  const next = seededRandom(number + 1);
  const bytes = Uint8Array.from({ length }, () => Math.floor(next() * 256));
  return { hash: hashOf(bytes), bytes };
}

/** Photos as a store has them, each given when it is asked for; how many were asked for at once is noted. */
export function photosOfStore(photos: readonly ReturnType<typeof photoOf>[]) {
  const held = new Map(photos.map(({ hash, bytes }) => [hash, bytes]));
  const notes = { atOnce: 0, most: 0 };
  const source: PhotosToWrite = {
    hashes: photos.map(({ hash }) => hash),
    async bytes(photo) {
      notes.atOnce += 1;
      notes.most = Math.max(notes.most, notes.atOnce);
      await Promise.resolve();
      notes.atOnce -= 1;
      return held.get(photo);
    },
  };
  return { source, held, notes };
}
