import type { Random } from '../domain/chance/seeded-random.ts';
import { backOff } from './back-off.ts';
import { type Exchange, Refused } from './exchange.ts';
import { photoBook } from './photo-book.ts';
import { type PhotoTraderParts, photoTrader } from './photo-trader.ts';
import type { PhotosStatus, ReplicaStatus } from './replica-status.ts';
import type { ReplicatorParts } from './replicator.ts';

export interface PhotoReplicatorParts
  extends Pick<ReplicatorParts, 'timer'>,
    Pick<PhotoTraderParts, 'shelf' | 'desk' | 'seat' | 'onAside'> {
  readonly store: Parameters<typeof photoBook>[0];
  /** Opens a line to the photos on the broker; rejects where that cannot be done now. */
  readonly open: () => Promise<Exchange>;
  readonly random: Random;
  readonly onStatus: (status: PhotosStatus) => void;
}

export interface PhotoReplicator {
  /** The log has grown, or may have. */
  readonly news: () => void;
  /** How the log stands: photos go only while it is up to date. */
  readonly logIs: (status: ReplicaStatus) => void;
  /** Whether this tablet wants photos at all. */
  readonly setWanted: (isWanted: boolean) => void;
  /** Tries at once what it would try after a while. */
  readonly hurry: () => void;
  readonly stop: () => Promise<void>;
}

/** Between two looks at what the broker holds (ms). */
const betweenLooks = 3 * 60_000;
/** A photo that the log names and the broker lacks is mostly on its way: it is looked for after so long, then after longer (ms). */
const firstLook = 3000;
/** Photos that others took are sent when they are still missing after at least, and at most, so long (ms). */
const patience = { least: 20_000, most: 60_000 };

class NotNow extends Error {
  override readonly name = 'NotNow';
}

/** Keeps the photos of a tablet and those on a broker the same, for as long as it runs and is wanted; a tap never waits for it. */
export function photoReplicator(parts: PhotoReplicatorParts): PhotoReplicator {
  const { timer, random } = parts;
  const todo = { trade: true, others: false };
  const state = { stopped: false, wanted: false, calm: false, isLogNews: true, hasPhotos: false };
  let status: PhotosStatus = { toSend: 0, toFetch: 0, refused: null };
  let edition = -1;
  let looks = 0;
  let line: Exchange | undefined;
  const waiting = new Set<() => void>();
  const change = () => new Promise<void>((resolve) => waiting.add(resolve));
  const cancels = new Map<string, () => void>();
  const read = photoBook(parts.store);

  function wake(): void {
    for (const resolve of waiting) resolve();
    waiting.clear();
  }

  /** One timer for each purpose. */
  function later(what: string, ms: number, run: () => void): void {
    cancels.get(what)?.();
    cancels.set(what, timer.after(ms, run));
  }

  function ask(what: keyof typeof todo): void {
    todo[what] = true;
    wake();
  }

  function tell(change: Partial<PhotosStatus>): void {
    status = { ...status, ...change };
    parts.onStatus(status);
  }

  /** Waits while the log is busy; throws when photos are wanted no longer. */
  async function turn(): Promise<void> {
    while (!state.stopped && state.wanted && !state.calm) await change();
    if (state.stopped || !state.wanted) throw new NotNow();
  }

  const { trade } = photoTrader({ ...parts, read, turn, onWaiting: tell });

  async function readNews(): Promise<void> {
    state.isLogNews = false;
    const named = await read();
    if (named.edition === edition) return;
    edition = named.edition;
    state.hasPhotos = named.wanted.size + named.letGo.size > 0;
    looks = 0;
    todo.trade = true;
  }

  async function tradeNow(): Promise<void> {
    const { others } = todo;
    Object.assign(todo, { trade: false, others: false });
    line = await parts.open();
    const isLost = line.closed.then(() => Promise.reject(new Error('the line is lost')));
    isLost.catch(() => undefined);
    try {
      const { nowhere, ofOthers, ...done } = await Promise.race([trade(line, others), isLost]);
      if (done.edition !== edition) looks = 0;
      edition = done.edition;
      tell({ refused: null });
      const { least, most } = patience;
      if (ofOthers > 0) later('others', least + random() * (most - least), () => ask('others'));
      const between = nowhere > 0 ? Math.min(betweenLooks, firstLook * 2 ** looks) : betweenLooks;
      looks += 1;
      later('look', between * (0.5 + random()), () => ask('trade'));
    } finally {
      line.close();
      line = undefined;
    }
  }

  const isDue = () => state.isLogNews || (state.hasPhotos && (todo.trade || todo.others));

  async function run(): Promise<void> {
    let tries = 0;
    while (!state.stopped) {
      if (!state.wanted || !state.calm || !isDue()) {
        await change();
        continue;
      }
      try {
        if (state.isLogNews) await readNews();
        if (isDue()) await tradeNow();
        tries = 0;
      } catch (error) {
        if (state.stopped) break;
        todo.trade = true;
        if (error instanceof NotNow) continue;
        if (error instanceof Refused) tell({ refused: error.why });
        await pause(backOff(tries, random));
        tries += 1;
      }
    }
    for (const cancel of cancels.values()) cancel();
  }

  let hurryUp = () => {};
  async function pause(ms: number): Promise<void> {
    await new Promise<void>((resolve) => {
      hurryUp = resolve;
      later('pause', ms, resolve);
    });
    hurryUp = () => {};
  }

  const running = run();
  return {
    news() {
      state.isLogNews = true;
      wake();
    },
    logIs({ kind }) {
      state.calm = kind === 'up-to-date';
      wake();
    },
    setWanted(isWanted) {
      state.wanted = isWanted;
      if (!isWanted) {
        line?.close();
        tell({ toSend: 0, toFetch: 0, refused: null });
      }
      wake();
    },
    hurry() {
      hurryUp();
      ask('trade');
    },
    async stop() {
      state.stopped = true;
      line?.close();
      hurryUp();
      wake();
      await running;
    },
  };
}
