import { openDB } from 'idb';
import * as v from 'valibot';
import { stationId } from '../../src/domain/log/ids.ts';
import { openIndexedDbLog } from '../../src/store/indexeddb-log.ts';
import type { LogStore } from '../../src/store/log-store.ts';
import { memoryLog } from '../../src/store/memory-log.ts';
import { sealOldRecords } from '../../src/store/sealing.ts';
import { openShopDatabase } from '../../src/store/shop-database.ts';

let names = 0;

/** A database name that no other test has. */
export function freshName(): string {
  names += 1;
  return `test shop ${names}`;
}

export const quietNews = { blocked: () => {}, outdated: () => {}, lost: () => {} };

export function openTestLog(name = freshName(), station = 'station-a'): Promise<LogStore> {
  let made = 0;
  const newStation = () => {
    made += 1;
    return made === 1 ? station : `${station}-${made}`;
  };
  return openIndexedDbLog({ name, newStation, news: quietNews });
}

/** A log of which everything is sealed as soon as it is written. */
async function sealedLog(): Promise<LogStore> {
  const name = freshName();
  const log = await openTestLog(name);
  const sealed = async <Result>(work: Promise<Result>): Promise<Result> => {
    const result = await work;
    await sealAll(name);
    return result;
  };
  return {
    ...log,
    append: (act) => sealed(log.append({ ...act, tried: true })),
    merge: (incoming) => sealed(log.merge(incoming)),
  };
}

/** Seals the old records of the log `name`, and by default all that can be sealed. */
export async function sealAll(name: string, plan = { young: 0, together: 1 }): Promise<void> {
  const db = await openShopDatabase(name, quietNews);
  await sealOldRecords(db, plan);
  db.close();
}

/** Every kind of log that must keep the same contract. */
export const logMakers: readonly (readonly [name: string, make: () => Promise<LogStore>])[] = [
  ['in memory', async () => memoryLog(v.parse(stationId, 'station-a'))],
  ['in IndexedDB', () => openTestLog()],
  ['in IndexedDB, all of it sealed', sealedLog],
];

/** Changes a record behind the store's back, as a fault of the disk may. */
export async function spoilRecord(
  name: string,
  key: readonly [station: string, seq: number],
  spoil: (record: Readonly<Record<string, unknown>>) => unknown,
): Promise<void> {
  const db = await openDB(name);
  await db.put('events', spoil(await db.get('events', [...key])));
  db.close();
}
