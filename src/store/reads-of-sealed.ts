import type { IDBPTransaction } from 'idb';
import type { TrayId } from '../domain/log/ids.ts';
import type { Parcel } from '../domain/packed/parcel.ts';
import { type EventRecord, entryOf } from './event-record.ts';
import type { Reading } from './log-store.ts';
import { isSoundRecord, readRecords } from './reading.ts';
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

export async function ofTray(db: ShopDatabase, tray: TrayId): Promise<Reading> {
  const tx = wholeLog(db);
  const sealed = await sealedWhere(tx, ({ trays }) => trays.includes(tray));
  const records = await tx.objectStore('events').index('byTray').getAll(tray);
  return together([...sealed.map((run) => readAbout(run, tray)), readRecords(records)]);
}

/** A log that changes its runs so often while it is read is broken. */
const mostReadings = 5;

/** The whole log. */
export async function wholeParcel(db: ShopDatabase): Promise<Parcel> {
  const { sealed, records } = await wholeLogIn(db);
  return {
    runs: sealed.flatMap((run) => openSealed(run) ?? []),
    entries: records.filter(isSoundRecord).map(entryOf),
  };
}

/** The whole log as it lies, in pieces, between which taps are saved; over again when entries were sealed meanwhile. */
export async function wholeLogIn(
  db: ShopDatabase,
): Promise<{ readonly sealed: readonly SealedRun[]; readonly records: readonly EventRecord[] }> {
  for (let readings = 1; ; readings += 1) {
    const sealed = await sealedWhere(wholeLog(db), () => true);
    const records = await youngRecords(db);
    if (areSame(await db.getAll('runs'), sealed)) return { sealed, records };
    if (readings === mostReadings) throw new Error('the log does not stand still');
  }
}

function areSame(now: readonly RunRecord[], before: readonly SealedRun[]): boolean {
  return now.length === before.length && now.every(({ run }, at) => run.link === before[at]?.record.run.link);
}

/** Records read at a time: a tap comes in between two pieces. */
const piece = 1000;

async function youngRecords(db: ShopDatabase): Promise<readonly EventRecord[]> {
  const found: EventRecord[] = [];
  let rest: IDBKeyRange | undefined;
  for (;;) {
    const records = await db.getAll('events', rest, piece);
    for (const record of records) found.push(record);
    const last = records.at(-1);
    if (!last || records.length < piece) return found;
    rest = IDBKeyRange.lowerBound([last.station, last.seq], true);
  }
}

function together(readings: readonly Reading[]): Reading {
  return {
    events: readings.flatMap(({ events }) => events),
    newer: readings.flatMap(({ newer }) => newer),
    damaged: readings.flatMap(({ damaged }) => damaged),
  };
}
