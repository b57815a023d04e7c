import type { PhotoHash } from '../domain/log/photo-facts.ts';
import type { Bytes } from '../store/backup/sealing-keys.ts';

/** The photos that a tablet keeps, as far as trading them goes. */
export interface PhotoShelf {
  readonly held: () => Promise<ReadonlySet<PhotoHash>>;
  readonly bytes: (photo: PhotoHash) => Promise<Bytes | undefined>;
  /** Keeps a photo whose bytes fit its hash; false when it is no photo. Rejects when the tablet has no room for it. */
  readonly keep: (photo: PhotoHash, bytes: Bytes) => Promise<boolean>;
}
