import { openDB } from 'idb';
import * as v from 'valibot';
import { stationId } from '../../src/domain/log/ids.ts';
import { openIndexedDbLog } from '../../src/store/indexeddb-log.ts';
import type { LogStore } from '../../src/store/log-store.ts';
import { memoryLog } from '../../src/store/memory-log.ts';

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

/** Every kind of log that must keep the same contract. */
export const logMakers: readonly (readonly [name: string, make: () => Promise<LogStore>])[] = [
  ['in memory', async () => memoryLog(v.parse(stationId, 'station-a'))],
  ['in IndexedDB', () => openTestLog()],
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
