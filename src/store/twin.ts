import type { Holding } from '../domain/log/holding.ts';
import type { RunHead } from '../domain/packed/packed-run.ts';
import type { Parcel } from '../domain/packed/parcel.ts';
import type { Act } from './log-store.ts';

/**
 * How far back a copy goes. A tail keeps the last few hundred entries and counts them all: what it has can be put
 * back, and that it lacks older ones is no loss. Where the reach is none, nothing can be kept and `add` rejects.
 */
export type Reach = 'all' | 'tail' | 'none';

interface TwinReport {
  readonly reach: Reach;
  /** Of a tail: all that was ever added to it. */
  readonly holding: Holding;
  /** Lines that could not be read: torn by a crash, or changed. They are left where they are. */
  readonly unreadable: number;
  /** Acts that were tapped and not stored before their window ended. */
  readonly unsettled: readonly Act[];
}

/**
 * The second copy of the log, outside of IndexedDB: a journal that is only added to. Every promise rejects when the
 * copy cannot do what was asked; a resolved `add`, `keepAct` or `settleAct` is flushed to the disk.
 */
export interface Twin {
  /** Reads what the copy holds, also what other windows have added since. */
  readonly look: () => Promise<TwinReport>;
  /** Adds entries, packed or not; those that the copy has already are left as they are. */
  readonly add: (parcel: Parcel) => Promise<void>;
  /** Keeps an act that the store has not taken yet. */
  readonly keepAct: (act: Act) => Promise<void>;
  /** The act of this name is in the store, or was given up by the person. It is never unsettled again. */
  readonly settleAct: (act: string) => Promise<void>;
  /** Writes again what may not have got to the disk while that failed. */
  readonly freshen: () => Promise<void>;
  /** What it had at the last look and what was added here since: a head for each run, and for each single entry one. */
  readonly heads: () => Promise<readonly RunHead[]>;
  /** What it has under these heads, as it was written; what it has not, or is no longer sound, is left out. */
  readonly parcel: (heads: readonly RunHead[]) => Promise<Parcel>;
  readonly close: () => void;
}
