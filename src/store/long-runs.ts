import type { Branch } from '../domain/log/branch.ts';
import { packRun, runLength } from '../domain/packed/pack-run.ts';
import type { PackedRun } from '../domain/packed/packed-run.ts';
import { type EventRecord, entryOf } from './event-record.ts';

/** Fewer records than this stay single: a run of a few costs more than it saves. */
const shortestRun = 256;

/** Records sorted into runs that can be sealed at once, and single ones. */
export interface LongRuns {
  readonly runs: readonly { readonly run: PackedRun; readonly branch: Branch | undefined }[];
  readonly singles: readonly EventRecord[];
}

/** Packs what is long enough of sound records that came together. */
export function longRuns(records: readonly EventRecord[]): LongRuns {
  const runs: LongRuns['runs'][number][] = [];
  const singles: EventRecord[] = [];
  for (const chain of byChain(records)) {
    const entries = chain.map((record) => ({ entry: entryOf(record) }));
    for (let from = 0; from < chain.length; ) {
      const length = runLength(entries.slice(from));
      const part = entries.slice(from, from + length);
      if (length >= shortestRun) runs.push({ run: packRun(part), branch: chain[from]?.branch });
      else singles.push(...chain.slice(from, from + length));
      from += length;
    }
  }
  return { runs, singles };
}

/** The records of each station and branch, in the order of their numbers. */
function byChain(records: readonly EventRecord[]): Iterable<readonly EventRecord[]> {
  const chains = new Map<string, EventRecord[]>();
  for (const record of records) {
    const chain = chains.get(record.station) ?? [];
    chain.push(record);
    chains.set(record.station, chain);
  }
  return [...chains.values()].map((chain) => chain.sort((a, b) => a.seq - b.seq));
}
