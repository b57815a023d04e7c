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
