import type { Entry, Link } from '../domain/log/chain.ts';
import type { Holding } from '../domain/log/holding.ts';
import type { Act } from './log-store.ts';

export interface TwinReport {
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
  readonly add: (entries: readonly Entry[]) => Promise<void>;
  /** Keeps an act that the store has not taken yet. */
  readonly keepAct: (act: Act) => Promise<void>;
  /** The act of this name is in the store, or was given up by the person. */
  readonly settleAct: (act: string) => Promise<void>;
  readonly links: () => Promise<readonly Link[]>;
  /** The entries with these links, as they were written; those that it has not are left out. */
  readonly entries: (links: readonly Link[]) => Promise<readonly Entry[]>;
  readonly close: () => void;
}
