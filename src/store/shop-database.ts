import { type DBSchema, deleteDB, type IDBPDatabase, openDB } from 'idb';
import type { LogEntry, Snapshot } from './log-store.ts';

/** One event with the trays whose history it belongs to. */
interface EventRecord {
  readonly station: string;
  readonly seq: number;
  readonly trays: readonly string[];
  readonly event: LogEntry;
}

/** The layout of the database; additive changes only, no store is ever dropped. */
interface ShopSchema extends DBSchema {
  events: { key: [string, number]; value: EventRecord; indexes: { byTray: string } };
  /** The own station's head, under 'head'. */
  heads: { key: string; value: unknown };
  /** The projections as of some moment, under 'shop'. A cache: it may be missing at any time. */
  snapshots: { key: string; value: Snapshot };
}

export type ShopDatabase = IDBPDatabase<ShopSchema>;

export const databaseVersion = 1;

/** Each entry brings a database from the version of its index to the next. Written once, never edited again. */
const migrations: readonly ((db: ShopDatabase) => void)[] = [
  (db) => {
    const events = db.createObjectStore('events', { keyPath: ['station', 'seq'] });
    events.createIndex('byTray', 'trays', { multiEntry: true });
    db.createObjectStore('heads');
    db.createObjectStore('snapshots');
  },
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
    upgrade(db, from) {
      for (const migrate of migrations.slice(from)) migrate(db);
    },
    blocked: news.blocked,
    blocking(_current, _wanted, event) {
      (event.target as IDBDatabase).close();
      news.outdated();
    },
    terminated: news.lost,
  });
}

/** Removes a database whole: only ever the demo shop's. */
export function removeDatabase(name: string): Promise<void> {
  return deleteDB(name);
}
