import type { Entry } from '../domain/log/chain.ts';
import { noLink } from '../domain/log/chain.ts';
import type { EventId } from '../domain/log/version-vector.ts';
import type { PackedRun } from '../domain/packed/packed-run.ts';
import { entriesOf } from '../domain/packed/unpack-run.ts';
import type { HeldEntry } from './placing.ts';
import type { RunRecord } from './run-record.ts';

/** Runs that are looked into only where it must be. */
export interface SealedLookup {
  /** The run in which an entry lies, by the identity that it has here. */
  readonly runWith: (id: EventId) => RunRecord | undefined;
  /** A run that has an entry of a stretch of numbers. */
  readonly runIn: (stretch: { station: string; first: number; last: number }) => RunRecord | undefined;
  readonly held: (id: EventId) => Promise<HeldEntry | undefined>;
  /** The run itself; undefined when it is damaged. */
  readonly open: (record: RunRecord) => Promise<PackedRun | undefined>;
}

export function sealedLookup(
  records: readonly RunRecord[],
  read: (record: RunRecord) => Promise<PackedRun | undefined>,
): SealedLookup {
  const byStation = new Map<string, RunRecord[]>();
  for (const record of records) {
    const ofStation = byStation.get(record.station) ?? [];
    ofStation.push(record);
    byStation.set(record.station, ofStation);
  }
  const opened = new Map<RunRecord, PackedRun | undefined>();
  const unpacked = new Map<RunRecord, readonly Entry[]>();

  const runIn: SealedLookup['runIn'] = ({ station, first, last }) =>
    byStation.get(station)?.find((record) => record.seq <= last && first <= record.last);
  const runWith = ({ station, seq }: EventId) => runIn({ station, first: seq, last: seq });

  async function open(record: RunRecord): Promise<PackedRun | undefined> {
    if (!opened.has(record)) opened.set(record, await read(record));
    return opened.get(record);
  }

  async function held(id: EventId): Promise<HeldEntry | undefined> {
    const record = runWith(id);
    if (!record) return undefined;
    const run = await open(record);
    if (!run) return damaged;
    if (id.seq === record.last) return soundAs(run.link);
    const entries = unpacked.get(record) ?? entriesOf(run);
    unpacked.set(record, entries);
    const entry = entries[id.seq - record.seq];
    return entry && soundAs(entry.link);
  }

  return { runWith, runIn, held, open };
}

const damaged: HeldEntry = { link: noLink, isSound: false, record: undefined };
const soundAs = (link: HeldEntry['link']): HeldEntry => ({ link, isSound: true, record: undefined });
