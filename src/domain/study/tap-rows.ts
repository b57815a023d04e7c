import type { ShopEvent, TrayFacts } from '../log/event.ts';
import type { PersonId, ShopDay, StationId } from '../log/ids.ts';
import type { EventId } from '../log/version-vector.ts';
import { type TapKind, tapKindOf } from './tap-kind.ts';
import { emptyColumns, longestElapsed, type TapTable } from './tap-table.ts';

/** A void, and what it takes back. */
export interface VoidOf {
  readonly by: EventId;
  readonly target: EventId;
}

/** Stands for the kind of a row that is no tap but the beginning of a spell. */
export const beginning = 2 ** 32 - 1;

/** Taps as they come, in no order, with what their order and their force depend on. */
export interface TapRows extends Omit<TapTable, 'length'> {
  readonly length: () => number;
  readonly seq: Float64Array;
  readonly tick: Float64Array;
  readonly voids: readonly VoidOf[];
  readonly indexes: TapIndexes;
  readonly add: (row: TapRow) => void;
  readonly addVoid: (of: VoidOf) => void;
  /** Adds what a single event says, if it is a tap or a void. */
  readonly addEvent: (event: ShopEvent) => void;
}

/** Where each text stands in its dictionary; what is met for the first time is entered. */
interface TapIndexes {
  readonly kind: (kind: TapKind | 'begun') => number;
  readonly tray: (facts: TrayFacts) => number;
  readonly day: (day: ShopDay) => number;
  readonly person: (person: PersonId | null) => number;
  readonly station: (station: StationId) => number;
}

/** One tap; all but numbers as indexes, no tray and no time as −1. */
interface TapRow {
  readonly kind: number;
  readonly tray: number;
  readonly day: number;
  readonly person: number;
  readonly station: number;
  readonly seq: number;
  readonly wall: number;
  readonly tick: number;
  readonly elapsed: number;
}

/** Room for at most so many taps. */
export function tapRows(most: number): TapRows {
  const kinds = dictionary<TapKind>((kind) => JSON.stringify(kind));
  const trays = dictionary(nameOfFacts);
  const days = dictionary<ShopDay>(String);
  const persons = dictionary<PersonId | null>((person) => person ?? '');
  const stations = dictionary<StationId>(String);
  const columns = emptyColumns(most);
  const seq = new Float64Array(most);
  const tick = new Float64Array(most);
  const voids: VoidOf[] = [];
  let length = 0;
  const indexes = {
    kind: (kind: TapKind | 'begun') => (kind === 'begun' ? beginning : kinds.indexOf(kind)),
    tray: trays.indexOf,
    day: days.indexOf,
    person: persons.indexOf,
    station: stations.indexOf,
  };

  function add(row: TapRow): void {
    columns.kind[length] = row.kind;
    columns.tray[length] = row.tray;
    columns.day[length] = row.day;
    columns.person[length] = row.person;
    columns.station[length] = row.station;
    columns.wall[length] = row.wall;
    columns.elapsed[length] = Math.min(row.elapsed, longestElapsed);
    seq[length] = row.seq;
    tick[length] = row.tick;
    length += 1;
  }

  return {
    length: () => length,
    ...{ kinds: kinds.items, trays: trays.items, days: days.items, persons: persons.items },
    ...{ stations: stations.items, columns, seq, tick, voids, indexes, add },
    addVoid: (of) => voids.push(of),
    addEvent(event) {
      if (event.kind === 'voided') voids.push({ by: event, target: event.event });
      const kind = tapKindOf(event);
      if (kind === undefined) return;
      add({
        kind: indexes.kind(kind),
        tray: 'of' in event ? indexes.tray(event.of) : -1,
        day: indexes.day(event.day),
        person: indexes.person(event.person),
        station: indexes.station(event.station),
        seq: event.seq,
        ...event.stamp,
        elapsed: 'elapsed' in event ? (event.elapsed ?? -1) : -1,
      });
    },
  };
}

function dictionary<Item>(nameOf: (item: Item) => string) {
  const items: Item[] = [];
  const indexes = new Map<string, number>();
  return {
    items,
    indexOf(item: Item): number {
      const name = nameOf(item);
      const index = indexes.get(name) ?? items.push(item) - 1;
      indexes.set(name, index);
      return index;
    },
  };
}

/** Ids hold no bar; a code may. */
function nameOfFacts({ tray, variant, species, batch, code }: TrayFacts): string {
  return `${tray}|${variant}|${species}|${batch}|${code}`;
}
