import { openDB } from 'idb';
import type { DatabaseNews } from './shop-database.ts';
import type { ShopDatabase, ShopSchema } from './shop-schema.ts';

/**
 * Opens the database `name` as it is, to be read alone: whatever its version, it is not brought to another one, stands in
 * the way of none, and is not made. Rejects when there is none.
 */
export function openToRead(name: string, news: Omit<DatabaseNews, 'blocked'>): Promise<ShopDatabase> {
  // Without a version the database opens as it is, and no change of layout can begin.
  return openDB<ShopSchema>(name, undefined, {
    upgrade(_db, _from, _to, tx) {
      // There is none: asking for it must not leave an empty one behind.
      tx.done.catch(() => undefined);
      tx.abort();
    },
    blocking(_current, _wanted, event) {
      (event.target as IDBDatabase).close();
      news.outdated();
    },
    terminated: news.lost,
  });
}

/** What can be read in the store of a name. It is open no longer than it is read: another version of the app may be waiting for it. */
export async function readInStore<Result>(
  name: string,
  read: (db: ShopDatabase) => Promise<Result>,
): Promise<Result> {
  const nobody = () => undefined;
  const db = await openToRead(name, { outdated: nobody, lost: nobody });
  try {
    return await read(db);
  } finally {
    db.close();
  }
}
