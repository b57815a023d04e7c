import type { ShopEvent } from '../log/event.ts';
import type { LogRun } from '../packed/log-run.ts';
import { runAdder } from './packed-taps.ts';
import { inOrder } from './tap-order.ts';
import { tapRows } from './tap-rows.ts';
import type { TapTable } from './tap-table.ts';

/** A whole log to be studied: what is packed in its runs, and single events under the identity that they have here. */
export interface LogToStudy {
  readonly runs: readonly LogRun[];
  readonly events: readonly ShopEvent[];
}

export function entriesIn({ runs, events }: LogToStudy): number {
  return runs.reduce((sum, { run }) => sum + run.entries, events.length);
}

/**
 * The table of a log: the same whatever order its events come in, however often, and however they are packed. Throws when
 * a run is not whole.
 */
export function tapTable(log: LogToStudy): TapTable {
  const rows = tapRows(entriesIn(log));
  log.runs.forEach(runAdder(rows));
  for (const event of log.events) rows.addEvent(event);
  return inOrder(rows);
}
