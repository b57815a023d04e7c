import * as v from 'valibot';
import type { Entry } from '../domain/log/chain.ts';
import type { StationId } from '../domain/log/ids.ts';
import type { VersionVector } from '../domain/log/version-vector.ts';
import { type EventRecord, entryOf } from './event-record.ts';
import { headSchema } from './head.ts';
import type { LogStore, Reading } from './log-store.ts';
import { isSoundRecord, readRecords } from './reading.ts';
import type { ShopDatabase } from './shop-schema.ts';

type Reads = Pick<
  LogStore,
  'since' | 'ofTray' | 'latestOwn' | 'holding' | 'entries' | 'parcel' | 'loadSnapshot'
>;
type WithDatabase = <Result>(work: (db: ShopDatabase) => Promise<Result>) => Promise<Result>;

/** What is read from a log in IndexedDB. Nothing of it writes. */
export function readsOf(withDatabase: WithDatabase): Reads {
  return {
    since: (seen) => withDatabase((db) => since(db, seen)),
    ofTray: (tray) =>
      withDatabase(async (db) => readRecords(await db.getAllFromIndex('events', 'byTray', tray))),
    latestOwn: (count) => withDatabase((db) => latestOwn(db, count)),
    holding: () =>
      withDatabase(async (db) => {
        const tx = db.transaction(['events', 'heads'], 'readonly');
        const [head, records] = await Promise.all([
          tx.objectStore('heads').get('head'),
          tx.objectStore('events').count(),
        ]);
        return { written: v.parse(headSchema, head).holding, records };
      }),
    entries: () => withDatabase(soundEntries),
    parcel: () => withDatabase(async (db) => ({ runs: [], entries: await soundEntries(db) })),
    loadSnapshot: () => withDatabase((db) => db.get('snapshots', 'shop')),
  };
}

/** The greatest key of a station: an array sorts after every number. */
const lastOf = (station: string) => [station, []] as unknown as [string, number];

async function since(db: ShopDatabase, seen: VersionVector): Promise<Reading> {
  const tx = db.transaction('events', 'readonly');
  const found: EventRecord[] = [];
  let first = await tx.store.openKeyCursor();
  while (first) {
    const [station] = first.key;
    // A store of our own wrote the key from a checked event.
    const upTo = seen.get(station as StationId)?.upTo ?? 0;
    const range = IDBKeyRange.bound([station, upTo + 1], lastOf(station));
    // One by one: a call with as many arguments as a station has events would be one too many.
    for (const record of await tx.store.getAll(range)) found.push(record);
    first = await tx.store.openKeyCursor(IDBKeyRange.lowerBound(lastOf(station), true));
  }
  return readRecords(found);
}

async function latestOwn(db: ShopDatabase, count: number): Promise<Reading> {
  const { station, seq } = v.parse(headSchema, await db.get('heads', 'head'));
  const range = IDBKeyRange.bound([station, Math.max(1, seq - count + 1)], lastOf(station));
  return readRecords(await db.getAll('events', range));
}

/** Records read at a time: a tap comes in between two pieces. */
const piece = 1000;

async function soundEntries(db: ShopDatabase): Promise<readonly Entry[]> {
  const entries: Entry[] = [];
  let rest: IDBKeyRange | undefined;
  for (;;) {
    const records = await db.getAll('events', rest, piece);
    for (const record of records) if (isSoundRecord(record)) entries.push(entryOf(record));
    const last = records.at(-1);
    if (!last || records.length < piece) return entries;
    rest = IDBKeyRange.lowerBound([last.station, last.seq], true);
  }
}
