import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { PhotoFacts, PhotoHash } from '../../domain/log/photo-facts.ts';
import { photoDatabaseOf } from './photo-database-name.ts';

/** What is kept of a photo beside its bytes: so that counting does not read pictures. */
export interface PhotoNote extends PhotoFacts {
  /** When it came to this tablet, ms UTC. */
  readonly kept: number;
  /** When it went out in a file, or came in from one, ms UTC; left out where it is in none. */
  readonly out?: number;
}

/**
 * Photos have a database of their own: what is written of them shares no transaction, no connection and no change of layout
 * with the log, and a start reads nothing of it.
 */
interface PhotoSchema extends DBSchema {
  /** JPEGs as they are handed out. */
  photos: { key: PhotoHash; value: Uint8Array<ArrayBuffer> };
  /** Small ones, for galleries. */
  small: { key: PhotoHash; value: Uint8Array<ArrayBuffer> };
  notes: { key: PhotoHash; value: PhotoNote };
}

export type PhotoDatabase = IDBPDatabase<PhotoSchema>;

export function openPhotoDatabase(shop: string, lost: () => void): Promise<PhotoDatabase> {
  return openDB<PhotoSchema>(photoDatabaseOf(shop), 1, {
    upgrade(db) {
      db.createObjectStore('photos');
      db.createObjectStore('small');
      db.createObjectStore('notes', { keyPath: 'hash' });
    },
    blocking(_current, _wanted, event) {
      (event.target as IDBDatabase).close();
      lost();
    },
    terminated: lost,
  });
}
