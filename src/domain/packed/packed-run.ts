import * as v from 'valibot';
import { linkText } from '../log/chain.ts';
import { stationId } from '../log/ids.ts';
import { type Column, columnAt, largestIn, type Width, widthFor } from './column.ts';

/** The columns of a run. `shape`, `day`, `person` and `tray` are indexes of its dictionaries; `act` tells taps apart. */
export const columnNames = [
  'shape',
  'wall',
  'tick',
  'day',
  'person',
  'tray',
  'elapsed',
  'time',
  'act',
] as const;
export type ColumnName = (typeof columnNames)[number];
export type Columns = Readonly<Record<ColumnName, Column>>;

const count = v.pipe(v.number(), v.safeInteger(), v.minValue(0));

/** What a run says of itself without being opened. */
export const runHeadSchema = v.object({
  station: stationId,
  /** The number of its first entry, as its station wrote it; the others follow without a gap. */
  first: v.pipe(count, v.minValue(1)),
  entries: v.pipe(count, v.minValue(1)),
  /** What its first entry follows on, the link of its last entry, and all its links added up (exclusive or). */
  prev: linkText,
  link: linkText,
  sum: linkText,
});
export type RunHead = Readonly<v.InferOutput<typeof runHeadSchema>>;

export function isSameHead(a: RunHead, b: RunHead): boolean {
  return (
    a.station === b.station &&
    a.first === b.first &&
    a.entries === b.entries &&
    a.prev === b.prev &&
    a.link === b.link &&
    a.sum === b.sum
  );
}

/** Texts that the events of a run share; the tray facts, days and persons as JSON. */
interface Dictionaries {
  readonly shapes: readonly string[];
  readonly days: readonly string[];
  readonly persons: readonly string[];
  readonly trays: readonly string[];
}

/**
 * Entries of one station, one after the other without a gap, packed in columns. Their links are not kept: the chain
 * from `prev` gives them again, and the last one has to be `link`.
 */
export interface PackedRun extends RunHead, Dictionaries {
  /** What the column of wall times counts from, ms UTC. */
  readonly base: number;
  readonly columns: Columns;
  /** Further numbers and indexes of the entries, in their order: how many an entry has, its shape says. */
  readonly extras: Float64Array<ArrayBuffer>;
}

/** A run as a store keeps it: texts and numbers apart, all numbers in one buffer. */
export interface StoredRun extends Dictionaries {
  readonly base: number;
  readonly widths: Readonly<Record<ColumnName, Width>>;
  readonly extras: number;
  readonly bytes: ArrayBuffer;
}

/** Columns begin at multiples of 8 bytes: a view on wide numbers asks for that. */
const aligned = (bytes: number) => Math.ceil(bytes / 8) * 8;

/** Lays out the numbers of `entries` entries in one buffer: extras first, then the columns. */
export function storedRun({ columns, extras, entries, ...run }: PackedRun): StoredRun {
  const widths = Object.fromEntries(
    columnNames.map((name) => [name, widthFor(largestIn(columns[name]))]),
  ) as Record<ColumnName, Width>;
  const bytes = new ArrayBuffer(sizeOf({ extras: extras.length, widths }, entries));
  new Float64Array(bytes, 0, extras.length).set(extras);
  for (const [name, at] of places({ extras: extras.length, widths }, entries))
    if (widths[name] > 0) columnAt(bytes, at).set(columns[name]);
  const { shapes, days, persons, trays, base } = run;
  return { shapes, days, persons, trays, base, widths, extras: extras.length, bytes };
}

/** A stored run as it is worked with; nothing is copied. Throws a RangeError when its buffer is too short. */
export function openedRun(head: RunHead, stored: StoredRun): PackedRun {
  const { shapes, days, persons, trays, base, bytes } = stored;
  const columns = Object.fromEntries(
    [...places(stored, head.entries)].map(([name, at]) => [name, columnAt(bytes, at)]),
  ) as Record<ColumnName, Column>;
  const { station, first, entries, prev, link, sum } = head;
  return {
    ...{ station, first, entries, prev, link, sum },
    ...{ shapes, days, persons, trays, base, columns },
    extras: new Float64Array(bytes, 0, stored.extras),
  };
}

type Layout = Pick<StoredRun, 'widths' | 'extras'>;

function* places({ extras, widths }: Layout, length: number) {
  let offset = extras * 8;
  for (const name of columnNames) {
    const width = widths[name];
    yield [name, { offset, width, length }] as const;
    offset += aligned(width * length);
  }
}

function sizeOf({ extras, widths }: Layout, length: number): number {
  return columnNames.reduce((sum, name) => sum + aligned(widths[name] * length), extras * 8);
}
