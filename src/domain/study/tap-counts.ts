import type { TrayFacts } from '../log/event.ts';
import { type TapFilter, tapFilter } from './tap-filter.ts';
import type { TapKind } from './tap-kind.ts';
import type { TapTable } from './tap-table.ts';

/** Taps that say the same of the same wood, variant and batch. */
export interface TapCount {
  readonly what: TapKind;
  /** Wood, variant and batch; null of what is about no tray. */
  readonly of: Pick<TrayFacts, 'species' | 'variant' | 'batch'> | null;
  readonly taps: number;
}

/**
 * How many taps there are of each kind × wood, variant and batch: all that most questions have to read. One pass over a
 * table, however long, leaves some thousands of these.
 */
export function tapCounts(table: TapTable, filter: TapFilter = {}): readonly TapCount[] {
  const { groups, groupOf } = groupsOf(table.trays);
  const { kind, tray } = table.columns;
  const isWanted = tapFilter(table, filter);
  const cells = groups.length + 1;
  const counts = new Map<number, number>();
  for (let row = 0; row < table.length; row += 1) {
    if (!isWanted(row)) continue;
    const group = groupOf[tray[row] ?? -1] ?? groups.length;
    const cell = (kind[row] ?? 0) * cells + group;
    counts.set(cell, (counts.get(cell) ?? 0) + 1);
  }
  return [...counts].flatMap(([cell, taps]) => {
    const what = table.kinds[Math.floor(cell / cells)];
    return what ? [{ what, of: groups[cell % cells] ?? null, taps }] : [];
  });
}

function groupsOf(trays: readonly TrayFacts[]) {
  const groups: NonNullable<TapCount['of']>[] = [];
  const indexes = new Map<string, number>();
  const groupOf = Uint32Array.from(trays, ({ species, variant, batch }) => {
    const name = `${species}|${variant}|${batch}`;
    const index = indexes.get(name) ?? groups.push({ species, variant, batch }) - 1;
    indexes.set(name, index);
    return index;
  });
  return { groups, groupOf };
}
