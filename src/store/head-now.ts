import * as v from 'valibot';
import type { EventRecord } from './event-record.ts';
import { type Head, headAfterOwn, headSchema } from './head.ts';
import { lastOf } from './station-keys.ts';

/** A transaction over the head and the young records, whatever else it may reach. */
interface WithHead {
  readonly objectStore: {
    (name: 'heads'): { readonly get: (key: 'head') => Promise<unknown> };
    (name: 'events'): { readonly getAll: (range: IDBKeyRange) => Promise<readonly EventRecord[]> };
  };
}

/** The head as it is by now: a tap adds its events and nothing else, and the head that is kept is brought up to them. */
export async function headNow(tx: WithHead): Promise<Head> {
  const head: Head = v.parse(headSchema, await tx.objectStore('heads').get('head'));
  const range = IDBKeyRange.bound([head.station, head.seq + 1], lastOf(head.station));
  return headAfterOwn(head, await tx.objectStore('events').getAll(range));
}
