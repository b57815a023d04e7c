import { type Signal, signal } from '@preact/signals';
import { factOf } from '../domain/shop/registers.ts';
import type { CopyToKeep } from '../store/backup/copies.ts';
import { type CopyMark, copyIsDue } from './copy-due.ts';
import type { LogToCopy } from './copy-work.ts';
import type { CopyMemory, KnownCopies } from './known-copies.ts';
import { eventsSeen, logSize } from './log-size.ts';
import type { Turn } from './one-at-a-time.ts';
import type { Timer } from './saver.ts';
import type { Session } from './session.ts';

/** A copy of the whole log that is to be made; none is made of a log that has fewer entries than `least`. */
export interface CopyOrder extends Pick<CopyToKeep, 'about' | 'day' | 'kind'> {
  readonly log: LogToCopy;
  readonly least: number;
}

/** What came of a try to copy the log: `guarded` is a copy not made because it would have lost entries of an older one. */
export type CopyResult =
  | { readonly kind: 'kept'; readonly entries: number }
  | { readonly kind: 'guarded' | 'failed' | 'busy' | 'saving' | 'no-shelf' };

export interface KeeperParts {
  readonly session: Pick<Session, 'view' | 'saving' | 'today' | 'now' | 'entries'>;
  /** The name of the database that has the log; null where the log is held in memory. */
  readonly store: string | null;
  readonly memory: CopyMemory;
  /** Puts a copy on the tablet's shelf, read back and counted; null where the tablet has none. */
  readonly keepCopy: ((order: CopyOrder) => Promise<CopyResult>) | null;
  /** Writes a copy to the maker's folder if one was chosen and may be written to without asking. */
  readonly writeOutside: (order: CopyOrder) => Promise<void>;
  readonly runAlone: <Result>(work: () => Promise<Result>) => Promise<Turn<Result>>;
  readonly timer: Timer;
  readonly version: string;
}

export interface Keeper {
  /** Whether a copy is being made in this window. */
  readonly working: Signal<boolean>;
  /** Copies the log now. */
  readonly keep: (kind?: CopyOrder['kind']) => Promise<CopyResult>;
  /** Copies the log if a copy is due and nobody has tapped since the last look. */
  readonly look: () => Promise<void>;
  readonly stop: () => void;
}

/** How often (ms) it is looked whether a copy is due. */
const between = 20_000;
/** A hand that taps is left alone, but not for more looks than this: copying a long log keeps a tablet busy for a while. */
const mostWaits = 30;
/** After a failure the next try comes no sooner (ms). */
const afterFailure = 15 * 60_000;

/** The whole log as it is now. Rejects when a log in memory cannot be read. */
export async function logAsItIs({
  session,
  store,
}: Pick<KeeperParts, 'store'> & { readonly session: Pick<Session, 'entries'> }): Promise<LogToCopy> {
  return store === null
    ? { kind: 'entries', entries: await session.entries() }
    : { kind: 'store', name: store };
}

/** The order for a copy of the whole log as it is now. Rejects when a log in memory cannot be read. */
export async function orderCopy(
  { session, store, version }: Pick<KeeperParts, 'session' | 'store' | 'version'>,
  kind: CopyOrder['kind'] = 'usual',
): Promise<CopyOrder> {
  const { shop } = session.view.value;
  // What is on the screen and not in the store would be missing from the copy without a word.
  const least = eventsSeen(shop.seen);
  const fact = factOf(shop.registers, { register: 'shop', id: 'shop' });
  const about = { version, wall: session.now(), zone: fact?.zone ?? 'UTC', shop: fact?.name ?? null };
  const day = session.today();
  const log = await logAsItIs({ session, store });
  return { log, least, about, day, kind };
}

/** Keeps copies of an open shop's log by itself, one at a time, and never while a tap is being saved. */
export function openKeeper(parts: KeeperParts): Keeper {
  const { session, memory, timer } = parts;
  const working = signal(false);
  let cancel = timer.after(between, tick);
  let lastLooked = logSize(session);
  let waits = 0;
  /** The last try where the tablet has no shelf: nothing is remembered of it. */
  let withoutShelf: CopyMark | null = null;

  const markNow = () => ({ at: session.now(), day: session.today(), log: logSize(session) });

  async function keep(kind: CopyOrder['kind'] = 'usual'): Promise<CopyResult> {
    if (working.value) return { kind: 'busy' };
    if (!isQuiet(session)) return { kind: 'saving' };
    working.value = true;
    try {
      const turn = await parts.runAlone(() => copy(kind));
      return turn.kind === 'ran' ? turn.result : turn;
    } finally {
      working.value = false;
    }
  }

  async function copy(kind: CopyOrder['kind']): Promise<CopyResult> {
    const mark = markNow();
    try {
      const order = await orderCopy(parts, kind);
      const result = parts.keepCopy ? await parts.keepCopy(order) : ({ kind: 'no-shelf' } as const);
      if (result.kind === 'no-shelf') withoutShelf = mark;
      if (result.kind === 'kept') memory.note({ kept: { ...mark, entries: result.entries }, trouble: null });
      if (result.kind === 'guarded' || result.kind === 'failed')
        memory.note({ trouble: { ...mark, kind: result.kind } });
      // A log that lacks what an older copy has is not carried outside either.
      if (result.kind !== 'guarded') await parts.writeOutside(order);
      return result;
    } catch {
      memory.note({ trouble: { ...mark, kind: 'failed' } });
      return { kind: 'failed' };
    }
  }

  async function look(): Promise<void> {
    const { at, day, log } = markNow();
    const { trouble } = memory.known.value;
    if (trouble?.kind === 'failed' && Math.abs(at - trouble.at) < afterFailure) return;
    const lastCopy = withoutShelf ?? lastTried(memory.known.value);
    const isTapping = log !== lastLooked;
    lastLooked = log;
    const isDue = copyIsDue({ lastCopy, now: at, day, entries: log }) !== null;
    waits = isDue && isTapping ? waits + 1 : 0;
    if (!isDue || (waits > 0 && waits <= mostWaits)) return;
    // What goes wrong before the work begins (a lock that is refused) is tried again at the next look.
    await keep().catch(() => undefined);
  }

  function tick(): void {
    cancel = timer.after(between, tick);
    void look();
  }

  return { working, keep, look, stop: () => cancel() };
}

/** A copy that was guarded would be guarded again: it counts as tried until the log has changed as for a new one. */
function lastTried({ kept, trouble }: KnownCopies) {
  return trouble?.kind === 'guarded' ? trouble : kept;
}

function isQuiet({ saving }: Pick<Session, 'saving'>): boolean {
  return saving.value.kind === 'idle' || saving.value.kind === 'saved';
}
