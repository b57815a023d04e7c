import * as v from 'valibot';
import type { VersionVector } from '../domain/log/version-vector.ts';
import { editionSchema } from './edition.ts';
import { headNow } from './head-now.ts';
import type { LogStore, Snapshot } from './log-store.ts';
import { readRecords } from './reading.ts';
import type { RunRecord } from './run-record.ts';
import type { ShopDatabase } from './shop-schema.ts';
import { lastOf } from './station-keys.ts';
import { youngFrom } from './young-records.ts';

type Reads = Pick<
  LogStore,
  'since' | 'about' | 'latestOwn' | 'holding' | 'entries' | 'parcel' | 'latest' | 'loadSnapshot' | 'loadPages'
>;
type WithDatabase = <Result>(work: (db: ShopDatabase) => Promise<Result>) => Promise<Result>;

/** What looks into sealed runs. The first screen seldom has to. */
const intoSealed = () => import('./reads-of-sealed.ts');

/** What is read from a log in IndexedDB. Nothing of it writes. */
export function readsOf(withDatabase: WithDatabase): Reads {
  const parcel = () => withDatabase(async (db) => (await intoSealed()).wholeParcel(db));
  return {
    since: (seen) => withDatabase((db) => since(db, seen)),
    about: (subject) => withDatabase(async (db) => (await intoSealed()).about(db, subject)),
    latestOwn: (count) => withDatabase((db) => latestOwn(db, count)),
    holding: () => withDatabase(holding),
    async entries() {
      const { entriesIn } = await import('../domain/packed/parcel.ts');
      return entriesIn(await parcel());
    },
    parcel,
    latest: (seen) => withDatabase(async (db) => (await intoSealed()).latest(db, seen)),
    loadSnapshot: () => withDatabase(loadSnapshot),
    loadPages: (edition, take) =>
      withDatabase(async (db) => (await import('./snapshot-pages.ts')).loadPages(db, { edition, take })),
  };
}

async function loadSnapshot(db: ShopDatabase): Promise<Snapshot | undefined> {
  const { store } = db.transaction('snapshots');
  const [about, front] = await Promise.all([store.get('edition'), store.get('shop')]);
  const read = v.safeParse(editionSchema, about);
  return read.success ? { ...read.output, shop: front } : undefined;
}

async function since(db: ShopDatabase, seen: VersionVector) {
  const unseen = (station: string) => (seen.get(station as RunRecord['station'])?.upTo ?? 0) + 1;
  const young = await youngFrom(db.transaction('events').store, unseen);
  // Asked afterwards: what was sealed meanwhile is then in a run.
  return (await isAnySealed(db, ({ station, last }) => last >= unseen(station)))
    ? (await intoSealed()).allFrom(db, unseen)
    : readRecords(young);
}

async function latestOwn(db: ShopDatabase, count: number) {
  const { station: own, seq } = await headNow(db.transaction(['heads', 'events']));
  const from = Math.max(1, seq - count + 1);
  const young = await db.getAll('events', IDBKeyRange.bound([own, from], lastOf(own)));
  return (await isAnySealed(db, ({ station, last }) => station === own && last >= from))
    ? (await intoSealed()).allFrom(db, (station) => (station === own ? from : Number.POSITIVE_INFINITY))
    : readRecords(young);
}

async function isAnySealed(db: ShopDatabase, isWanted: (record: RunRecord) => boolean): Promise<boolean> {
  return (await db.getAll('runs')).some(isWanted);
}

async function holding(db: ShopDatabase) {
  const tx = db.transaction(['events', 'runs', 'heads'], 'readonly');
  const [head, young, runs] = await Promise.all([
    headNow(tx),
    tx.objectStore('events').count(),
    tx.objectStore('runs').getAll(),
  ]);
  const records = runs.reduce((sum, { run }) => sum + run.entries, young);
  return { written: head.holding, records };
}
