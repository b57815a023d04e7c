import { openDB } from 'idb';
import { chainRecords } from './first-layout.ts';
import type { LayoutChange, ShopDatabase, ShopSchema } from './shop-schema.ts';

export const databaseVersion = 4;

/** Each entry brings a database from the version of its index to the next. Written once, never edited again. */
const migrations: readonly ((db: ShopDatabase, tx: LayoutChange) => unknown)[] = [
  (db) => {
    const events = db.createObjectStore('events', { keyPath: ['station', 'seq'] });
    events.createIndex('byTray', 'trays', { multiEntry: true });
    db.createObjectStore('heads');
    db.createObjectStore('snapshots');
  },
  (db, tx) => {
    tx.objectStore('events').createIndex('byAct', 'act');
    db.createObjectStore('aside', { autoIncrement: true });
    db.createObjectStore('filler', { autoIncrement: true });
    return chainRecords(tx);
  },
  (db) => {
    db.createObjectStore('runs', { keyPath: ['station', 'seq'] });
    db.createObjectStore('packs');
  },
  // Packs with plain texts: to versions that cannot open them a run would seem damaged.
  () => {},
];

/** What the app must hear of while a database is open or being opened. */
export interface DatabaseNews {
  /** Another window still holds an older version open. */
  readonly blocked: () => void;
  /** A newer version of the app wants the database: this window has closed it. */
  readonly outdated: () => void;
  /** The browser closed the database under us. */
  readonly lost: () => void;
}

/**
 * Opens the database `name`, brought up to this version. Rejects with a VersionError when a newer version of
 * the app has been here; nothing is touched then.
 */
export function openShopDatabase(name: string, news: DatabaseNews): Promise<ShopDatabase> {
  return openDB<ShopSchema>(name, databaseVersion, {
    async upgrade(db, from, _to, tx) {
      for (const migrate of migrations.slice(from)) await migrate(db, tx as unknown as LayoutChange);
    },
    blocked: news.blocked,
    blocking(_current, _wanted, event) {
      (event.target as IDBDatabase).close();
      news.outdated();
    },
    terminated: news.lost,
  });
}
