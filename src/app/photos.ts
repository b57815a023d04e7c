import type { PhotoFacts, PhotoHash } from '../domain/log/photo-facts.ts';
import type { PhotosFound } from '../store/backup/read-volumes.ts';
import { photoIn } from '../store/backup/sift-photos.ts';
import { type ListingFiles, zipOfListing } from '../store/photos/listing-zip.ts';
import type { PhotoNote } from '../store/photos/photo-database.ts';
import { type NewPhoto, openPhotoStore, type PhotoStore } from '../store/photos/photo-store.ts';
import { type Volume, volumesOf } from '../store/photos/photo-volumes.ts';
import { type HeldPhoto, photosInZip, zipOfPhotos } from '../store/photos/photo-zip.ts';
import type { FromPhotoWorker, NoPhoto, ToPhotoWorker } from '../worker/photo-protocol.ts';
import { systemClock } from './clock.ts';

export type PhotoNotes = readonly PhotoNote[];

export type Kept =
  | { readonly kind: 'kept'; readonly photo: PhotoFacts }
  | { readonly kind: 'refused'; readonly why: NoPhoto }
  /** It was made, and the tablet did not keep it: there may be no room. */
  | { readonly kind: 'not-kept' };

/** What came of a file with photos. */
interface TakenIn {
  readonly added: number;
  readonly here: number;
  /** No photos, or not what their names promise. */
  readonly refused: number;
}

/** How far photos of a copy have come in. */
export interface ComingIn {
  readonly added: number;
  /** Cannot be opened, or found no room on the tablet. */
  readonly refused: number;
  /** Still to come. */
  readonly left: number;
}

/** The photos of a shop. */
export interface Photos {
  /** Makes a photo of a file and keeps it; the log is then still to be told. */
  readonly keep: (file: Blob) => Promise<Kept>;
  /** Takes in photos of a zip file that a tablet saved; undefined when it is no such file. */
  readonly takeIn: (file: Blob) => Promise<TakenIn | undefined>;
  /** Adds the photos of a copy, one at a time, and tells how far it has come; rejects when those that are here cannot be noted. */
  readonly addFrom: (
    files: readonly Blob[],
    found: Pick<PhotosFound, 'fresh' | 'here'>,
    tell: (coming: ComingIn) => void,
  ) => Promise<void>;
  /** Photos cut into files; a full one stays as it is. */
  readonly volumes: (photos: PhotoNotes) => readonly Volume[];
  /** The zip file of these photos; those that are gone meanwhile are left out. */
  readonly zipped: (photos: PhotoNotes) => Promise<Blob>;
  /** The zip file of a table and of photos under these names; undefined when one is not on this tablet. */
  readonly listing: (
    table: ListingFiles['table'],
    photos: readonly { readonly name: string; readonly photo: PhotoHash }[],
  ) => Promise<Blob | undefined>;
  /** The JPEG; undefined when it is not on this tablet, or was let go. */
  readonly large: (photo: PhotoHash) => Promise<Blob | undefined>;
  readonly small: (photo: PhotoHash) => Promise<Blob | undefined>;
  readonly letGo: (photos: Iterable<PhotoHash>) => Promise<void>;
  readonly notes: () => Promise<PhotoNotes>;
  /** Notes that these are in a file that a person has saved. */
  readonly wentOut: (photos: Iterable<PhotoHash>) => Promise<void>;
}

type PhotoWorker = Pick<Worker, 'postMessage' | 'addEventListener' | 'terminate'>;

export interface PhotosParts {
  readonly store: PhotoStore;
  readonly start: () => PhotoWorker;
  readonly now: () => number;
}

