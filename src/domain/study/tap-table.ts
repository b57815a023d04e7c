import type { TrayFacts } from '../log/event.ts';
import type { PersonId, ShopDay, StationId } from '../log/ids.ts';
import type { TapKind } from './tap-kind.ts';

/** A tap that is in force, as a row. */
export interface Tap {
  readonly what: TapKind;
  /** What it is about; null for the end of a spell. */
  readonly of: TrayFacts | null;
  readonly day: ShopDay;
  readonly person: PersonId | null;
  readonly station: StationId;
  /** ms UTC, by the stamp. */
  readonly wall: number;
  /** Milliseconds since the tap before, or since the stage was entered; null at a break. */
  readonly elapsed: number | null;
  /** The first tap of its spell: `elapsed` runs from when the stage was entered. */
  readonly begins: boolean;
}

/**
 * Every tap at a stage that is in force, in the order of the stamps and inside a station in the order of its numbers. A
 * tap is a row of numbers, most of them indexes of the dictionaries: 33 bytes, so that a million fit in 33 MB.
 */
export interface TapTable {
  readonly length: number;
  readonly kinds: readonly TapKind[];
  /** Facts of trays as the taps had them; a tray whose facts have changed is in it several times. */
  readonly trays: readonly TrayFacts[];
  readonly days: readonly ShopDay[];
  readonly persons: readonly (PersonId | null)[];
  readonly stations: readonly StationId[];
  readonly columns: TapColumns;
}

export interface TapColumns {
  readonly kind: Uint32Array;
  /** −1 where there is none. */
  readonly tray: Int32Array;
  readonly day: Uint32Array;
  readonly person: Uint32Array;
  readonly station: Uint32Array;
  readonly wall: Float64Array;
  /** −1 for null; what is longer than 24 days counts as 24 days. */
  readonly elapsed: Int32Array;
  readonly begins: Uint8Array;
}

/** The longest time that the column of times can hold, ms. */
export const longestElapsed = 2 ** 31 - 1;

export function emptyColumns(length: number): TapColumns {
  return {
    kind: new Uint32Array(length),
    tray: new Int32Array(length),
    day: new Uint32Array(length),
    person: new Uint32Array(length),
    station: new Uint32Array(length),
    wall: new Float64Array(length),
    elapsed: new Int32Array(length),
    begins: new Uint8Array(length),
  };
}

/** The rows of a table one by one; undefined for a row that it has not. Not for long tables: ask the columns. */
export function tapAt({ columns, ...table }: TapTable, row: number): Tap | undefined {
  const what = table.kinds[columns.kind[row] ?? -1];
  const day = table.days[columns.day[row] ?? -1];
  const station = table.stations[columns.station[row] ?? -1];
  if (row >= table.length || !what || day === undefined || station === undefined) return undefined;
  const elapsed = columns.elapsed[row] ?? -1;
  return {
    what,
    of: table.trays[columns.tray[row] ?? -1] ?? null,
    day,
    person: table.persons[columns.person[row] ?? -1] ?? null,
    station,
    wall: columns.wall[row] ?? 0,
    elapsed: elapsed < 0 ? null : elapsed,
    begins: columns.begins[row] === 1,
  };
}
