import { deleteDB } from 'idb';
import { photoDatabaseOf } from './photos/photo-database-name.ts';

/** Removes the log of this name whole, and its photos: only ever the demo shop's. */
export async function removeShop(name: string): Promise<void> {
  await deleteDB(photoDatabaseOf(name));
  await deleteDB(name);
}
