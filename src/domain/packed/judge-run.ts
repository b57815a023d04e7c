import type { Column } from './column.ts';
import { eventTexts } from './event-texts.ts';
import type { PackedRun } from './packed-run.ts';
import { piecesOf, takeApart } from './shape.ts';

/**
 * Judges a run that comes from outside by some of its events: those that have between them each of its shapes and texts,
 * every event with extras, and the extremes of its numbers. `judge` says what is wrong with an event, or null; the parts of
 * an event are right or wrong on their own, so that the others are right when these are. Null when nothing is wrong.
 * Never throws. The chain inside the run is not looked at: see `entriesOf`.
 */
export function problemOfRun(run: PackedRun, judge: (event: unknown) => string | null): string | null {
  try {
    const wanted = tellingRows(run);
    for (const { at, text } of eventTexts(run, (row) => wanted.has(row))) {
      const event: unknown = JSON.parse(text);
      const problem = judge(event);
      if (problem !== null) return problem;
      const shape = run.shapes[run.columns.shape[at] ?? -1];
      // A hole where `takeApart` makes none could hold anything in the events that are not looked at.
      if (shape !== text && takeApart(event as object, run.base).shape !== shape)
        return 'an event is not packed as it ought to be';
    }
    return null;
  } catch (error) {
    return String(error);
  }
}

function tellingRows(run: PackedRun): ReadonlySet<number> {
  const rows = new Set<number>([0]);
  const { shape, day, person, tray, wall, time, tick, elapsed } = run.columns;
  for (const column of [shape, day, person, tray]) addFirsts(column, rows);
  const hasExtras = run.shapes.map((text) => piecesOf(text).extras > 0);
  shape.forEach((each, at) => {
    if (hasExtras[each] !== false) rows.add(at);
  });
  for (const column of [wall, tick, elapsed]) rows.add(rowOfLargest(column.length, (at) => column[at] ?? 0));
  // The earliest time of all: it must not be before 1970.
  rows.add(rowOfLargest(time.length, (at) => (time[at] ?? 0) - (wall[at] ?? 0)));
  return rows;
}

/** The first row of each value. */
function addFirsts(column: Column, rows: Set<number>): void {
  const met = new Set<number>();
  column.forEach((each, at) => {
    if (met.has(each)) return;
    met.add(each);
    rows.add(at);
  });
}

function rowOfLargest(length: number, value: (at: number) => number): number {
  let best = 0;
  for (let at = 1; at < length; at += 1) if (value(at) > value(best)) best = at;
  return best;
}
