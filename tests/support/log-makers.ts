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
  return openIndexedDbLog({ name, newStation: () => station, news: quietNews });
}

/** Every kind of log that must keep the same contract. */
export const logMakers: readonly (readonly [name: string, make: () => Promise<LogStore>])[] = [
  ['in memory', async () => memoryLog(v.parse(stationId, 'station-a'))],
  ['in IndexedDB', () => openTestLog()],
];
