import type { Link } from '../../domain/log/chain.ts';
import type { ShopEvent } from '../../domain/log/event.ts';
import type { StationId } from '../../domain/log/ids.ts';
import type { BackupReading } from './read-backup.ts';

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

/** What merging a backup would do to a log that holds the entries with these links. An entry that comes twice counts once. */
export function whatItWouldAdd(
  reading: Extract<BackupReading, { kind: 'read' }>,
  held: ReadonlySet<Link>,
): Preview {
  const stations = new Map<StationId, StationAdditions>();
  const met = new Set<Link>();
  for (const { link, event } of reading.entries) {
    if (met.has(link)) continue;
    met.add(link);
    const { station } = event;
    const { adds, here, newest } = stations.get(station) ?? { adds: 0, here: 0, newest: 0 };
    // Events of a newer version are stamped too: every entry that was read has passed the envelope's schema.
    const { wall } = (event as ShopEvent).stamp;
    const isHere = held.has(link);
    stations.set(station, {
      station,
      adds: adds + (isHere ? 0 : 1),
      here: here + (isHere ? 1 : 0),
      newest: Math.max(newest, wall),
    });
  }
  const perStation = [...stations.values()].sort((a, b) => (a.station < b.station ? -1 : 1));
  const sumOf = (key: 'adds' | 'here') => perStation.reduce((sum, each) => sum + each[key], 0);
  return {
    adds: sumOf('adds'),
    here: sumOf('here'),
    unreadable: reading.unreadable.length,
    newest: perStation.length === 0 ? null : Math.max(...perStation.map(({ newest }) => newest)),
    perStation,
  };
}
