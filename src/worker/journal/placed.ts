import type { RunHead } from '../../domain/packed/packed-run.ts';

/** Where a line lies, in bytes. */
export interface Place {
  readonly file: string;
  readonly from: number;
  readonly to: number;
}

/** An entry or a run in the journal. */
export interface Placed extends Place {
  readonly head: RunHead;
}