/** More than any file with photos has that a tablet saved. */
const mostZipBytes = 100_000_000;

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
  let worker: ((task: Task) => Promise<Made>) | undefined;
  const ask = (task: Task) => {
    worker ??= asking(start(), () => {
      worker = undefined;
    });
    return worker(task);
  };
  const takeInOne = async (photo: Pick<HeldPhoto, 'hash' | 'bytes'>) => {
    const made = await ask({ kind: 'take-in', ...photo });
    if (made.kind === 'made') await store.keep(made.photo, now());
    return made.kind === 'made';
  };
  const addOne = async (file: Blob | undefined, photo: Parameters<typeof photoIn>[1]) => {
    const bytes = file && (await photoIn(file, photo));
    return bytes !== undefined && (await takeInOne({ hash: photo.hash, bytes }));
  };
  const asJpeg = (bytes: Uint8Array<ArrayBuffer> | undefined) =>
    bytes && new Blob([bytes], { type: 'image/jpeg' });
  return {
    async keep(file) {
      const made = await ask({ kind: 'make', file });
      if (made.kind === 'refused') return made;
      try {
        await store.keep(made.photo, now());
      } catch {
        return { kind: 'not-kept' };
      }
      return { kind: 'kept', photo: made.photo.facts };
    },
    async takeIn(file) {
      const found =
        file.size > mostZipBytes ? undefined : photosInZip(new Uint8Array(await file.arrayBuffer()));
      if (!found) return undefined;
      const held = new Set((await store.notes()).map(({ hash }) => hash));
      const counts = { added: 0, here: 0, refused: found.others };
      const fromFile: PhotoHash[] = [];
      for (const [hash, bytes] of found.photos) {
        fromFile.push(hash);
        if (held.has(hash)) counts.here += 1;
        else if (await takeInOne({ hash, bytes })) counts.added += 1;
        else counts.refused += 1;
      }
      await store.wentOut(fromFile, now());
      return counts;
    },
    async addFrom(files, { fresh, here }, tell) {
      const coming = { added: 0, refused: 0, left: fresh.length };
      const inFiles = [...here];
      for (const { file, ...photo } of fresh) {
        if (await addOne(files[file], photo).catch(() => false)) {
          coming.added += 1;
          inFiles.push(photo.hash);
        } else coming.refused += 1;
        coming.left -= 1;
        tell({ ...coming });
      }
      await store.wentOut(inFiles, now());
    },
    volumes: (photos) => volumesOf(photos),
    async zipped(photos) {
      const held: HeldPhoto[] = [];
      for (const { hash, kept } of photos) {
        const bytes = await store.bytes(hash);
        if (bytes) held.push({ hash, kept, bytes });
      }
      return new Blob([zipOfPhotos(held)], { type: 'application/zip' });
    },
    async listing(table, photos) {
      const read: ListingFiles['photos'][number][] = [];
      for (const { name, photo } of photos) {
        const bytes = await store.bytes(photo);
        if (!bytes) return undefined;
        read.push({ name, bytes });
      }
      return new Blob([zipOfListing({ table, photos: read, made: now() })], { type: 'application/zip' });
    },
    large: async (photo) => asJpeg(await store.bytes(photo)),
    small: async (photo) => asJpeg(await store.small(photo)),
    letGo: store.letGo,
    notes: store.notes,
    wentOut: (photos) => store.wentOut(photos, now()),
  };
}

type Made =
  | { readonly kind: 'made'; readonly photo: NewPhoto }
  | { readonly kind: 'refused'; readonly why: NoPhoto };
type WithoutId<Message> = Message extends unknown ? Omit<Message, 'id'> : never;
type Task = WithoutId<ToPhotoWorker>;

/** Asks the worker. When it breaks, as when a picture was too much for it, all that it was asked cannot be opened. */
function asking(worker: PhotoWorker, onBroken: () => void): (task: Task) => Promise<Made> {
  const waiting = new Map<number, (made: Made) => void>();
  let asked = 0;
  worker.addEventListener('message', ({ data: { id, ...made } }: MessageEvent<FromPhotoWorker>) => {
    waiting.get(id)?.(made);
    waiting.delete(id);
  });
  worker.addEventListener('error', () => {
    worker.terminate();
    onBroken();
    for (const settle of waiting.values()) settle({ kind: 'refused', why: 'cannot-be-opened' });
    waiting.clear();
  });
  return (task) =>
    new Promise((resolve) => {
      asked += 1;
      waiting.set(asked, resolve);
      const message: ToPhotoWorker = { ...task, id: asked };
      worker.postMessage(message);
    });
}
