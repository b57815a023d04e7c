import type { PhotoFacts, PhotoHash } from '../domain/log/photo-facts.ts';
import type { PhotoNote } from '../store/photos/photo-database.ts';
import { openPhotoStore, type PhotoStore } from '../store/photos/photo-store.ts';
import type { FromPhotoWorker, NoPhoto, ToPhotoWorker } from '../worker/photo-protocol.ts';
import { systemClock } from './clock.ts';

export type Kept =
  | { readonly kind: 'kept'; readonly photo: PhotoFacts }
  | { readonly kind: 'refused'; readonly why: NoPhoto }
  /** It was made, and the tablet did not keep it: there may be no room. */
  | { readonly kind: 'not-kept' };

/** The photos of a shop. */
export interface Photos {
  /** Makes a photo of a file and keeps it; the log is then still to be told. */
  readonly keep: (file: Blob) => Promise<Kept>;
  /** The JPEG; undefined when it is not on this tablet, or was let go. */
  readonly large: (photo: PhotoHash) => Promise<Blob | undefined>;
  readonly small: (photo: PhotoHash) => Promise<Blob | undefined>;
  readonly letGo: (photos: Iterable<PhotoHash>) => Promise<void>;
  readonly notes: () => Promise<readonly PhotoNote[]>;
}

type PhotoWorker = Pick<Worker, 'postMessage' | 'addEventListener' | 'terminate'>;

export interface PhotosParts {
  readonly store: PhotoStore;
  readonly start: () => PhotoWorker;
  readonly now: () => number;
}

const opened = new Map<string, Photos>();

/** The photos beside the log that lies in this database. */
export function photosOf(database: string): Photos {
  const known =
    opened.get(database) ??
    openPhotos({
      store: openPhotoStore(database),
      start: () => new Worker(new URL('../worker/photo-worker.ts', import.meta.url), { type: 'module' }),
      now: systemClock.now,
    });
  opened.set(database, known);
  return known;
}

export function openPhotos({ store, start, now }: PhotosParts): Photos {
  let make: ((file: Blob) => Promise<FromPhotoWorker | undefined>) | undefined;
  const asJpeg = (bytes: Uint8Array<ArrayBuffer> | undefined) =>
    bytes && new Blob([bytes], { type: 'image/jpeg' });
  return {
    async keep(file) {
      make ??= maker(start(), () => {
        make = undefined;
      });
      const made = await make(file);
      if (!made) return { kind: 'refused', why: 'cannot-be-opened' };
      if (made.kind === 'refused') return made;
      try {
        await store.keep(made.photo, now());
      } catch {
        return { kind: 'not-kept' };
      }
      return { kind: 'kept', photo: made.photo.facts };
    },
    large: async (photo) => asJpeg(await store.bytes(photo)),
    small: async (photo) => asJpeg(await store.small(photo)),
    letGo: store.letGo,
    notes: store.notes,
  };
}

/** Asks the worker; undefined for all that it was asked when it broke, as when a picture was too much for it. */
function maker(
  worker: PhotoWorker,
  onBroken: () => void,
): (file: Blob) => Promise<FromPhotoWorker | undefined> {
  const waiting = new Map<number, (made: FromPhotoWorker | undefined) => void>();
  let asked = 0;
  worker.addEventListener('message', ({ data }: MessageEvent<FromPhotoWorker>) => {
    waiting.get(data.id)?.(data);
    waiting.delete(data.id);
  });
  worker.addEventListener('error', () => {
    worker.terminate();
    onBroken();
    for (const settle of waiting.values()) settle(undefined);
    waiting.clear();
  });
  return (file) =>
    new Promise((resolve) => {
      asked += 1;
      waiting.set(asked, resolve);
      const message: ToPhotoWorker = { id: asked, file };
      worker.postMessage(message);
    });
}
