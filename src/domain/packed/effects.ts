import { readEvent } from '../log/read-event.ts';
import type { SummedEvent } from '../shop/projection.ts';
import { addToTables, countersOf, emptyTables, type LogTables } from './log-tables.ts';
import { sampleEvent } from './sample-event.ts';

/** What one event adds to the tables: amounts, and in which cells. */
export interface Effect {
  readonly cells: readonly number[];
  readonly amounts: readonly number[];
}

/** The cells of the tables, numbered as they are met. */
export interface Cells {
  readonly indexOf: (counter: number, key: string) => number;
  readonly count: () => number;
  /** The tables, given what stands in each cell. */
  readonly tables: (totals: Float64Array) => LogTables;
}

export function newCells(): Cells {
  const indexes = new Map<string, number>();
  const places: { readonly counter: number; readonly key: string }[] = [];
  return {
    indexOf(counter, key) {
      const name = `${counter} ${key}`;
      const index = indexes.get(name) ?? places.length;
      if (index === places.length) {
        indexes.set(name, index);
        places.push({ counter, key });
      }
      return index;
    },
    count: () => places.length,
    tables(totals) {
      const tables = emptyTables();
      const counters = countersOf(tables);
      places.forEach(({ counter, key }, index) => {
        const total = totals[index] ?? 0;
        if (total !== 0) counters[counter]?.set(key, total);
      });
      return tables;
    },
  };
}

const none: Effect = { cells: [], amounts: [] };

/** What events of a shape about a tray with these facts (JSON) do to the tables, as the sums of the shop have it. */
export function effectOf(shape: string, { facts, cells }: { facts: string; cells: Cells }): Effect {
  let event: unknown = sampleEvent(shape, facts);
  if (readEvent(event).kind !== 'known') return none;
  let times = 1;
  while (isVoid(event)) {
    event = event.event;
    times = -times;
  }
  const tables = emptyTables();
  addToTables(tables, { event: event as SummedEvent, times });
  const found = countersOf(tables).flatMap((counter, at) =>
    [...counter].map(([key, amount]) => ({ cell: cells.indexOf(at, key), amount })),
  );
  return { cells: found.map(({ cell }) => cell), amounts: found.map(({ amount }) => amount) };
}

export function isVoid(event: unknown): event is { readonly kind: 'voided'; readonly event: unknown } {
  return (event as { readonly kind?: unknown }).kind === 'voided';
}
