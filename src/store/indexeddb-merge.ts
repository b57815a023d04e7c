import type { IDBPTransaction } from 'idb';
import type { Entry } from '../domain/log/chain.ts';
import { type Holding, holdingOf, joined, without } from '../domain/log/holding.ts';
import type { StationId } from '../domain/log/ids.ts';
import { type EventId, eventKey } from '../domain/log/version-vector.ts';
import { entriesIn } from '../domain/packed/parcel.ts';
import { entryOf } from './event-record.ts';
import { type Head, headAfterMerge, renewedHead } from './head.ts';
import { headNow } from './head-now.ts';
import type { Incoming, Merged } from './log-store.ts';
import { type LongRuns, longRuns } from './long-runs.ts';
import { type Pack, packOf } from './pack.ts';
import { type HeldEntry, heldAs, placeEntries } from './placing.ts';
import { placeRuns } from './placing-runs.ts';
import { type RunRecord, runRecordOf } from './run-record.ts';
import { sealedLookup } from './sealed-lookup.ts';
import { openSealed } from './sealed-reads.ts';
import type { ShopDatabase, ShopSchema } from './shop-schema.ts';
import { youngBranches } from './young-branches.ts';

type Merge = Incoming & { readonly stationName: () => StationId };
type Merging = IDBPTransaction<ShopSchema, ('events' | 'runs' | 'packs' | 'heads' | 'aside')[], 'readwrite'>;

/** Adds entries and runs to a store in one strict transaction, each at its place. */
export async function mergeInto(
  db: ShopDatabase,
  { now, stationName, runs = [], entries = [], packs = new Map() }: Merge,
): Promise<Merged & { readonly head: Head }> {
  const stores = ['events', 'runs', 'packs', 'heads', 'aside'] as const;
  const tx: Merging = db.transaction([...stores], 'readwrite', { durability: 'strict' });
  const before: Head = await headNow(tx);
  const records = await tx.objectStore('runs').getAll();
  const sealed = sealedLookup(records, async (record) =>
    openSealed({ record, pack: await packUnder(tx, record) }),
  );
  const youngAt = async ({ station, seq }: EventId) => {
    const record = await tx.objectStore('events').get([station, seq]);
    return record && heldAs(record);
  };

  const whole = await placeRuns(runs, {
    sealed,
    youngAt,
    youngIn: ({ station, first, last }) =>
      tx.objectStore('events').count(IDBKeyRange.bound([station, first], [station, last])),
  });
  const single = [...entriesIn({ runs: whole.loose, entries: [] }), ...entries];
  const young = await youngAround(tx, single);
  const placed = await placeEntries(single, {
    held: async (id) =>
      (await whole.held(id)) ?? young.get(eventKey(id)) ?? (await sealed.held(id)) ?? (await youngAt(id)),
    branches: async () => [
      ...records.flatMap(({ branch }) => branch ?? []),
      ...(await youngBranches(tx.objectStore('events'))),
    ],
  });

  // A damaged run goes as a whole once something takes the place of a part of it.
  const ofSpoilt = placed.mended.filter(({ damaged }) => !damaged).map(({ by }) => by);
  const spoilt = new Set(ofSpoilt.flatMap((record) => sealed.runWith(record) ?? []));
  const added = longRuns(placed.added);
  const putBack = longRuns(ofSpoilt);

  let holding = await heldNow(tx, { before: before.holding, records });
  for (const { run } of spoilt) holding = without(holding, run);
  const incoming = [...whole.whole.map((run) => ({ run, branch: undefined })), ...added.runs];
  const after = headAfterMerge(
    { ...before, holding },
    {
      runs: [...incoming, ...putBack.runs].map(({ run }) => run),
      entries: [...added.singles, ...putBack.singles].map(entryOf),
      now,
    },
  );
  const renewed =
    placed.added.some(({ event }) => event.station === before.station) ||
    whole.whole.some(({ station }) => station === before.station);
  const head = renewed ? renewedHead(after, stationName()) : after;

  const writes: Promise<unknown>[] = [];
  const events = tx.objectStore('events');
  for (const record of [...spoilt, ...whole.mended.map(({ damaged }) => damaged)])
    writes.push(...(await layAside(tx, record)));
  for (const { damaged, by } of placed.mended)
    if (damaged) writes.push(tx.objectStore('aside').add(damaged), events.put(by));
  for (const { by } of whole.mended) writes.push(...putRun(tx, { run: by, branch: undefined }));
  for (const each of [...incoming, ...putBack.runs])
    writes.push(...putRun(tx, { ...each, pack: packs.get(each.run.link) }));
  for (const record of [...added.singles, ...putBack.singles]) writes.push(events.put(record));
  await Promise.all([...writes, tx.objectStore('heads').put(head, 'head'), tx.done]);
  return {
    head,
    added: { runs: incoming.map(({ run }) => run), entries: added.singles.map(entryOf) },
    here: whole.here + placed.here,
    unplaced: placed.unplaced,
    mended: placed.mended.length + whole.mended.reduce((sum, { by }) => sum + by.entries, 0),
    renewed,
  };
}

const packUnder = (tx: Merging, { station, seq }: RunRecord) => tx.objectStore('packs').get([station, seq]);

async function layAside(tx: Merging, record: RunRecord): Promise<readonly Promise<unknown>[]> {
  const pack = await packUnder(tx, record);
  const key: [string, number] = [record.station, record.seq];
  return [
    tx.objectStore('aside').add({ record, pack }),
    tx.objectStore('runs').delete(key),
    tx.objectStore('packs').delete(key),
  ];
}

function putRun(
  tx: Merging,
  { run, branch, pack = packOf(run) }: LongRuns['runs'][number] & { readonly pack?: Pack | undefined },
): readonly Promise<unknown>[] {
  const record = runRecordOf(run, branch);
  return [
    tx.objectStore('runs').put(record),
    tx.objectStore('packs').put(pack, [record.station, record.seq]),
  ];
}

/** The young records among which entries go, read at once: one by one each would cost its own request. */
async function youngAround(tx: Merging, entries: readonly Entry[]): Promise<Map<string, HeldEntry>> {
  const young = new Map<string, HeldEntry>();
  for (const { station, first, last } of rangesOf(entries)) {
    const range = IDBKeyRange.bound([station, first], [station, last]);
    for (const record of await tx.objectStore('events').getAll(range))
      young.set(eventKey(record), heldAs(record));
  }
  return young;
}

/** Where records have gone missing, what was written down no longer says what is there: then it is added up anew. */
async function heldNow(
  tx: Merging,
  { before, records }: { before: Holding; records: readonly RunRecord[] },
): Promise<Holding> {
  const sealed = records.reduce((sum, { run }) => sum + run.entries, 0);
  if (sealed + (await tx.objectStore('events').count()) === before.entries) return before;
  const young = holdingOf((await tx.objectStore('events').getAll()).map(({ link }) => link));
  return records.reduce((sum, { run }) => joined(sum, run), young);
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
