import { toldApart } from '../log/branch.ts';
import type { VoidEvent } from '../log/event.ts';
import { markSeen, type VersionVector } from '../log/version-vector.ts';
import { enforce, isVoided, type Voids } from '../shop/voids.ts';
import { isVoid } from './effects.ts';
import { eventTexts } from './event-texts.ts';
import type { EffectColumn, LogColumns } from './log-columns.ts';
import type { LogRun } from './log-run.ts';
import { addToTables, type LogTables } from './log-tables.ts';
import { rowFinder } from './row-finder.ts';

/**
 * Adds a whole log up in columns, to the tables that the sums of the shop would give. Events are counted by effect, and
 * each effect is added once; a void counts as what it takes back, taken away. That holds where a void is the only one of
 * its event, is in force, and its event is there; the few others go through the books one by one.
 */
export function foldTables(log: LogColumns): LogTables {
  const times = new Uint32Array(log.effects.length);
  for (const column of log.columns) countInto(times, column);
  for (const { of, at } of log.odd) {
    const effect = log.columns[log.runs.indexOf(of)]?.[at] ?? 0;
    times[effect] = (times[effect] ?? 0) - 1;
  }
  const tables = log.cells.tables(totalsOf(times, log));
  putThroughBooks(tables, log);
  return tables;
}

function countInto(times: Uint32Array, column: EffectColumn): void {
  for (let at = 0; at < column.length; at += 1) {
    const effect = column[at] ?? 0;
    times[effect] = (times[effect] ?? 0) + 1;
  }
}

function totalsOf(times: Uint32Array, { effects, cells }: LogColumns): Float64Array {
  const totals = new Float64Array(cells.count());
  effects.forEach(({ cells: ofEffect, amounts }, number) => {
    ofEffect.forEach((cell, at) => {
      totals[cell] = (totals[cell] ?? 0) + (times[number] ?? 0) * (amounts[at] ?? 0);
    });
  });
  return totals;
}

function putThroughBooks(tables: LogTables, { odd, runs }: LogColumns): void {
  if (odd.length === 0) return;
  const find = rowFinder(runs);
  const seen: VersionVector = new Map();
  const voids: Voids = new Map();
  const events = [...new Set(odd.map(({ of }) => of))].flatMap((of) =>
    eventsAt(of, new Set(odd.flatMap((each) => (each.of === of ? [each.at] : [])))),
  );
  for (const { event, of } of events)
    for (let inner: unknown = event; inner; inner = isVoid(inner) ? inner.event : undefined) {
      const id = inner as VoidEvent;
      // Its identity is that of this log by now.
      if (find({ ...of, branch: undefined }, id)) markSeen(seen, id);
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

function eventsAt(of: LogRun, rows: ReadonlySet<number>) {
  const { run, branch } = of;
  return Array.from(
    eventTexts(run, (at) => rows.has(at)),
    ({ text }) => {
      const event = JSON.parse(text) as VoidEvent;
      return { of, event: branch ? toldApart(event, branch) : event };
    },
  );
}
