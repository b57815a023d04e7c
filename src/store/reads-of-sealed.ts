import type { IDBPTransaction } from 'idb';
import type { Parcel } from '../domain/packed/parcel.ts';
import { type EventRecord, entryOf, type Subject } from './event-record.ts';
import type { Latest, Numbers, Reading } from './log-store.ts';
import { isSoundRecord, keptEntries, readRecords } from './reading.ts';
import type { RunRecord } from './run-record.ts';
import { openSealed, readAbout, readFrom, type SealedRun } from './sealed-reads.ts';
import type { ShopDatabase, ShopSchema } from './shop-schema.ts';
import { youngFrom } from './young-records.ts';

/** Young records and sealed runs are read in one transaction: between two, sealing could move entries past the reader. */
type WholeLog = IDBPTransaction<ShopSchema, ('events' | 'runs' | 'packs')[], 'readonly'>;

const wholeLog = (db: ShopDatabase): WholeLog => db.transaction(['events', 'runs', 'packs'], 'readonly');

async function sealedWhere(
  tx: WholeLog,
  isWanted: (record: RunRecord) => boolean,
): Promise<readonly SealedRun[]> {
  const records = (await tx.objectStore('runs').getAll()).filter(isWanted);
  const packs = tx.objectStore('packs');
  return Promise.all(
    records.map(async (record) => ({ record, pack: await packs.get([record.station, record.seq]) })),
  );
}

/** All events of each station from a number on. */
export async function allFrom(db: ShopDatabase, from: (station: string) => number): Promise<Reading> {
  const tx = wholeLog(db);
  const sealed = await sealedWhere(tx, ({ station, last }) => last >= from(station));
  const young = await youngFrom(tx.objectStore('events'), from);
  return together([...sealed.map((run) => readFrom(run, from(run.record.station))), readRecords(young)]);
}

/** What stands behind the highest numbers that were seen. */
export async function latest(db: ShopDatabase, seen: Numbers): Promise<Latest> {
  const unseen = (station: string) => (seen.get(station) ?? 0) + 1;
  const young = await youngFrom(db.transaction('events').store, unseen);
  // Asked afterwards: what was sealed meanwhile is then in a run.
  const runs = (await db.getAll('runs')).filter(({ station, last }) => last >= unseen(station));
  const sealed = new Map<string, number>();
  for (const { station, last } of runs) sealed.set(station, Math.max(last, sealed.get(station) ?? 0));
  return { young: keptEntries(young), sealed };
}

export async function about(db: ShopDatabase, subject: Subject): Promise<Reading> {
  const tx = wholeLog(db);
  const sealed = await sealedWhere(tx, ({ trays }) => trays.includes(subject));
  const records = await tx.objectStore('events').index('byTray').getAll(subject);
  return together([...sealed.map((run) => readAbout(run, subject)), readRecords(records)]);
}

/** A log that changes its runs so often while it is read is broken. */
const mostReadings = 5;

/** The whole log. */
export async function wholeParcel(db: ShopDatabase): Promise<Parcel> {
  const { sealed, records } = await wholeLogIn(db, openSealed);
  return {
    runs: sealed.filter((run) => run !== undefined),
    entries: records.filter(isSoundRecord).map(entryOf),
  };
}

/** Records read at a time: a tap comes in between two pieces. */
const piece = 1000;

/**
 * The whole log as it lies: each run is taken while the next is on its way, young records come in pieces, between which taps
 * are saved. It is read over again when entries were sealed between two pieces.
 */
export async function wholeLogIn<Taken>(
  db: ShopDatabase,
  take: (run: SealedRun) => Taken,
): Promise<{ readonly sealed: readonly Taken[]; readonly records: readonly EventRecord[] }> {
  for (let readings = 1; ; readings += 1) {
    const tx = wholeLog(db);
    const [{ heads, taken }, first] = await Promise.all([
      takeSealed(tx, take),
      tx.objectStore('events').getAll(null, piece),
    ]);
    const more = await youngAfter(db, first);
    if (first.length < piece || areSame(await db.getAll('runs'), heads))
      return { sealed: taken, records: [...first, ...more] };
    if (readings === mostReadings) throw new Error('the log does not stand still');
  }
}

async function takeSealed<Taken>(tx: WholeLog, take: (run: SealedRun) => Taken) {
  const heads = await tx.objectStore('runs').getAll();
  const packs = tx.objectStore('packs');
  const taken = await Promise.all(
    heads.map(async (record) => take({ record, pack: await packs.get([record.station, record.seq]) })),
  );
  return { heads, taken };
}

const areSame = (now: readonly RunRecord[], before: readonly RunRecord[]) =>
  now.length === before.length && now.every(({ run }, at) => run.link === before[at]?.run.link);

/** What comes behind a piece of the young records. */
async function youngAfter(db: ShopDatabase, before: readonly EventRecord[]): Promise<readonly EventRecord[]> {
  const found: EventRecord[] = [];
  let records = before;
  for (let last = records.at(-1); last && records.length === piece; last = records.at(-1)) {
    records = await db.getAll('events', IDBKeyRange.lowerBound([last.station, last.seq], true), piece);
    for (const record of records) found.push(record);
  }
  return found;
}

function together(readings: readonly Reading[]): Reading {
  return {
    events: readings.flatMap(({ events }) => events),
    newer: readings.flatMap(({ newer }) => newer),
    damaged: readings.flatMap(({ damaged }) => damaged),
  };
}
