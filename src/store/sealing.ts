import type { StationId } from '../domain/log/ids.ts';
import { actMark, type EntryToPack, mostInRun, packRun, runLength } from '../domain/packed/pack-run.ts';
import type { PackedRun } from '../domain/packed/packed-run.ts';
import { entriesOf } from '../domain/packed/unpack-run.ts';
import { type EventRecord, entryOf } from './event-record.ts';
import { headNow } from './head-now.ts';
import { packOf } from './pack.ts';
import { isSoundRecord } from './reading.ts';
import { type RunRecord, runRecordOf } from './run-record.ts';
import { openSealed } from './sealed-reads.ts';
import type { ShopDatabase } from './shop-schema.ts';
import { lastOf } from './station-keys.ts';

/** How much of each station's log is sealed, in records. */
interface SealingPlan {
  /** So many stay young: an undo, a second try and the last taps find theirs without opening a run. */
  readonly young: number;
  /** So many more are waited for before the oldest are sealed. */
  readonly together: number;
}

const usualPlan: SealingPlan = { young: 1024, together: 1024 };
/** Records sealed in one step. */
const mostAtATime = 8192;

/**
 * Seals the oldest young records of each station into runs, step by step, until few are young. Each step is one strict
 * transaction: a crash leaves the records or the run, never both and never neither. Packing is done before it begins, for
 * taps wait while it lasts. Meant for a worker.
 */
export async function sealOldRecords(db: ShopDatabase, plan = usualPlan): Promise<void> {
  for (const station of await stationsIn(db)) while (await sealOnce(db, station, plan));
}

async function stationsIn(db: ShopDatabase): Promise<readonly StationId[]> {
  const stations: StationId[] = [];
  const tx = db.transaction('events', 'readonly');
  let cursor = await tx.store.openKeyCursor();
  while (cursor) {
    const [station] = cursor.key;
    stations.push(station as StationId);
    cursor = await tx.store.openKeyCursor(IDBKeyRange.lowerBound(lastOf(station), true));
  }
  return stations;
}

/** What one step puts in the place of what. */
interface Step {
  readonly first: EventRecord;
  readonly last: EventRecord;
  readonly records: number;
  /** Runs before them that are sealed anew together with them. */
  readonly before: readonly RunRecord[];
  readonly run: PackedRun;
}

/** Whether there was something to seal. */
async function sealOnce(db: ShopDatabase, station: StationId, plan: SealingPlan): Promise<boolean> {
  const step = await prepare(db, station, plan);
  return step !== undefined && replace(db, step);
}

async function prepare(
  db: ShopDatabase,
  station: StationId,
  { young: kept, together }: SealingPlan,
): Promise<Step | undefined> {
  const tx = db.transaction(['events', 'runs', 'packs'], 'readonly');
  const ofStation = IDBKeyRange.bound([station, 0], lastOf(station));
  const young = await tx.objectStore('events').count(ofStation);
  if (young < kept + together) return undefined;
  const most = Math.min(young - kept, mostAtATime);
  const records = sealable(await tx.objectStore('events').getAll(ofStation, most));
  const [first, last] = [records[0], records.at(-1)];
  if (!first || !last) return undefined;
  const before: { record: RunRecord; run: PackedRun }[] = [];
  let entries = records.length;
  for (const record of (await tx.objectStore('runs').getAll(ofStation)).toReversed()) {
    const next = before[0]?.record;
    if (record.last + 1 !== (next?.seq ?? first.seq) || record.run.link !== (next?.run.prev ?? first.prev))
      break;
    // Only runs that are no longer than what follows them: so each entry is packed a few times in its life, not always.
    if (record.run.entries > entries || record.run.entries + entries > mostInRun) break;
    const pack = await tx.objectStore('packs').get([record.station, record.seq]);
    const run = openSealed({ record, pack });
    if (!run) break;
    before.unshift({ record, run });
    entries += record.run.entries;
  }
  const run = packRun([...before.flatMap(({ run: earlier }) => repacked(earlier)), ...records.map(toPack)]);
  return { first, last, records: records.length, before: before.map(({ record }) => record), run };
}

/** The records from the first sound one on that make one run. A damaged one stays where it is, and is passed over. */
function sealable(records: readonly EventRecord[]): readonly EventRecord[] {
  const sound = records.slice(Math.max(0, records.findIndex(isSoundRecord)));
  const end = sound.findIndex(
    (record, at) =>
      !isSoundRecord(record) ||
      record.branch?.station !== sound[0]?.branch?.station ||
      record.seq !== (sound[0]?.seq ?? 0) + at,
  );
  const whole = end === -1 ? sound : sound.slice(0, end);
  return whole.slice(0, runLength(whole.map(toPack)));
}

const toPack = (record: EventRecord): EntryToPack => ({
  entry: entryOf(record),
  mark: record.act === undefined ? undefined : actMark(record.act),
});

const repacked = (run: PackedRun): readonly EntryToPack[] =>
  entriesOf(run).map((entry, at) => ({ entry, mark: run.columns.act[at] }));

/** False when another window was quicker: then nothing was changed. */
async function replace(db: ShopDatabase, step: Step): Promise<boolean> {
  const [record, pack] = [runRecordOf(step.run, step.first.branch), packOf(step.run)];
  const tx = db.transaction(['events', 'runs', 'packs', 'heads'], 'readwrite', { durability: 'strict' });
  const head = await headNow(tx);
  const [events, runs, packs] = [tx.objectStore('events'), tx.objectStore('runs'), tx.objectStore('packs')];
  const { first, last, before } = step;
  const range = IDBKeyRange.bound([first.station, first.seq], [last.station, last.seq]);
  const there = await events.count(range);
  const heads = await Promise.all(before.map(({ station, seq }) => runs.get([station, seq])));
  const isAsItWas = heads.every((head, at) => head?.run.link === before[at]?.run.link);
  if (there !== step.records || !isAsItWas) return false;
  await Promise.all([
    // It must not have to look for what is no longer young.
    tx.objectStore('heads').put(head, 'head'),
    events.delete(range),
    ...before.flatMap(({ station, seq }) => [runs.delete([station, seq]), packs.delete([station, seq])]),
    runs.put(record),
    packs.put(pack, [record.station, record.seq]),
    tx.done,
  ]);
  return true;
}
