import * as v from 'valibot';
import { type StationId, stationId } from '../domain/log/ids.ts';
import { eventKey, hasSeen } from '../domain/log/version-vector.ts';
import { emptyParcel, entriesIn } from '../domain/packed/parcel.ts';
import { type EventRecord, entryOf, recordOf } from './event-record.ts';
import { type Head, headAfterMerge, newHead, numberAct, renewedHead } from './head.ts';
import type { LogStore, Snapshot } from './log-store.ts';
import { heldAs, placeEntries } from './placing.ts';
import { isSoundRecord, keptEntries, knownEntries, readRecords } from './reading.ts';

/** A log that lives as long as the page: for tests, benches and the demo's making. It promises no durability. */
export function memoryLog(station: StationId): LogStore {
  const records = new Map<string, EventRecord>();
  let head: Head = newHead(station);
  let snapshot: Omit<Snapshot, 'pages'> | undefined;
  const pages = new Map<string, unknown>();
  let renewals = 0;
  const newStation = () => {
    renewals += 1;
    return v.parse(stationId, `${station}-${renewals}`);
  };
  const all = () => [...records.values()];
  const sound = () => all().filter(isSoundRecord).map(entryOf);
  const keep = (record: EventRecord) => records.set(eventKey(record), record);
  return {
    station: () => head.station,
    async append(act) {
      const earlier = all().filter((record) => record.act === act.act);
      if (earlier.length > 0) return knownEntries(earlier);
      const numbered = numberAct(head, act);
      head = numbered.head;
      for (const entry of numbered.entries) keep(recordOf(entry, { act: act.act }));
      return numbered.entries;
    },
    async merge({ now, ...incoming }) {
      const { added, mended, here, unplaced } = await placeEntries(
        entriesIn({ ...emptyParcel, ...incoming }),
        {
          async held(id) {
            const record = records.get(eventKey(id));
            return record && heldAs(record);
          },
          branches: async () => all().flatMap(({ branch }) => branch ?? []),
        },
      );
      const renewed = added.some(({ event }) => event.station === head.station);
      const after = headAfterMerge(head, { entries: added, runs: [], now });
      head = renewed ? renewedHead(after, newStation()) : after;
      for (const record of [...added, ...mended.map(({ by }) => by)]) keep(record);
      return {
        added: { runs: [], entries: added.map(entryOf) },
        here,
        unplaced,
        mended: mended.length,
        renewed,
      };
    },
    since: async (seen) => readRecords(all().filter((record) => !hasSeen(seen, record))),
    about: async (subject) => readRecords(all().filter(({ trays }) => trays.includes(subject))),
    latestOwn: async (count) =>
      readRecords(
        all()
          .filter((record) => record.station === head.station)
          .slice(-count),
      ),
    holding: async () => ({ written: head.holding, records: records.size }),
    entries: async () => sound(),
    parcel: async () => ({ runs: [], entries: sound() }),
    latest: async (seen) => ({
      young: keptEntries(all().filter(({ station: of, seq }) => seq > (seen.get(of) ?? 0))),
      sealed: new Map(),
    }),
    loadSnapshot: async () => snapshot && structuredClone({ ...snapshot, pages: pages.size }),
    async loadPages(edition, take) {
      if (snapshot?.edition !== edition) return false;
      for (const page of pages.values()) take(structuredClone(page));
      return true;
    },
    async saveSnapshot({ over, make }) {
      if (over !== null && snapshot?.edition !== over) return undefined;
      if (over === null) pages.clear();
      const next = make();
      for (const [name, page] of next.pages) pages.set(name, structuredClone(page));
      const edition = (snapshot?.edition ?? 0) + 1;
      snapshot = { format: next.format, shop: structuredClone(next.shop), edition };
      return edition;
    },
    freshen: async () => undefined,
    revive: () => undefined,
    close: () => undefined,
  };
}
