import type { Link } from '../../domain/log/chain.ts';
import type { StationId } from '../../domain/log/ids.ts';
import type { TextEntry } from '../../domain/packed/text-entry.ts';
import type { PackedReading } from './read-packed.ts';

interface Additions {
  /** Entries that the log has not, and those that it has already. */
  readonly adds: number;
  readonly here: number;
}

interface StationAdditions extends Additions {
  readonly station: StationId;
  /** Wall clock of its newest entry in the file, ms UTC. */
  readonly newest: number;
}

export interface Preview extends Additions {
  readonly unreadable: number;
  /** Wall clock of the newest entry in the file, ms UTC; null when it has none. */
  readonly newest: number | null;
  /** Stations in the order of their ids. */
  readonly perStation: readonly StationAdditions[];
}

/** The entries of a file, weighed one by one against a log. */
interface Weighing {
  /** What an entry is to the log; one that comes twice counts once. */
  readonly weigh: (entry: Pick<TextEntry, 'link' | 'station' | 'wall'>) => 'new' | 'here' | 'again';
  readonly hasMet: (link: Link) => boolean;
  readonly preview: (unreadable: number) => Preview;
}

/** What merging a file does to a log that has nothing of its stations. */
export function allNew({ manifest, newest }: PackedReading): Preview {
  const perStation = manifest.stations.map(
    ({ station, entries }): StationAdditions => ({
      ...{ station, adds: entries, here: 0, newest: newest.get(station) ?? 0 },
    }),
  );
  const latest = Math.max(...newest.values());
  return { adds: manifest.entries, here: 0, unreadable: 0, newest: latest, perStation };
}

/** Weighs what merging a file would do to a log that holds the entries with these links. */
export function whatItWouldAdd(held: ReadonlySet<Link>): Weighing {
  const stations = new Map<StationId, { adds: number; here: number; newest: number }>();
  const met = new Set<Link>();
  return {
    weigh({ link, station, wall = 0 }) {
      if (met.has(link)) return 'again';
      met.add(link);
      const sums = stations.get(station) ?? { adds: 0, here: 0, newest: 0 };
      stations.set(station, sums);
      const isHere = held.has(link);
      if (isHere) sums.here += 1;
      else sums.adds += 1;
      sums.newest = Math.max(sums.newest, wall);
      return isHere ? 'here' : 'new';
    },
    hasMet: (link) => met.has(link),
    preview(unreadable) {
      const perStation = [...stations]
        .map(([station, sums]): StationAdditions => ({ station, ...sums }))
        .sort((a, b) => (a.station < b.station ? -1 : 1));
      const sumOf = (key: 'adds' | 'here') => perStation.reduce((sum, each) => sum + each[key], 0);
      return {
        adds: sumOf('adds'),
        here: sumOf('here'),
        unreadable,
        newest: perStation.length === 0 ? null : Math.max(...perStation.map(({ newest }) => newest)),
        perStation,
      };
    },
  };
}
