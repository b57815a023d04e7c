import { type Branch, identityOn, toldApart } from '../domain/log/branch.ts';
import type { StationId } from '../domain/log/ids.ts';
import type { LogEvent } from '../domain/log/read-event.ts';
import type { PackedRun, RunHead } from '../domain/packed/packed-run.ts';
import { subjectsOfShape } from './subjects-of-shape.ts';

/** What a store keeps of a run besides its pack: enough to know what is in it without opening it. */
export interface RunRecord {
  /** The identity that its first entry has here, and the number that its last one has. */
  readonly station: StationId;
  readonly seq: number;
  readonly last: number;
  /** Whose history it has a part of. */
  readonly trays: readonly string[];
  /** The run as its station wrote it. */
  readonly run: RunHead;
  /** The branch of a cloned station that it lies on. */
  readonly branch?: Branch;
}

export function runRecordOf(run: PackedRun, branch?: Branch): RunRecord {
  const { station, first, entries, prev, link, sum } = run;
  const here = identityOn(branch, { station, seq: first });
  return {
    ...{ ...here, last: here.seq + entries - 1 },
    trays: subjectsIn(run),
    run: { station, first, entries, prev, link, sum },
    ...(branch && { branch }),
  };
}

/** Facts of trays stand in the dictionary; what else an event is about, its shape says. */
function subjectsIn({ trays, shapes }: PackedRun): readonly string[] {
  return [
    ...new Set([
      ...trays.map((facts) => String((JSON.parse(facts) as { tray?: unknown }).tray)),
      ...shapes.flatMap(subjectsOfShape),
    ]),
  ];
}

/** An event under the identity that it has in this store. */
export function asHere<E extends LogEvent>(event: E, branch: Branch | undefined): E {
  return branch ? toldApart(event, branch) : event;
}
