import { type Entry, type Link, linkOver } from '../log/chain.ts';
import { holdingOf } from '../log/holding.ts';
import { eventTexts } from './event-texts.ts';
import { type ColumnName, type Columns, columnNames, type PackedRun } from './packed-run.ts';
import { type TakenApart, type TextKind, takeApart } from './shape.ts';

/** More entries than this are never in one run: a lost run is to cost little, and a run is written whole. */
export const mostInRun = 32_768;

/** An entry to be packed; `mark` is the mark of the tap that it was appended by on this tablet. */
export interface EntryToPack {
  readonly entry: Entry;
  readonly mark?: number | undefined;
}

/** How many of the entries from the first on can be packed in one run: they follow on from each other, link by link. */
export function runLength(entries: readonly Pick<EntryToPack, 'entry'>[]): number {
  let length = 0;
  let before: Entry | undefined;
  for (const { entry } of entries) {
    if (before && !isNext(entry, before)) break;
    if (length === mostInRun) break;
    before = entry;
    length += 1;
  }
  return length;
}

/** Whether an entry follows on from the one before it in the chain of its station. */
export function isNext({ prev, event }: Entry, before: Entry): boolean {
  return event.station === before.event.station && event.seq === before.event.seq + 1 && prev === before.link;
}

/**
 * Packs entries that follow on from each other (see `runLength`). Throws when they do not, or are not as they were written.
 * `readBack` tells how each is read back from the run: by its link; or by its text alone, which costs a fifth and is enough
 * where that text has just been held against its link.
 */
export function packRun(
  entries: readonly EntryToPack[],
  { readBack = 'links' }: { readonly readBack?: 'links' | 'texts' } = {},
): PackedRun {
  const [first, last] = [entries[0]?.entry, entries.at(-1)?.entry];
  if (!first || !last || runLength(entries) !== entries.length) throw new Error('these entries are no run');
  const sheet = newSheet(wallOf(first));
  for (const { entry, mark } of entries) sheet.take(entry, mark);
  const run: PackedRun = {
    station: first.event.station,
    first: first.event.seq,
    entries: entries.length,
    prev: first.prev,
    link: last.link,
    sum: holdingOf(entries.map(({ entry }) => entry.link)).sum,
    ...sheet.packed(),
  };
  if (!(readBack === 'links' ? sameLinks(run, entries) : sameTexts(run, entries)))
    throw new Error('a packed run does not say what its entries say');
  return run;
}

function wallOf({ event }: Entry): number {
  return 'stamp' in event ? event.stamp.wall : 0;
}

/** A dictionary in the making. */
function dictionary() {
  const indexes = new Map<string, number>();
  return {
    indexOf(text: string): number {
      const index = indexes.get(text) ?? indexes.size;
      indexes.set(text, index);
      return index;
    },
    texts: () => [...indexes.keys()],
  };
}

function newSheet(base: number) {
  const shapes = dictionary();
  const kinds = { day: dictionary(), person: dictionary(), tray: dictionary() };
  const columns = Object.fromEntries(columnNames.map((name) => [name, [] as number[]])) as Record<
    ColumnName,
    number[]
  >;
  const extras: number[] = [];
  const indexOf = (kind: TextKind, text: string | undefined) =>
    text === undefined ? 0 : kinds[kind].indexOf(text);

  return {
    take({ event }: Entry, mark = 0): void {
      const apart = fitting(event, base);
      columns.shape.push(shapes.indexOf(apart.shape));
      for (const kind of ['wall', 'tick', 'elapsed', 'time'] as const)
        columns[kind].push(apart.numbers[kind] ?? 0);
      for (const kind of ['day', 'person', 'tray'] as const)
        columns[kind].push(indexOf(kind, apart.texts[kind]));
      columns.act.push(mark);
      for (const extra of apart.extras)
        extras.push(typeof extra === 'number' ? extra : indexOf(extra.kind, extra.text));
    },
    packed: () => ({
      base,
      shapes: shapes.texts(),
      days: kinds.day.texts(),
      persons: kinds.person.texts(),
      trays: kinds.tray.texts(),
      columns: Object.fromEntries(
        columnNames.map((name) => [name, Uint32Array.from(columns[name])]),
      ) as Columns,
      extras: Float64Array.from(extras),
    }),
  };
}

/** An event whose first number or stamp is not where it is expected is kept as it is, in a shape without holes. */
function fitting(event: Entry['event'], base: number): TakenApart {
  const apart = takeApart(event, base);
  const { seq, wall } = apart.numbers;
  const stamped = 'stamp' in event && wall === event.stamp.wall - base;
  if (seq === event.seq && (stamped || wall === undefined)) return apart;
  return { shape: JSON.stringify(event), numbers: {}, texts: {}, extras: [] };
}

/** What is left of the name of a tap: enough to look for it, not enough to be sure. Never 0. */
export function actMark(act: string): number {
  let mark = 0x811c_9dc5;
  // FNV-1a, 32 bits (G. Fowler, L. C. Noll, K.-P. Vo; draft-eastlake-fnv).
  for (let at = 0; at < act.length; at += 1) mark = Math.imul(mark ^ act.charCodeAt(at), 0x0100_0193);
  return mark >>> 0 || 1;
}

/** A run takes the place of its entries for good, so each is read back from it, chain and all, before it may. */
function sameLinks(run: PackedRun, entries: readonly EntryToPack[]): boolean {
  let link: Link = run.prev;
  for (const { at, text } of eventTexts(run)) {
    link = linkOver(link, text);
    if (link !== entries[at]?.entry.link) return false;
  }
  return true;
}

function sameTexts(run: PackedRun, entries: readonly EntryToPack[]): boolean {
  for (const { at, text } of eventTexts(run))
    if (text !== JSON.stringify(entries[at]?.entry.event)) return false;
  return true;
}
