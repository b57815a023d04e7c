import type { Entry } from '../../src/domain/log/chain.ts';
import { packRun, runLength } from '../../src/domain/packed/pack-run.ts';
import type { PackedRun } from '../../src/domain/packed/packed-run.ts';

/** The entries of a log in runs, each as long as can be. */
export function packedRuns(entries: readonly Entry[]): readonly PackedRun[] {
  const runs: PackedRun[] = [];
  const sorted = entries.toSorted((a, b) =>
    a.event.station === b.event.station
      ? a.event.seq - b.event.seq
      : a.event.station < b.event.station
        ? -1
        : 1,
  );
  let rest = sorted.map((entry) => ({ entry }));
  while (rest.length > 0) {
    const length = runLength(rest);
    runs.push(packRun(rest.slice(0, length)));
    rest = rest.slice(length);
  }
  return runs;
}
