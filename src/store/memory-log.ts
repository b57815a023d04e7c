import type { StationId } from '../domain/log/ids.ts';
import { eventKey, hasSeen } from '../domain/log/version-vector.ts';
import { earlierRun, type Head, headAfterMerge, newHead, numberAct } from './head.ts';
import type { LogEntry, LogStore, Snapshot } from './log-store.ts';
import { readAll, traysOf } from './reading.ts';

/** A log that lives as long as the page: for tests, benches and the demo's making. It promises no durability. */
export function memoryLog(station: StationId): LogStore {
  const entries = new Map<string, LogEntry>();
  let head: Head = newHead(station);
  let snapshot: Snapshot | undefined;
  const own = () => [...entries.values()].filter((entry) => entry.station === station);
  return {
    station,
    async append(act) {
      const run = earlierRun(head, act);
      if (run) return readAll(own().filter(({ seq }) => seq >= run.from && seq <= run.to)).events;
      const numbered = numberAct(head, act);
      head = numbered.head;
      for (const event of numbered.events) entries.set(eventKey(event), event);
      return numbered.events;
    },
    async merge({ entries: incoming, now }) {
      const added = incoming.filter((entry) => !entries.has(eventKey(entry)));
      for (const entry of added) entries.set(eventKey(entry), entry);
      head = headAfterMerge(head, { entries: added, now });
      return added;
    },
    since: async (seen) => readAll([...entries.values()].filter((entry) => !hasSeen(seen, entry))),
    ofTray: async (tray) => readAll([...entries.values()].filter((entry) => traysOf(entry).includes(tray))),
    latestOwn: async (count) => readAll(own().slice(-count)),
    loadSnapshot: async () => snapshot,
    async saveSnapshot(next) {
      snapshot = structuredClone(next);
    },
    close: () => undefined,
  };
}
