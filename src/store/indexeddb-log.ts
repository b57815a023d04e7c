import * as v from 'valibot';
import { type StationId, stationId } from '../domain/log/ids.ts';
import { recordOf } from './event-record.ts';
import { type Head, headSchema, newHead, numberAct } from './head.ts';
import { healingConnection } from './healing-connection.ts';
import { readsOf } from './indexeddb-reads.ts';
import type { Act, LogStore } from './log-store.ts';
import { knownEntries } from './reading.ts';
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
  let { station } = await withDatabase((db) => ensureHead(db, stationName));
  return {
    station: () => station,
    append: (act) =>
      withDatabase(async (db) => {
        const { head, entries } = await append(db, act);
        station = head.station;
        return entries;
      }),
    merge: (incoming) =>
      withDatabase(async (db) => {
        // Fetched before the transaction begins: one that has nothing to do commits.
        const { mergeInto } = await import('./indexeddb-merge.ts');
        const { head, ...merged } = await mergeInto(db, { ...incoming, stationName });
        station = head.station;
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
  const tx = db.transaction('heads', 'readwrite', strict);
  const held = await tx.store.get('head');
  const head = held === undefined ? newHead(stationName()) : v.parse(headSchema, held);
  if (held === undefined) await tx.store.put(head, 'head');
  await tx.done;
  return head;
}

async function append(db: ShopDatabase, act: Act) {
  // Fetched before the transaction begins: one that has nothing to do commits.
  const lookup = act.tried ? await import('./sealed-act.ts') : undefined;
  const stores = lookup ? (['events', 'heads', 'runs', 'packs'] as const) : (['events', 'heads'] as const);
  const tx = db.transaction([...stores], 'readwrite', strict);
  const [events, heads] = [tx.objectStore('events'), tx.objectStore('heads')];
  const [held, young] = await Promise.all([heads.get('head'), events.index('byAct').getAll(act.act)]);
  const head: Head = v.parse(headSchema, held);
  const earlier = young.length > 0 ? knownEntries(young) : ((await lookup?.sealedAct(tx, act)) ?? []);
  if (earlier.length > 0) return { head, entries: earlier };
  const numbered = numberAct(head, act);
  const writes = numbered.entries.map((entry) => events.add(recordOf(entry, { act: act.act })));
  const written = Promise.all([...writes, heads.put(numbered.head, 'head'), tx.done]);
  // Nothing more is coming: without a word the browser waits to hear.
  tx.commit();
  await written;
  return numbered;
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
