import type { Branch } from '../log/branch.ts';
import type { PackedRun } from './packed-run.ts';

/** A run of a log, and the branch of a cloned station that it lies on. */
export interface LogRun {
  readonly run: PackedRun;
  readonly branch?: Branch | undefined;
}

/** Where an event of a log lies: in which run, and how many entries stand before it there. */
export interface Row {
  readonly of: LogRun;
  readonly at: number;
}
