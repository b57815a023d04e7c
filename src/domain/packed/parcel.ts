import { type Entry, type Link, linkOver } from '../log/chain.ts';
import type { StationId } from '../log/ids.ts';
import { eventTexts } from './event-texts.ts';
import type { PackedRun } from './packed-run.ts';
import { entriesOf } from './unpack-run.ts';

/**
 * Entries on their way into a log, out of it, or between two copies of it, each as its station wrote it: packed where
 * many follow on from each other, else one by one. None is in it twice.
 */
export interface Parcel {
  readonly runs: readonly PackedRun[];
  readonly entries: readonly Entry[];
}

export const emptyParcel: Parcel = { runs: [], entries: [] };

export function countIn({ runs, entries }: Parcel): number {
  return runs.reduce((sum, run) => sum + run.entries, entries.length);
}

/** The stations that wrote it. */
export function stationsIn({ runs, entries }: Parcel): ReadonlySet<StationId> {
  return new Set([...runs.map(({ station }) => station), ...entries.map(({ event }) => event.station)]);
}

/** All of it one by one. Slow for long logs, for each link is summed up anew. Throws when a run is not whole. */
export function entriesIn({ runs, entries }: Parcel): readonly Entry[] {
  return runs.length === 0 ? entries : [...runs.flatMap((run) => entriesOf(run)), ...entries];
}

/** The links of all entries in a parcel, without the entries. Throws when a run is not whole. */
export function* linksIn({ runs, entries }: Parcel): Generator<Link, void> {
  for (const { link } of entries) yield link;
  for (const run of runs) {
    let link = run.prev;
    for (const { text } of eventTexts(run)) {
      link = linkOver(link, text);
      yield link;
    }
  }
}
