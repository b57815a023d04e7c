import { type Entry, noLink } from '../../domain/log/chain.ts';
import { packLong, shortestRun } from '../../domain/packed/pack-long.ts';
import type { PackedRun } from '../../domain/packed/packed-run.ts';
import type { Parcel } from '../../domain/packed/parcel.ts';
import { headOfEntry, headOfRun, stretchesOf } from '../../domain/packed/stretch.ts';
import { entriesOf } from '../../domain/packed/unpack-run.ts';
import type { Manifest } from './backup-format.ts';
import type { StationSections } from './order-log.ts';

type Stations = Manifest['stations'];

/**
 * Whether a log has of each station what a manifest says, in one chain without a gap or a branch, and nothing else. Of runs
 * it takes the ends for true.
 */
export function isPlain({ runs, entries }: Parcel, stations: Stations): boolean {
  const stretches = stretchesOf([...runs.map(headOfRun), ...entries.map(headOfEntry)]);
  const said = new Map<string, Stations[number]>(stations.map((each) => [each.station, each]));
  return (
    said.size === stations.length &&
    stretches.length === stations.length &&
    stretches.every(({ station, first, last, heads }) => {
      const its = said.get(station);
      const begins = first > 1 || heads[0]?.prev === noLink;
      return (
        begins && its?.last === last && its.link === heads.at(-1)?.link && its.entries === last - first + 1
      );
    })
  );
}

/** A log in runs, with its other entries in as many as can be; undefined where a branch leaves a run. */
export function inRuns(stations: readonly StationSections[]): Parcel | undefined {
  const runs: PackedRun[] = [];
  const single: Entry[] = [];
  for (const { of, entries } of stations.flatMap(({ sections }) => sections)) {
    if ('entry' in of) single.push(of.entry);
    else if (entries !== of.run.entries) return undefined;
    else if (entries < shortestRun) single.push(...entriesOf(of.run));
    else runs.push(withoutActs(of.run));
  }
  const packed = packLong(single);
  return { runs: [...runs, ...packed.runs], entries: packed.entries };
}

/** The names of taps mean something on their tablet alone. */
function withoutActs(run: PackedRun): PackedRun {
  return { ...run, columns: { ...run.columns, act: new Uint8Array(run.entries) } };
}
