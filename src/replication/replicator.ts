import type { Random } from '../domain/chance/seeded-random.ts';
import type { Entry } from '../domain/log/chain.ts';
import { chainsOf } from '../domain/packed/pack-long.ts';
import type { RunHead } from '../domain/packed/packed-run.ts';
import { countIn } from '../domain/packed/parcel.ts';
import type { LogStore, Merged } from '../store/log-store.ts';
import { backOff } from './back-off.ts';
import { type Exchange, Refused } from './exchange.ts';
import { foldLanes } from './folding.ts';
import { intake } from './intake.ts';
import { knownEnds } from './known-ends.ts';
import type { Ledger } from './ledger.ts';
import { headOfEntries } from './log-body.ts';
import { LostThere, partedByStation, readLedger, readOn, standsFrom, takeWhatIsMissing } from './meeting.ts';
import type { MessageDesk } from './message.ts';
import type { ReplicaStatus, SetAside } from './replica-status.ts';
import { put, send } from './sending.ts';
import type { Seat } from './shop-key.ts';

export interface ReplicatorParts {
  /** Opens a line to the broker; rejects where that cannot be done now. */
  readonly open: () => Promise<Exchange>;
  readonly store: Pick<LogStore, 'station' | 'merge' | 'parcel' | 'latest'>;
  readonly desk: MessageDesk;
  readonly seat: Seat;
  /** The name of this tablet on the broker. */
  readonly tablet: string;
  /** The tablet's clock, ms UTC. */
  readonly now: () => number;
  readonly timer: { readonly after: (ms: number, run: () => void) => () => void };
  readonly random: Random;
  readonly onStatus: (status: ReplicaStatus) => void;
  readonly onAside: (message: SetAside) => void;
  /** Something came into the store from the broker. */
  readonly onMerged: (merged: Merged) => void;
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
  const { store, desk, seat, tablet, timer, random, now } = parts;
  const held = knownEnds();
  const own = new Set<string>([store.station()]);
  const seen = new Map<string, number>();
  /** Wanted again: posted once each. */
  const wanted = new Map<string, RunHead>();
  const posted = new Set<string>();
  const aside = new Set<string>();
  let ledger: Ledger | undefined;
  let stopped = false;
  let stop: (() => void) | undefined;
  let wake = () => {};
  const todo = { send: false, trade: false, tradeOthers: false, look: false };
  let unreachableSince: number | null = null;
  /** Entries that wait to be sent, of this tablet and of others; null before that is known. */
  let waiting: number | null = null;
  let patient = 0;
  /** How far the ledger was at the last look, when it was behind then. */
  let behind = -1;
  /** How far the ledger was known to be right, and how far it went when it was read as a whole. */
  let [checked, whole] = [0, -1];
  let cancelLook = () => {};
  const cancels = new Set<() => void>();

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
  function planLook(): void {
    cancelLook();
    cancelLook = later(betweenLooks * (0.5 + random()), () => ask('look'));
  }
  function ask(what: keyof typeof todo): void {
    todo[what] = true;
    wake();
  }

  const taking = intake({
    store,
    desk,
    held,
    now,
    setAside(message) {
      const key = `${message.at}/${message.reason}`;
      if (aside.has(key)) return;
      aside.add(key);
      parts.onAside(message);
    },
    onMerged(merged) {
      own.add(store.station());
      if (merged.unplaced > 0 && countIn(merged.added) > 0) ask('trade');
      if (countIn(merged.added) + merged.mended > 0 || merged.renewed) parts.onMerged(merged);
    },
    onWanted: (head) => wanted.set(`${head.link}/${head.first}`, head),
  });

  async function meet(exchange: Exchange): Promise<Ledger> {
    parts.onStatus({ kind: 'meeting' });
    const same =
      ledger && (await isStill(exchange, ledger)) && (await readOn(ledger, { exchange, intake: taking }));
    const known = ledger && same ? ledger : await readLedger(exchange, taking);
    if (known !== ledger) whole = known.last();
    checked = lastLineOf(known);
    if (known.takenBy(seat) === undefined) {
      const said = { kind: 'seat1', tablet } as const;
      const message = await desk.seal(said, { lane: 'ev', body: new Uint8Array() });
      await put([{ said, message }], { exchange, ledger: known, seat });
    }
    return known;
  }

  const sending = (exchange: Exchange, to: Ledger) => ({ exchange, ledger: to, desk, seat });

  /** Takes in what is missing here, and sends what is missing there: of other stations only once they had time to. */
  async function trade(exchange: Exchange, to: Ledger, withOthers: boolean): Promise<void> {
    const { young, sealed } = await store.latest(seen);
    for (const { id, isOwn } of young) if (isOwn) own.add(id.station);
    const isEmpty = to.heads().size === 0;
    const missing = await takeWhatIsMissing({ exchange, ledger: to, intake: taking, store, held });
    const { own: mine, others } = partedByStation(missing, (station) => own.has(station));
    waiting = countIn(missing);
    tell();
    await postWanted(exchange, to);
    await send(mine, sending(exchange, to));
    if (withOthers || isEmpty) await send(others, sending(exchange, to));
    else if (countIn(others) > 0) {
      const { least, most } = patience;
      later(least + random() * (most - least), () => ask('tradeOthers'));
    }
    waiting = 0;
    patient = withOthers || isEmpty ? 0 : countIn(others);
    for (const { id } of young) see(id.station, id.seq);
    for (const [station, last] of sealed) see(station, last);
  }

