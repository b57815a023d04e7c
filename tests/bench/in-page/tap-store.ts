/** Keeps one event after the other, in the app's own store and in others, each with strict durability. */
import { Dexie } from 'dexie';
import PouchDB from 'pouchdb-browser';
import { createRxDatabase } from 'rxdb';
import { getRxStorageDexie } from 'rxdb/plugins/storage-dexie';
import { demoShop } from '../../../shared/demo/demo-shop.ts';
import { entryAfter, noLink } from '../../../src/domain/log/chain.ts';
import type { Draft, ShopEvent } from '../../../src/domain/log/event.ts';
import { recordOf } from '../../../src/store/event-record.ts';
import { openIndexedDbLog } from '../../../src/store/indexeddb-log.ts';

/** Keeps the event of number `count`; resolved when the store says that it is on disk. */
type Keep = (count: number) => Promise<unknown>;

const draft = passDraft();
/** The same event with the identity that others are to keep it under. */
const eventOf = (count: number) => ({
  station: 'station-a',
  seq: count,
  stamp: { wall: count, tick: 0 },
  ...draft,
});

/** A pass of the demo shop, without what the store adds to it. */
function passDraft(): Draft {
  const found = demoShop({ now: Date.UTC(2026, 2, 16, 12) }).findLast(({ kind }) => kind === 'passed');
  if (!found) throw new Error('The demo shop has no pass.');
  const { station: _station, seq: _seq, stamp: _stamp, ...rest } = found;
  return rest as Draft;
}

let strictTransactions = 0;
/** Counts them, and makes those of PouchDB strict, which has no option for it. */
function watchTransactions(): void {
  const { transaction } = IDBDatabase.prototype;
  IDBDatabase.prototype.transaction = function watched(stores, mode, options) {
    const durability = this.name.startsWith('_pouch_') ? 'strict' : options?.durability;
    if (mode === 'readwrite' && durability === 'strict') strictTransactions += 1;
    return transaction.call(this, stores, mode, { ...options, ...(durability && { durability }) });
  };
}

async function openOurs(): Promise<Keep> {
  const log = await openIndexedDbLog({
    name: 'ours',
    newStation: () => 'station-a',
    news: { blocked: () => {}, outdated: () => {}, lost: () => {} },
  });
  return (count) => log.append({ act: `act-${count}`, drafts: [draft], now: count });
}

/** What the browser needs at the least: one transaction, one record as ours, and a word that nothing more is coming. */
async function openRaw(): Promise<Keep> {
  const opening = indexedDB.open('raw');
  opening.onupgradeneeded = () => opening.result.createObjectStore('events', { keyPath: ['station', 'seq'] });
  const db = await new Promise<IDBDatabase>((resolve, reject) => {
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = () => reject(opening.error);
  });
  const record = recordOf(entryAfter(noLink, eventOf(0) as ShopEvent), { act: 'act-0' });
  return (count) =>
    new Promise((resolve, reject) => {
      const tx = db.transaction('events', 'readwrite', { durability: 'strict' });
      tx.oncomplete = resolve;
      tx.onabort = () => reject(tx.error);
      tx.objectStore('events').add({ ...record, seq: count });
      tx.commit();
    });
}

async function openDexie(): Promise<Keep> {
  const db = new Dexie('dexie', { chromeTransactionDurability: 'strict' });
  db.version(1).stores({ events: '[station+seq], of.tray' });
  await db.open();
  return (count) => db.table('events').add(eventOf(count));
}

async function openPouch(): Promise<Keep> {
  const db = new PouchDB('pouch', { revs_limit: 1 });
  return (count) => db.put({ _id: `station-a/${count}`, ...eventOf(count) });
}

/** On its free storage for browsers, which hands the option on to Dexie. */
async function openRx(): Promise<Keep> {
  const db = await createRxDatabase({
    name: 'rx',
    storage: getRxStorageDexie({ chromeTransactionDurability: 'strict' }),
    multiInstance: false,
  });
  const { events } = await db.addCollections({
    events: {
      schema: {
        version: 0,
        primaryKey: 'id',
        type: 'object',
        properties: { id: { type: 'string', maxLength: 60 }, event: { type: 'object' } },
      },
    },
  });
  return (count) => events.insert({ id: `station-a/${count}`, event: eventOf(count) });
}

const openers = { ours: openOurs, limit: openRaw, Dexie: openDexie, PouchDB: openPouch, RxDB: openRx };
export type Keeper = keyof typeof openers;

/** Fingers never tap faster; what a store does after it has answered then meets nobody else's tap. */
const betweenTaps = 25;
/** Each store writes so many before it is measured, as in the first hour of a day: the first ones load code and make files. */
const unmeasured = 50;

/** Milliseconds that each store needed for each of `taps` taps, which they took in turns. */
export async function tapInTurns({ taps }: { taps: number }): Promise<Readonly<Record<Keeper, number[]>>> {
  watchTransactions();
  const stores: [Keeper, Keep][] = [];
  for (const name of Object.keys(openers) as Keeper[]) stores.push([name, await openers[name]()]);
  const times: Record<Keeper, number[]> = { ours: [], limit: [], Dexie: [], PouchDB: [], RxDB: [] };
  for (let count = 1; count <= taps + unmeasured; count += 1) {
    for (let turn = 0; turn < stores.length; turn += 1) {
      // Every other tap backwards: nobody always comes after the same one.
      const index = (count + (count % 2 ? turn : stores.length - turn)) % stores.length;
      const [name, keep] = stores[index] ?? [];
      if (name === undefined || !keep) continue;
      const before = strictTransactions;
      const start = performance.now();
      await keep(count);
      const took = performance.now() - start;
      if (strictTransactions === before) throw new Error(`${name} did not write strictly`);
      if (count > unmeasured) times[name].push(took);
      await new Promise((resolve) => setTimeout(resolve, betweenTaps));
    }
  }
  return times;
}
