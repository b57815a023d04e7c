import type { TrayFacts } from '../log/event.ts';
import { readEvent } from '../log/read-event.ts';
import type { SummedEvent } from '../shop/projection.ts';
import { addToTables, countersOf, emptyTables, type LogTables } from './log-tables.ts';
import { noFacts, sampleEvent } from './sample-event.ts';
import { piecesOf } from './shape.ts';

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

/**
 * What events of a shape do to the tables, as the sums of the shop have it, given the tray that they are about. The shape
 * is judged once, for all trays.
 */
export function effectsOf(shape: string, cells: Cells): (of: TrayFacts) => Effect {
  let event: unknown = sampleEvent(shape, noFacts);
  if (readEvent(event).kind !== 'known') return () => none;
  let times = 1;
  while (isVoid(event)) {
    event = event.event;
    times = -times;
  }
  const sample = event as SummedEvent;
  // An event that could not be taken apart is a shape of its own, and names its tray itself.
  const namesTray = !piecesOf(shape).holes.some((hole) => 'kind' in hole && hole.kind === 'tray');
  return (of) => {
    const tables = emptyTables();
    addToTables(tables, { event: namesTray ? sample : ({ ...sample, of } as SummedEvent), times });
    const found = countersOf(tables).flatMap((counter, at) =>
      [...counter].map(([key, amount]) => ({ cell: cells.indexOf(at, key), amount })),
    );
    return { cells: found.map(({ cell }) => cell), amounts: found.map(({ amount }) => amount) };
  };
}

export function isVoid(event: unknown): event is { readonly kind: 'voided'; readonly event: unknown } {
  return (event as { readonly kind?: unknown }).kind === 'voided';
}
