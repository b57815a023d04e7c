import type { PhotoFacts, PhotoHash } from '../../domain/log/photo-facts.ts';
import { openPhotoDatabase, type PhotoDatabase, type PhotoNote } from './photo-database.ts';

type Bytes = Uint8Array<ArrayBuffer>;

/** A photo as it is kept: upright, on white, no larger than need be, without a word of where it was taken; `small` for galleries. */
export interface NewPhoto {
  readonly facts: PhotoFacts;
  readonly bytes: Bytes;
  readonly small: Bytes;
}

/** Keeps the bytes of photos under their hash. Every promise rejects when the store cannot do what was asked. */
export interface PhotoStore {
  /** Resolves when the photo is on disk, as far as the platform can be asked for it. */
  readonly keep: (photo: NewPhoto, now: number) => Promise<void>;
  readonly bytes: (photo: PhotoHash) => Promise<Bytes | undefined>;
  readonly small: (photo: PhotoHash) => Promise<Bytes | undefined>;
  /** Takes the bytes away; what is not there is no fault. */
  readonly letGo: (photos: Iterable<PhotoHash>) => Promise<void>;
  /** Notes that photos are in a file outside of the tablet; what is not there is no fault. */
  readonly wentOut: (photos: Iterable<PhotoHash>, now: number) => Promise<void>;
  /** What is known of all photos that are kept, in no order. */
  readonly notes: () => Promise<readonly PhotoNote[]>;
  readonly close: () => void;
}

/** The photos of the shop whose log has this name. */
export function openPhotoStore(shop: string): PhotoStore {
  let opened: Promise<PhotoDatabase> | undefined;
  const forget = () => {
    opened = undefined;
  };
  function database(): Promise<PhotoDatabase> {
    opened ??= openPhotoDatabase(shop, forget).catch((error: unknown) => {
      forget();
      throw error;
    });
    return opened;
  }
  return {
    async keep({ facts, bytes, small }, now) {
      const db = await database();
      const tx = db.transaction(['photos', 'small', 'notes'], 'readwrite', { durability: 'strict' });
      await Promise.all([
        tx.objectStore('photos').put(bytes, facts.hash),
        tx.objectStore('small').put(small, facts.hash),
        tx.objectStore('notes').put({ ...facts, kept: now }),
        tx.done,
      ]);
    },
    bytes: async (photo) => (await database()).get('photos', photo),
    small: async (photo) => (await database()).get('small', photo),
    async letGo(photos) {
      const db = await database();
      const tx = db.transaction(['photos', 'small', 'notes'], 'readwrite');
      for (const photo of photos) {
        void tx.objectStore('photos').delete(photo);
        void tx.objectStore('small').delete(photo);
        void tx.objectStore('notes').delete(photo);
      }
      await tx.done;
    },
    async wentOut(photos, now) {
      const notes = (await database()).transaction('notes', 'readwrite');
      for (const photo of photos) {
        const note = await notes.store.get(photo);
        if (note) void notes.store.put({ ...note, out: now });
      }
      await notes.done;
    },
    notes: async () => (await database()).getAll('notes'),
    close() {
      opened?.then(
        (db) => db.close(),
        () => undefined,
      );
      forget();
    },
  };
}
