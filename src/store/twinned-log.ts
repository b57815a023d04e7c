import type { Entry } from '../domain/log/chain.ts';
import type { Parcel } from '../domain/packed/parcel.ts';
import type { LogStore } from './log-store.ts';
import type { Twin } from './twin.ts';

export interface TwinnedLogParts {
  readonly log: LogStore;
  readonly twin: Twin;
  /** Whether the store alone is no longer believed: an act then counts only when the twin has it too. */
  readonly isSuspect: () => boolean;
  /** What the store has taken, in the order of the acts; what came packed is not named. */
  readonly onStored: (entries: readonly Entry[]) => void;
  /** The twin did not take what the store has: the two are to be compared again. */
  readonly onBehind: () => void;
}

/** The log of `log`, of which everything that is stored goes to the twin too: after the commit, and never in its way. */
export function twinnedLog({ log, twin, isSuspect, onStored, onBehind }: TwinnedLogParts): LogStore {
  async function copy(parcel: Parcel): Promise<void> {
    if (parcel.runs.length + parcel.entries.length === 0) return;
    try {
      await twin.add(parcel);
    } catch (error) {
      onBehind();
      throw error;
    }
  }
  async function stored(parcel: Parcel): Promise<void> {
    const copied = copy(parcel);
    if (isSuspect()) await copied;
    else copied.catch(() => undefined);
    onStored(parcel.entries);
  }
  return {
    ...log,
    async append(act) {
      const entries = await log.append(act);
      await stored({ runs: [], entries });
      return entries;
    },
    async merge(incoming) {
      const merged = await log.merge(incoming);
      await stored(merged.added);
      return merged;
    },
    close() {
      log.close();
      twin.close();
    },
  };
}
