import * as v from 'valibot';
import { type StationId, stationId } from '../domain/log/ids.ts';
import { actWriter } from './act-writer.ts';
import { type Head, newHead } from './head.ts';
import { headNow } from './head-now.ts';
import { healingConnection } from './healing-connection.ts';
import { readsOf } from './indexeddb-reads.ts';
import type { LogStore } from './log-store.ts';
import { type DatabaseNews, openShopDatabase } from './shop-database.ts';
import type { ShopDatabase } from './shop-schema.ts';

export interface IndexedDbLogOptions {
  readonly name: string;
  /** Names the station when the store is new, and when it must take a new one. */
  readonly newStation: () => string;
  readonly news: DatabaseNews;
}

/** The log in IndexedDB. Opening reads the head; a failure to read it rejects and is never an empty shop. */
export async function openIndexedDbLog({ name, newStation, news }: IndexedDbLogOptions): Promise<LogStore> {
  const { withDatabase, leave } = healingConnection((lost) =>
    openShopDatabase(name, {
      ...news,
      lost: () => {
        lost();
        news.lost();
      },
    }),
  );
  const stationName = () => v.parse(stationId, newStation());
  const opened = await withDatabase((db) => ensureHead(db, stationName));
  const writer = actWriter(opened);
  return {
    station: writer.station,
    append: (act) => {
      const write = writer.begin(act);
      return withDatabase(write);
    },
    merge: (incoming) =>
      withDatabase(async (db) => {
        // Fetched before the transaction begins: one that has nothing to do commits.
        const { mergeInto } = await import('./indexeddb-merge.ts');
        const { head, ...merged } = await mergeInto(db, { ...incoming, stationName });
        writer.goOnBehind(head);
        return merged;
      }),
    ...readsOf(withDatabase),
    saveSnapshot: (snapshot) =>
      withDatabase(async (db) => (await import('./snapshot-pages.ts')).saveSnapshot(db, snapshot)),
    freshen: () => withDatabase(freshen),
    revive: leave,
    close: leave,
  };
}

const strict = { durability: 'strict' } as const;

async function ensureHead(db: ShopDatabase, stationName: () => StationId): Promise<Head> {
  const tx = db.transaction(['heads', 'events'], 'readwrite', strict);
  const heads = tx.objectStore('heads');
  if ((await heads.getKey('head')) === undefined) await heads.put(newHead(stationName()), 'head');
  const head = await headNow(tx);
  await tx.done;
  return head;
}

/**
 * Writes some 6 MB of small records and takes them away again. Measured in Chromium: after a write that met a full disk
 * its log is torn, what follows is lost at the next start, and only more than 4 MB of small records begin a new one.
 */
async function freshen(db: ShopDatabase): Promise<void> {
  for (let round = 0; round < 6; round += 1) {
    const tx = db.transaction('filler', 'readwrite', strict);
    for (let record = 0; record < 256; record += 1) void tx.store.add(new Uint8Array(4096));
    await tx.done;
  }
  const tx = db.transaction('filler', 'readwrite', strict);
  await Promise.all([tx.store.clear(), tx.done]);
}
