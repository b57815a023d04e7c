import type { Branch } from '../log/branch.ts';
import type { LogRun, Row } from './log-run.ts';

/** An event as a station of a log named it. */
interface Named {
  readonly station: string;
  readonly seq: number;
}

/** Finds events by identity; what a branch says of its own events is looked for on that branch. */
export function rowFinder(runs: readonly LogRun[]): (by: LogRun, id: Named) => Row | undefined {
  const byStation = new Map<string, LogRun[]>();
  for (const of of runs) {
    const { station } = here(of.branch, { station: of.run.station, seq: of.run.first });
    const ofStation = byStation.get(station) ?? [];
    ofStation.push(of);
    byStation.set(station, ofStation);
  }
  let last: LogRun | undefined;

  return (by, id) => {
    // Most of what is taken back lies close by.
    const { station, seq } = here(by.branch, id);
    const near = last && rowIn(last, { station, seq });
    if (near) return near;
    for (const of of byStation.get(station) ?? []) {
      const row = rowIn(of, { station, seq });
      if (row) {
        last = of;
        return row;
      }
    }
    return undefined;
  };
}

function rowIn(of: LogRun, { station, seq }: Named): Row | undefined {
  const { run, branch } = of;
  const first = here(branch, { station: run.station, seq: run.first });
  const at = seq - first.seq;
  return first.station === station && at >= 0 && at < run.entries ? { of, at } : undefined;
}

function here(branch: Branch | undefined, { station, seq }: Named): Named {
  return branch && station === branch.of && seq > branch.after
    ? { station: branch.station, seq: seq - branch.after }
    : { station, seq };
}
