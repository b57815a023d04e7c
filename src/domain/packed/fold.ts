import { toldApart } from '../log/branch.ts';
import type { VoidEvent } from '../log/event.ts';
import { markSeen, type VersionVector } from '../log/version-vector.ts';
import { enforce, isVoided, type Voids } from '../shop/voids.ts';
import { isVoid } from './effects.ts';
import { eventTexts } from './event-texts.ts';
import type { LogColumns, RunColumns } from './log-columns.ts';
import { addToTables, type LogTables } from './log-tables.ts';
import { type Row, rowFinder } from './row-finder.ts';

/** A void: its row, the cell of its run's counts that it is counted in, and the row that it takes back. */
interface VoidRow extends Row {
  readonly cell: number;
  readonly nested: boolean;
  readonly target: Row | undefined;
}

/**
 * Adds a whole log up in columns, to the tables that the sums of the shop would give. Events are counted by shape and group
 * of trays, and each kind is added once; a void counts as what it takes back, taken away. That holds where a void is the
 * only one of its event, is in force, and its event is there; the few others go through the books one by one.
 */
export function foldTables({ runs, effects, cells }: LogColumns): LogTables {
  const find = rowFinder(runs);
  const voids: VoidRow[] = [];
  const counts = runs.map((columns) => count(columns, { find, voids }));
  const odd = oddOnes(runs, voids);
  for (const { columns, cell } of odd) {
    const counted = counts[runs.indexOf(columns)];
    if (counted) counted[cell] = (counted[cell] ?? 0) - 1;
  }
  const times: number[] = [];
  runs.forEach((columns, at) => {
    addOccurring(times, { columns, counted: counts[at] });
  });
  const tables = cells.tables(totalsOf(times, { effects, cells }));
  putThroughBooks(tables, { odd, find });
  return tables;
}

type Find = ReturnType<typeof rowFinder>;

/** How many events of each shape and group a run has; its voids are noted. */
function count(columns: RunColumns, { find, voids }: { find: Find; voids: VoidRow[] }): Uint32Array {
  const { run, groups, groupOf, extrasOf } = columns;
  const { shape: shapes, tray: trays } = run.columns;
  const counted = new Uint32Array(run.shapes.length * groups);
  let extras = 0;
  for (let at = 0; at < run.entries; at += 1) {
    const shape = shapes[at] ?? 0;
    const cell = shape * groups + (groupOf[trays[at] ?? 0] ?? 0);
    counted[cell] = (counted[cell] ?? 0) + 1;
    const taken = columns.voids[shape];
    if (taken) {
      const seq = taken.seqAt === undefined ? taken.seq : (run.extras[extras + taken.seqAt] ?? 0);
      const target = find(columns, { station: taken.station, seq });
      voids.push({ columns, at, cell, nested: taken.nested, target });
    }
    extras += extrasOf[shape] ?? 0;
  }
  return counted;
}

/** The voids that are not simply what they take back, taken away. */
function oddOnes(runs: readonly RunColumns[], voids: readonly VoidRow[]): readonly VoidRow[] {
  const voided = new Map(runs.map((columns) => [columns, new Uint8Array(columns.run.entries)]));
  const timesVoided = ({ columns, at }: Row) => voided.get(columns)?.[at] ?? 0;
  for (const { target } of voids) {
    const row = target && voided.get(target.columns);
    if (row) row[target.at] = Math.min(2, timesVoided(target) + 1);
  }
  return voids.filter(
    (each) => each.nested || !each.target || timesVoided(each.target) > 1 || timesVoided(each) > 0,
  );
}

/** Adds how often each effect, by its number, occurs in a run. */
function addOccurring(
  times: number[],
  { columns, counted = new Uint32Array() }: { columns: RunColumns; counted: Uint32Array | undefined },
): void {
  for (let at = 0; at < counted.length; at += 1) {
    const events = counted[at] ?? 0;
    if (events === 0) continue;
    const effect = columns.effect(at);
    times[effect] = (times[effect] ?? 0) + events;
  }
}

function totalsOf(
  times: readonly number[],
  { effects, cells }: Pick<LogColumns, 'effects' | 'cells'>,
): Float64Array {
  const totals = new Float64Array(cells.count());
  times.forEach((events, effect) => {
    effects[effect]?.cells.forEach((cell, at) => {
      totals[cell] = (totals[cell] ?? 0) + events * (effects[effect]?.amounts[at] ?? 0);
    });
  });
  return totals;
}

function putThroughBooks(tables: LogTables, { odd, find }: { odd: readonly VoidRow[]; find: Find }): void {
  if (odd.length === 0) return;
  const seen: VersionVector = new Map();
  const voids: Voids = new Map();
  const events = [...new Set(odd.map(({ columns }) => columns))].flatMap((columns) =>
    eventsAt(columns, new Set(odd.flatMap((each) => (each.columns === columns ? [each.at] : [])))),
  );
  for (const { event, columns } of events)
    for (let inner: unknown = event; inner; inner = isVoid(inner) ? inner.event : undefined) {
      const id = inner as VoidEvent;
      // Its identity is that of this log by now.
      if (find({ ...columns, branch: undefined }, id)) markSeen(seen, id);
    }
  const books = {
    seen,
    voids,
    post: (event: Parameters<typeof addToTables>[1]['event'], sign: 1 | -1) =>
      addToTables(tables, { event, times: sign }),
  };
  for (const { event } of events)
    if (!isVoided(voids, event)) enforce(books as Parameters<typeof enforce>[0], { event, sign: 1 });
}

function eventsAt(columns: RunColumns, rows: ReadonlySet<number>) {
  const { run, branch } = columns;
  return Array.from(
    eventTexts(run, (at) => rows.has(at)),
    ({ text }) => {
      const event = JSON.parse(text) as VoidEvent;
      return { columns, event: branch ? toldApart(event, branch) : event };
    },
  );
}
