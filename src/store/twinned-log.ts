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
  /** Runs something once the screen has had its time, in the order of the calls. */
  readonly later: (run: () => void) => void;
}

/** The log of `log`, of which everything that is stored goes to the twin too: after the commit, and never in its way. */
export function twinnedLog({ log, twin, isSuspect, onStored, onBehind, later }: TwinnedLogParts): LogStore {
  const waiting = new Set<() => void>();
  /** Done at the latest when the log is closed. A window that ends before leaves it to the next comparison. */
  function afterwards(work: () => void): void {
    const once = () => waiting.delete(once) && work();
    waiting.add(once);
    later(once);
  }

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
      const parcel = { runs: [], entries };
      if (isSuspect()) await stored(parcel);
      else afterwards(() => void stored(parcel).catch(() => undefined));
      return entries;
    },
    async merge(incoming) {
      const merged = await log.merge(incoming);
      await stored(merged.added);
      return merged;
    },
    close() {
      for (const once of waiting) once();
      log.close();
      twin.close();
    },
  };
}
