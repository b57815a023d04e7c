import * as v from 'valibot';
import type { Entry } from '../domain/log/chain.ts';
import { holdingOf } from '../domain/log/holding.ts';
import type { StationId } from '../domain/log/ids.ts';
import { eventKey } from '../domain/log/version-vector.ts';
import { emptyParcel, entriesIn } from '../domain/packed/parcel.ts';
import { type EventRecord, entryOf } from './event-record.ts';
import { type Head, headAfterMerge, headSchema, renewedHead } from './head.ts';
import type { Incoming } from './log-store.ts';
import { placeEntries } from './placing.ts';
import type { ShopDatabase } from './shop-schema.ts';

type Merge = Incoming & { readonly stationName: () => StationId };

/** Adds entries to a store in one strict transaction, each at its place. */
export async function mergeInto(db: ShopDatabase, { now, stationName, ...incoming }: Merge) {
  const entries = entriesIn({ ...emptyParcel, ...incoming });
  const strict = { durability: 'strict' } as const;
  const tx = db.transaction(['events', 'heads', 'aside'], 'readwrite', strict);
  const [events, heads, aside] = [tx.objectStore('events'), tx.objectStore('heads'), tx.objectStore('aside')];
  const before: Head = v.parse(headSchema, await heads.get('head'));
  const records = await events.count();
  const known = new Map<string, EventRecord>();
  for (const { station, first, last } of rangesOf(entries)) {
    const range = IDBKeyRange.bound([station, first], [station, last]);
    for (const record of await events.getAll(range)) known.set(eventKey(record), record);
  }
  const placed = await placeEntries(
    entries,
    async ({ station, seq }) => known.get(eventKey({ station, seq })) ?? events.get([station, seq]),
  );
  // Where records have gone missing, what was written down no longer says what is there.
  const holding =
    records === before.holding.entries
      ? before.holding
      : holdingOf((await events.getAll()).map(({ link }) => link));
  const after = headAfterMerge({ ...before, holding }, { entries: placed.added, now });
  const renewed = placed.added.some(({ event }) => event.station === before.station);
  const head = renewed ? renewedHead(after, stationName()) : after;
  await Promise.all([
    ...placed.mended.map(({ damaged }) => aside.add(damaged)),
    ...placed.mended.map(({ by }) => events.put(by)),
    ...placed.added.map((record) => events.add(record)),
    heads.put(head, 'head'),
    tx.done,
  ]);
  const { added, here, unplaced, mended } = placed;
  return {
    head,
    added: { runs: [], entries: added.map(entryOf) },
    here,
    unplaced,
    mended: mended.length,
    renewed,
  };
}

/** Per station the first and last number whose records say where the entries go, the one before them included. */
function rangesOf(entries: readonly Entry[]) {
  const ranges = new Map<string, { station: string; first: number; last: number }>();
  for (const { event } of entries) {
    const { station, seq } = event;
    const { first, last } = ranges.get(station) ?? { first: seq - 1, last: seq };
    ranges.set(station, { station, first: Math.min(first, seq - 1), last: Math.max(last, seq) });
  }
  return ranges.values();
}
