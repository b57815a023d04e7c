import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { LogStore } from '../store/log-store.ts';
import type { MarkKeeper } from '../store/mark.ts';
import type { Reach, Twin } from '../store/twin.ts';
import { twinnedLog } from '../store/twinned-log.ts';
import type { SafetyNet } from './saver.ts';

/** What is known of the two copies of the log on this tablet. */
interface CopiesState {
  /** How far the second copy goes; null until the first comparison, 'failed' when it could not be read or written. */
  readonly twin: Reach | 'failed' | null;
  /** Taps that were put back into the store since the shop was opened. */
  readonly putBack: number;
  /** Entries that were here once and that neither copy has; 0 when nothing is missing. */
  readonly missing: number;
  /** A write has failed: until a later start has found the store whole, the second copy has to have each tap too. */
  readonly suspect: boolean;
}

export interface TwoCopies {
  /** The log that the shop works with. */
  readonly log: LogStore;
  readonly net: SafetyNet;
  readonly state: ReadonlySignal<CopiesState>;
  /** Compares the copies and heals the one that has less. Never rejects. */
  readonly compare: () => Promise<void>;
  /** The person has seen what was put back. */
  readonly seen: () => void;
  /** The person goes on without what is missing. */
  readonly goOnWithout: () => Promise<void>;
  /** The station that this tablet wrote under before, when it is another one now. */
  readonly stationBefore: () => string | null;
}

export interface TwoCopiesParts {
  readonly store: LogStore;
  readonly twin: Twin;
  readonly marks: MarkKeeper;
  readonly now: () => number;
  /** Runs something once the screen has had its time, in the order of the calls. */
  readonly later: (run: () => void) => void;
  /** Taps that were put back before the shop had to be opened anew, and that nobody has read of yet. */
  readonly putBack?: number | undefined;
  /** The store has got entries, or a new station, by a comparison. */
  readonly onHealed: (what: { readonly renewed: boolean }) => void;
}

/** A store with its twin. When the store may have lost something, it is not handed out before both were compared. */
export async function openTwoCopies(parts: TwoCopiesParts): Promise<TwoCopies> {
  const { store, twin, marks, now, later, onHealed } = parts;
  const markBefore = marks.read();
  const wasSuspect = marks.isSuspect();
  const { putBack = 0 } = parts;
  const state: Signal<CopiesState> = signal({ twin: null, putBack, missing: 0, suspect: wasSuspect });
  let freshened = false;
  let running: Promise<void> | undefined;

  const change = (next: Partial<CopiesState>) => {
    state.value = { ...state.value, ...next };
  };
  const log = twinnedLog({
    log: store,
    twin,
    isSuspect: () => marks.isSuspect() && state.value.twin !== 'none',
    onStored(entries) {
      const last = entries.at(-1)?.event;
      const mark = marks.read();
      if (last && last.station === store.station() && state.value.missing === 0) {
        // A tap that is tried again comes back under its old number: the mark only rises.
        const seq = mark?.station === last.station ? Math.max(mark.seq, last.seq) : last.seq;
        marks.note({ station: last.station, seq, entries: mark?.entries ?? 0 });
      }
      if (marks.isSuspect() && !freshened) {
        freshened = true;
        void Promise.all([store.freshen(), twin.freshen()]).catch(() => {
          freshened = false;
        });
      }
    },
    onBehind: () => change({ twin: 'failed' }),
    later,
  });

  async function compareNow(): Promise<void> {
    try {
      const { compareCopies } = await import('./compare-copies.ts');
      const found = await compareCopies({ log: store, twin }, now());
      const most = Math.max(markBefore?.entries ?? 0, marks.read()?.entries ?? 0);
      const missing = Math.max(0, most - found.entries);
      change({ twin: found.reach, missing, putBack: state.value.putBack + found.putBack });
      if (missing === 0) await noteMark(found.entries);
      // Where the store has lost something the small storage may have, too.
      if (found.putBack > 0) await twin.freshen().catch(() => undefined);
      if (found.putBack > 0 || found.renewed) onHealed({ renewed: found.renewed });
    } catch {
      change({ twin: 'failed' });
      await countMissing().catch(() => undefined);
    }
  }

  /** Without a second copy there is still the mark. */
  async function countMissing(): Promise<void> {
    const { records } = await store.holding();
    change({ missing: Math.max(0, (markBefore?.entries ?? 0) - records) });
  }

  async function noteMark(entries: number): Promise<void> {
    const own = await store.latestOwn(1);
    marks.note({ station: store.station(), seq: own.events[0]?.seq ?? 0, entries });
  }

  /** One comparison at a time; who asks meanwhile waits for the same. */
  function compare(): Promise<void> {
    running ??= compareNow().finally(() => {
      running = undefined;
    });
    return running;
  }

  if (wasSuspect || (await mayHaveLost())) {
    await compare();
    if (wasSuspect && state.value.missing === 0) {
      // The store was opened anew and holds all that is known of: it is believed again.
      marks.suspect(false);
      change({ suspect: false });
    }
  } else void compare();

  async function mayHaveLost(): Promise<boolean> {
    const { written, records } = await store.holding();
    if (records === 0 || records !== written.entries) return true;
    if (!markBefore) return false;
    const { events } = await store.latestOwn(1);
    return (
      markBefore.station !== store.station() ||
      (events[0]?.seq ?? 0) < markBefore.seq ||
      records < markBefore.entries
    );
  }

  return {
    log,
    state,
    compare,
    net: {
      unsaved: (act) => void twin.keepAct(act).catch(() => undefined),
      doubt() {
        marks.suspect(true);
        freshened = false;
        change({ suspect: true });
      },
      saved: (act) => void twin.settleAct(act.act).catch(() => undefined),
    },
    seen: () => change({ putBack: 0 }),
    async goOnWithout() {
      change({ missing: 0 });
      // A mark that cannot be written tells of the same loss at the next start.
      const { records } = await store.holding();
      await noteMark(records);
    },
    stationBefore: () => (markBefore && markBefore.station !== store.station() ? markBefore.station : null),
  };
}
