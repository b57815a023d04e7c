/** What a session is seldom asked for; its code comes when it is. */
import type { ShopEvent } from '../domain/log/event.ts';
import type { LogEvent } from '../domain/log/read-event.ts';
import { compareStamps } from '../domain/log/stamp.ts';
import { countIn } from '../domain/packed/parcel.ts';
import type { Subject } from '../store/event-record.ts';
import type { Incoming, LogStore } from '../store/log-store.ts';

/** What came of a restore: entries added (or put in the place of damaged ones), there already, or without a beginning. */
export interface Restored {
  readonly added: number;
  readonly here: number;
  readonly unplaced: number;
}

export async function historyOf(log: LogStore, subject: Subject): Promise<readonly ShopEvent[]> {
  const { events } = await log.about(subject);
  return events.toSorted(
    (a, b) =>
      compareStamps(a.stamp, b.stamp) ||
      (a.station === b.station ? a.seq - b.seq : a.station < b.station ? -1 : 1),
  );
}

export async function allEvents(log: LogStore): Promise<readonly LogEvent[]> {
  const { events, newer } = await log.since(new Map());
  return [...events, ...newer];
}

export async function exportLines(log: LogStore): Promise<readonly string[]> {
  const entries = await log.entries().catch(() => []);
  return entries.map((entry) => JSON.stringify(entry));
}

export async function mergeInto(log: LogStore, incoming: Incoming): Promise<Restored> {
  const { added, here, mended, unplaced } = await log.merge(incoming);
  return { added: countIn(added) + mended, here, unplaced };
}