  function see(station: string, seq: number): void {
    seen.set(station, Math.max(seq, seen.get(station) ?? 0));
  }

  async function postWanted(exchange: Exchange, to: Ledger): Promise<void> {
    for (const [key, head] of wanted) {
      wanted.delete(key);
      if (posted.has(key)) continue;
      posted.add(key);
      const said = { kind: 'want1', head } as const;
      const message = await desk.seal(said, { lane: 'ev', body: new Uint8Array() });
      await put([{ said, message }], sending(exchange, to));
    }
  }

  /** Sends what was tapped lately. What came in otherwise is for the next trade, unless it came from the broker. */
  async function sendNews(exchange: Exchange, to: Ledger): Promise<void> {
    const { young, sealed } = await store.latest(seen);
    for (const { id, isOwn } of young) if (isOwn) own.add(id.station);
    const fresh = young.filter(({ isOwn }) => isOwn).map(({ entry }) => entry);
    waiting = fresh.length;
    tell();
    if (fresh.length > 0) await send({ runs: [], entries: fresh }, sending(exchange, to));
    for (const { entry } of young) held.add(headOfEntries([entry]));
    for (const { id } of young) see(id.station, id.seq);
    const others = young.filter(({ isOwn }) => !isOwn).map(({ entry }) => entry);
    const there = knownEnds();
    if (others.length > 0) for (const head of to.heads().keys()) there.add(head);
    const unknown = chainsHeads(others).some(
      (head) => !there.has({ ...head, first: Number.MAX_SAFE_INTEGER }),
    );
    if (sealed.size > 0 || unknown) ask('trade');
    waiting = 0;
  }

  function tell(): void {
    const entries = (waiting ?? 0) + patient;
    if (entries > 0) parts.onStatus({ kind: 'to-send', entries });
    else parts.onStatus({ kind: 'up-to-date' });
  }

  /** Whether all that was read since the last time still stands there. */
  async function isStill(exchange: Exchange, to: Ledger): Promise<boolean> {
    if (!(await standsFrom(exchange, to, checked))) return false;
    checked = lastLineOf(to);
    return true;
  }

  /** Whether what was read still stands there. */
  async function lookAgain(exchange: Exchange, to: Ledger): Promise<boolean> {
    const look = await exchange.look();
    const isComing = look.last > to.last() && behind !== to.last();
    behind = look.last > to.last() ? to.last() : -1;
    if (isComing) return true;
    // A broker that lost its tail gives the same places anew, even while it is read: what came since is not believed unread.
    return to.last() === whole && to.agreesWith(look) && (await isStill(exchange, to));
  }

  async function work(exchange: Exchange, to: Ledger): Promise<boolean> {
    if (todo.trade || todo.tradeOthers) {
      const withOthers = todo.tradeOthers;
      todo.trade = false;
      todo.tradeOthers = false;
      todo.send = false;
      await trade(exchange, to, withOthers);
      await foldLanes({ ...sending(exchange, to), store, tablet });
    } else if (todo.send) {
      todo.send = false;
      await sendNews(exchange, to);
    } else if (todo.look) {
      todo.look = false;
      if (!(await lookAgain(exchange, to))) return false;
      todo.trade = true;
      planLook();
    }
    return true;
  }

  /** Meets the broker and stays in touch until the line is lost. */
  async function session(exchange: Exchange, onMet: () => void): Promise<void> {
    const known = await meet(exchange);
    ledger = known;
    onMet();
    unreachableSince = null;
    const lost = exchange.closed.then(() => Promise.reject(new Error('the line is lost')));
    lost.catch(() => undefined);
    todo.trade = true;
    planLook();
    await work(exchange, known);
    const following = exchange.follow(known.last(), async (batch) => {
      await taking.take(batch, known);
      if (wanted.size > 0) ask('trade');
    });
    following.catch(() => exchange.close());
    for (;;) {
      if (Object.values(todo).some(Boolean)) {
        if (!(await Promise.race([work(exchange, known), lost]))) {
          ledger = undefined;
          return;
        }
        continue;
      }
      tell();
      await Promise.race([
        new Promise<void>((resolve) => {
          wake = resolve;
        }),
        lost,
      ]);
    }
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
        if (error instanceof LostThere) ledger = undefined;
        else unreachableSince ??= now();
        if (stopped) break;
        if (error instanceof LostThere) parts.onStatus({ kind: 'meeting' });
        else if (error instanceof Refused) parts.onStatus({ kind: 'refused', why: error.why });
        else parts.onStatus({ kind: 'unreachable', since: unreachableSince ?? now(), entries: waiting });
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

  let hurryUp = () => {};
  let isDue = false;
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
      stop?.();
      await running;
    },
  };

  /** While the broker cannot be reached, how much waits for it. */
  async function countWaiting(): Promise<void> {
    if (unreachableSince === null || waiting === null) return;
    const { young } = await store.latest(seen);
    waiting = young.filter(({ isOwn }) => isOwn).length;
    if (unreachableSince !== null)
      parts.onStatus({ kind: 'unreachable', since: unreachableSince, entries: waiting });
  }
}

/** Where the last message stands that was noted: the broker may have lost what it said it had behind it. */
const lastLineOf = (ledger: Ledger): number => ledger.from(1).reduce((last, { at }) => Math.max(last, at), 0);

/** The heads of the chains in which entries follow on from each other. */
function chainsHeads(entries: readonly Entry[]): readonly RunHead[] {
  return [...chainsOf(entries)].map((chain) => headOfEntries(chain.map(({ entry }) => entry)));
}
