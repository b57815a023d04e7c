import type { Random } from '../domain/chance/seeded-random.ts';
import { backOff } from './back-off.ts';
import { type Exchange, type Refusal, Refused } from './exchange.ts';
import { stillStands } from './meeting.ts';
import type { ReplicaStatus } from './replica-status.ts';
import { type Line, type TraderParts, trader } from './trader.ts';

export interface ReplicatorParts extends Omit<TraderParts, 'onMore' | 'onWaiting'> {
  /** Opens a line to the broker; rejects where that cannot be done now. */
  readonly open: () => Promise<Exchange>;
  readonly timer: { readonly after: (ms: number, run: () => void) => () => void };
  readonly random: Random;
  readonly onStatus: (status: ReplicaStatus) => void;
}

export interface Replicator {
  /** The store has grown, or may have. */
  readonly news: () => void;
  /** Tries at once what it would try after a while. */
  readonly hurry: () => void;
  /** Ends the line to the broker; resolves when nothing is under way any more. */
  readonly stop: () => Promise<void>;
}

/** Taps that come shortly after each other go together (ms). */
const together = 150;
/** Between two looks at whether the broker still holds what it held (ms). */
const betweenLooks = 3 * 60_000;
/** Entries of other stations are sent when they are still missing after at least, and at most, so long (ms). */
const patience = { least: 5000, most: 30_000 };

/** Keeps a store and a broker's copy of the shop the same, for as long as it runs. Nothing that it does is harmed by doing it twice. */
export function replicator(parts: ReplicatorParts): Replicator {
  const { timer, random, now } = parts;
  const todo = { send: false, trade: false, tradeOthers: false, look: false };
  const cancels = new Set<() => void>();
  let stopped = false;
  let stop = () => {};
  let wake = () => {};
  let hurryUp = () => {};
  let cancelLook = () => {};
  let isDue = false;
  let unreachableSince: number | null = null;
  /** Why the broker let nobody in when it was last asked: it stands until somebody is let in, for a person has to mend it. */
  let refused: Refusal | null = null;
  /** Entries that wait to be sent; null before that is known. */
  let waiting: number | null = null;

  function later(ms: number, run: () => void): () => void {
    const cancel = timer.after(ms, () => {
      cancels.delete(cancel);
      run();
    });
    cancels.add(cancel);
    return () => {
      cancels.delete(cancel);
      cancel();
    };
  }

  function ask(what: keyof typeof todo): void {
    todo[what] = true;
    wake();
  }

  function planLook(): void {
    cancelLook();
    cancelLook = later(betweenLooks * (0.5 + random()), () => ask('look'));
  }

  function tell(): void {
    if (waiting) parts.onStatus({ kind: 'to-send', entries: waiting });
    else parts.onStatus({ kind: 'up-to-date' });
  }

  const { meet, take, trade, sendNews, unsent } = trader({
    ...parts,
    onMore: () => ask('trade'),
    onWaiting(entries) {
      waiting = entries;
      tell();
    },
  });

  async function tradeNow(line: Line): Promise<void> {
    const withOthers = todo.tradeOthers;
    Object.assign(todo, { send: false, trade: false, tradeOthers: false });
    const { least, most } = patience;
    if ((await trade(line, withOthers)) > 0)
      later(least + random() * (most - least), () => ask('tradeOthers'));
  }

  /** Meets the broker and stays in touch; resolves when the broker has to be met anew, rejects when the line is lost. */
  async function session(exchange: Exchange, onMet: () => void): Promise<void> {
    parts.onStatus({ kind: 'meeting' });
    const line = await meet(exchange);
    const isStill = stillStands(line);
    onMet();
    [unreachableSince, refused] = [null, null];
    const lost = exchange.closed.then(() => Promise.reject(new Error('the line is lost')));
    lost.catch(() => undefined);
    planLook();
    await tradeNow(line);
    exchange.follow(line.ledger.last(), (batch) => take(batch, line)).catch(exchange.close);

    async function work(): Promise<boolean> {
      if (todo.trade || todo.tradeOthers) await tradeNow(line);
      else if (todo.send) {
        todo.send = false;
        await sendNews(line);
      } else {
        todo.look = false;
        if (!(await isStill())) return false;
        todo.trade = true;
        planLook();
      }
      return true;
    }

    for (;;) {
      if (Object.values(todo).some(Boolean)) {
        if (!(await Promise.race([work(), lost]))) return;
        continue;
      }
      tell();
      const woken = new Promise<void>((resolve) => {
        wake = resolve;
      });
      await Promise.race([woken, lost]);
    }
  }

  function tellTrouble(error: unknown): void {
    unreachableSince ??= now();
    if (error instanceof Refused) refused = error.why;
    tellOutside();
  }

  function tellOutside(): void {
    if (refused !== null) parts.onStatus({ kind: 'refused', why: refused });
    else if (unreachableSince !== null)
      parts.onStatus({ kind: 'unreachable', since: unreachableSince, entries: waiting });
  }

  async function run(): Promise<void> {
    let tries = 0;
    while (!stopped) {
      let exchange: Exchange | undefined;
      try {
        exchange = await parts.open();
        stop = exchange.close;
        if (!stopped)
          await session(exchange, () => {
            tries = 0;
          });
      } catch (error) {
        if (stopped) break;
        tellTrouble(error);
        await pause(backOff(tries, random));
        tries += 1;
      } finally {
        exchange?.close();
      }
    }
    for (const cancel of cancels) cancel();
    parts.onStatus({ kind: 'off' });
  }

  async function pause(ms: number): Promise<void> {
    await new Promise<void>((resolve) => {
      stop = resolve;
      hurryUp = resolve;
      later(ms, resolve);
    });
    hurryUp = () => {};
  }

  /** While the broker cannot be reached, how much waits for it. */
  async function countWaiting(): Promise<void> {
    if (unreachableSince === null || waiting === null) return;
    waiting = await unsent();
    tellOutside();
  }

  const running = run();
  return {
    news() {
      if (isDue) return;
      isDue = true;
      later(together, () => {
        isDue = false;
        void countWaiting();
        ask('send');
      });
    },
    hurry() {
      hurryUp();
      ask('look');
    },
    async stop() {
      stopped = true;
      stop();
      await running;
    },
  };
}
