import type { Branch } from '../log/branch.ts';
import type { RunColumns } from './log-columns.ts';

/** Where an event of a log in columns lies. */
export interface Row {
  readonly columns: RunColumns;
  readonly at: number;
}

/** An event as a station of a log named it. */
interface Named {
  readonly station: string;
  readonly seq: number;
}

/** Finds events by identity; what a branch says of its own events is looked for on that branch. */
export function rowFinder(runs: readonly RunColumns[]): (by: RunColumns, id: Named) => Row | undefined {
  const byStation = new Map<string, RunColumns[]>();
  for (const columns of runs) {
    const { station } = here(columns.branch, { station: columns.run.station, seq: columns.run.first });
    const ofStation = byStation.get(station) ?? [];
    ofStation.push(columns);
    byStation.set(station, ofStation);
  }
  let last: RunColumns | undefined;

  return (by, id) => {
    // Most of what is taken back lies close by.
    const { station, seq } = here(by.branch, id);
    const near = last && rowIn(last, { station, seq });
    if (near) return near;
    for (const columns of byStation.get(station) ?? []) {
      const row = rowIn(columns, { station, seq });
      if (row) {
        last = columns;
        return row;
      }
    }
    return undefined;
  };
}

function rowIn(columns: RunColumns, { station, seq }: Named): Row | undefined {
  const { run, branch } = columns;
  const first = here(branch, { station: run.station, seq: run.first });
  const at = seq - first.seq;
  return first.station === station && at >= 0 && at < run.entries ? { columns, at } : undefined;
}

function here(branch: Branch | undefined, { station, seq }: Named): Named {
  return branch && station === branch.of && seq > branch.after
    ? { station: branch.station, seq: seq - branch.after }
    : { station, seq };
}
