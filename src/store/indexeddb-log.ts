import * as v from 'valibot';
import { type StationId, stationId } from '../domain/log/ids.ts';
import type { VersionVector } from '../domain/log/version-vector.ts';
import { earlierRun, type Head, headAfterMerge, headSchema, newHead, numberAct } from './head.ts';
import type { Act, LogEntry, LogStore, Reading } from './log-store.ts';
import { readAll, traysOf } from './reading.ts';
import { type DatabaseNews, openShopDatabase, type ShopDatabase } from './shop-database.ts';

export interface IndexedDbLogOptions {
  readonly name: string;
  /** Names the station when the store is new. */
  readonly newStation: () => string;
  readonly news: DatabaseNews;
}

/** How often a lost connection is opened anew before a failure is passed on. */
const mostTries = 3;

/** The log in IndexedDB. Opening reads the head; a failure to read it rejects and is never an empty shop. */
export async function openIndexedDbLog({ name, newStation, news }: IndexedDbLogOptions): Promise<LogStore> {
  let open: Promise<ShopDatabase> | undefined;
  const database = () => {
    open ??= openShopDatabase(name, { ...news, lost: () => forget(news.lost) }).catch((error: unknown) => {
      open = undefined;
      throw error;
    });
    return open;
  };
  const forget = (then: () => void) => {
    open = undefined;
    then();
  };
  /** Safari drops connections of hidden windows: work is done again on a new one, under the same act. */
  const withDatabase = async <Result>(work: (db: ShopDatabase) => Promise<Result>): Promise<Result> => {
    for (let tries = 1; ; tries += 1) {
      try {
        return await work(await database());
      } catch (error) {
        if (tries === mostTries || !isConnectionLoss(error)) throw error;
        open = undefined;
      }
    }
  };
  const station = await withDatabase((db) => ensureStation(db, newStation));
  return {
    station,
    append: (act) => withDatabase((db) => append(db, act)),
    merge: (incoming) => withDatabase((db) => merge(db, incoming)),
    since: (seen) => withDatabase((db) => since(db, seen)),
    ofTray: (tray) =>
      withDatabase(async (db) => readRecords(await db.getAllFromIndex('events', 'byTray', tray))),
    latestOwn: (count) => withDatabase((db) => latestOwn(db, { station, count })),
    loadSnapshot: () => withDatabase((db) => db.get('snapshots', 'shop')),
    saveSnapshot: (snapshot) =>
      withDatabase(async (db) => {
        const tx = db.transaction('snapshots', 'readwrite', { durability: 'relaxed' });
        await Promise.all([tx.store.put(snapshot, 'shop'), tx.done]);
      }),
    close: () => {
      open?.then(
        (db) => db.close(),
        () => undefined,
      );
      open = undefined;
    },
  };
}

function isConnectionLoss(error: unknown): boolean {
  return (
    error instanceof DOMException && (error.name === 'InvalidStateError' || error.name === 'UnknownError')
  );
}

const strict = { durability: 'strict' } as const;

async function ensureStation(db: ShopDatabase, newStation: () => string): Promise<StationId> {
  const tx = db.transaction('heads', 'readwrite', strict);
  const held = await tx.store.get('head');
  const head = held === undefined ? newHead(v.parse(stationId, newStation())) : v.parse(headSchema, held);
  if (held === undefined) await tx.store.put(head, 'head');
  await tx.done;
  return head.station;
}

function recordOf(event: LogEntry) {
  return { station: event.station, seq: event.seq, trays: traysOf(event), event };
}

async function append(db: ShopDatabase, act: Act): ReturnType<LogStore['append']> {
  const tx = db.transaction(['events', 'heads'], 'readwrite', strict);
  const [events, heads] = [tx.objectStore('events'), tx.objectStore('heads')];
  const head: Head = v.parse(headSchema, await heads.get('head'));
  const run = earlierRun(head, act);
  if (run) {
    const records = await events.getAll(IDBKeyRange.bound([head.station, run.from], [head.station, run.to]));
    return readRecords(records).events;
  }
  const numbered = numberAct(head, act);
  const writes = numbered.events.map((event) => events.add(recordOf(event)));
  await Promise.all([...writes, heads.put(numbered.head, 'head'), tx.done]);
  return numbered.events;
}

type Incoming = Parameters<LogStore['merge']>[0];

async function merge(db: ShopDatabase, { entries, now }: Incoming): ReturnType<LogStore['merge']> {
  const tx = db.transaction(['events', 'heads'], 'readwrite', strict);
  const [events, heads] = [tx.objectStore('events'), tx.objectStore('heads')];
  const head: Head = v.parse(headSchema, await heads.get('head'));
  const held = await Promise.all(entries.map(({ station, seq }) => events.getKey([station, seq])));
  const added = entries.filter((_, index) => held[index] === undefined);
  const after = headAfterMerge(head, { entries: added, now });
  await Promise.all([
    ...added.map((event) => events.put(recordOf(event))),
    heads.put(after, 'head'),
    tx.done,
  ]);
  return added;
}

/** The greatest key of a station: an array sorts after every number. */
const lastOf = (station: string) => [station, []] as unknown as [string, number];

async function since(db: ShopDatabase, seen: VersionVector): Promise<Reading> {
  const tx = db.transaction('events', 'readonly');
  const found: { readonly event: unknown }[] = [];
  let first = await tx.store.openKeyCursor();
  while (first) {
    const [station] = first.key;
    // A store of our own wrote the key from a checked event.
    const upTo = seen.get(station as StationId)?.upTo ?? 0;
    for (const record of await tx.store.getAll(IDBKeyRange.bound([station, upTo + 1], lastOf(station)))) {
      found.push(record);
    }
    first = await tx.store.openKeyCursor(IDBKeyRange.lowerBound(lastOf(station), true));
  }
  return readRecords(found);
}

async function latestOwn(
  db: ShopDatabase,
  { station, count }: { station: string; count: number },
): Promise<Reading> {
  const head = v.parse(headSchema, await db.get('heads', 'head'));
  const range = IDBKeyRange.bound([station, Math.max(1, head.seq - count + 1)], lastOf(station));
  return readRecords(await db.getAll('events', range));
}

function readRecords(records: readonly { readonly event: unknown }[]): Reading {
  return readAll(records.map(({ event }) => event));
}
