import { identityOn } from '../log/branch.ts';
import type { EventId } from '../log/version-vector.ts';
import type { LogRun, Row } from './log-run.ts';

/** Finds events by identity; what a branch says of its own events is looked for on that branch. */
export function rowFinder(runs: readonly LogRun[]): (by: LogRun, id: EventId) => Row | undefined {
  const byStation = new Map<string, LogRun[]>();
  for (const of of runs) {
    const { station } = identityOn(of.branch, { station: of.run.station, seq: of.run.first });
    const ofStation = byStation.get(station) ?? [];
    ofStation.push(of);
    byStation.set(station, ofStation);
  }
  let last: LogRun | undefined;

  return (by, id) => {
    // Most of what is taken back lies close by.
    const { station, seq } = identityOn(by.branch, id);
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

function rowIn(of: LogRun, { station, seq }: EventId): Row | undefined {
  const { run, branch } = of;
  const first = identityOn(branch, { station: run.station, seq: run.first });
  const at = seq - first.seq;
  return first.station === station && at >= 0 && at < run.entries ? { of, at } : undefined;
}
