import type { EventRecord } from './event-record.ts';
import { lastOf } from './station-keys.ts';

/** The young records, in a transaction of whatever kind. */
interface YoungRecords {
  readonly openKeyCursor: (from?: IDBKeyRange) => Promise<{ readonly key: [string, number] } | null>;
  readonly getAll: (range: IDBKeyRange) => Promise<readonly EventRecord[]>;
}

/** The young records of each station from a number on. */
export async function youngFrom(
  events: YoungRecords,
  from: (station: string) => number,
): Promise<readonly EventRecord[]> {
  const found: EventRecord[] = [];
  let first = await events.openKeyCursor();
  while (first) {
    const [station] = first.key;
    if (from(station) < Number.POSITIVE_INFINITY) {
      const range = IDBKeyRange.bound([station, from(station)], lastOf(station));
      // One by one: a call with as many arguments as a station has events would be one too many.
      for (const record of await events.getAll(range)) found.push(record);
    }
    first = await events.openKeyCursor(IDBKeyRange.lowerBound(lastOf(station), true));
  }
  return found;
}
