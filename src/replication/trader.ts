import type { Entry } from '../domain/log/chain.ts';
import { chainsOf } from '../domain/packed/pack-long.ts';
import type { RunHead } from '../domain/packed/packed-run.ts';
import { countIn } from '../domain/packed/parcel.ts';
import type { LogStore, Merged } from '../store/log-store.ts';
import type { Exchange, Placed } from './exchange.ts';
import { foldLanes } from './folding.ts';
import { intake } from './intake.ts';
import { knownEnds } from './known-ends.ts';
import type { Ledger } from './ledger.ts';
import { headOfEntries } from './log-body.ts';
import { partedByStation, readLedger, takeWhatIsMissing } from './meeting.ts';
import type { MessageDesk, Said } from './message.ts';
import type { SetAside } from './replica-status.ts';
import { put, send } from './sending.ts';
import type { Seat } from './shop-key.ts';

export interface TraderParts {
  readonly store: Pick<LogStore, 'station' | 'merge' | 'parcel' | 'latest'>;
  readonly desk: MessageDesk;
  readonly seat: Seat;
  /** The name of this tablet on the broker. */
  readonly tablet: string;
  /** The tablet's clock, ms UTC. */
  readonly now: () => number;
  readonly onAside: (message: SetAside) => void;
  /** Something came into the store from the broker. */
  readonly onMerged: (merged: Merged) => void;
  /** Another trade is to be made: more is missing than was known. */
  readonly onMore: () => void;
  /** So many entries wait to be sent. */
  readonly onWaiting: (entries: number) => void;
}

/** A line to the broker, with what the broker was seen to hold since it was opened. */
export interface Line {
  readonly exchange: Exchange;
  readonly ledger: Ledger;
}

/** Trades entries between a store and a broker, over one line after another. What it remembers spares work and decides nothing. */
export function trader(parts: TraderParts) {
  const { store, desk, seat, tablet, now, onMore } = parts;
  const held = knownEnds();
  const own = new Set<string>([store.station()]);
  const seen = new Map<string, number>();
  /** Wanted again: posted once each. */
  const wanted = new Map<string, RunHead>();
  const posted = new Set<string>();
  const aside = new Set<string>();

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
      if (merged.unplaced > 0 && countIn(merged.added) > 0) onMore();
      if (countIn(merged.added) + merged.mended > 0 || merged.renewed) parts.onMerged(merged);
    },
    onWanted: (head) => wanted.set(`${head.link}/${head.first}`, head),
  });

  const sending = (line: Line) => ({ ...line, desk, seat });

  /** Puts a message without entries. */
  async function say(line: Line, said: Said): Promise<void> {
    const message = await desk.seal(said, { lane: 'ev', body: new Uint8Array() });
    await put([{ said, message }], sending(line));
  }

  /** What the store has that was not seen yet; the own stations are noted. */
  async function latest() {
    const found = await store.latest(seen);
    for (const { id, isOwn } of found.young) if (isOwn) own.add(id.station);
    return found;
  }

  function see(station: string, seq: number): void {
    seen.set(station, Math.max(seq, seen.get(station) ?? 0));
  }

  return {
    /** Reads what the broker holds, and takes the seat where nobody has it. */
    async meet(exchange: Exchange): Promise<Line> {
      const line = { exchange, ledger: await readLedger(exchange, taking) };
      if (line.ledger.takenBy(seat) === undefined) await say(line, { kind: 'seat1', tablet });
      return line;
    },

    /** Takes in messages as they come. */
    async take(batch: readonly Placed[], { ledger }: Line): Promise<void> {
      await taking.take(batch, ledger);
      if (wanted.size > 0) onMore();
    },

    /**
     * Takes in what is missing here, and sends what is missing there; what others wrote only if that is wanted, or there is
     * nothing at all. Resolves with how many entries of others are left to be sent.
     */
    async trade(line: Line, withOthers: boolean): Promise<number> {
      const { young, sealed } = await latest();
      const sendsAll = withOthers || line.ledger.heads().size === 0;
      const missing = await takeWhatIsMissing({ ...line, intake: taking, store, held });
      const { own: mine, others } = partedByStation(missing, (station) => own.has(station));
      parts.onWaiting(countIn(missing));
      for (const [key, head] of wanted) {
        wanted.delete(key);
        if (posted.has(key)) continue;
        posted.add(key);
        await say(line, { kind: 'want1', head });
      }
      await send(mine, sending(line));
      if (sendsAll) await send(others, sending(line));
      for (const { id } of young) see(id.station, id.seq);
      for (const [station, last] of sealed) see(station, last);
      const left = sendsAll ? 0 : countIn(others);
      parts.onWaiting(left);
      await foldLanes({ ...sending(line), store, tablet });
      return left;
    },

    /** Sends what was tapped lately. What came in otherwise is for the next trade, unless it came from the broker. */
    async sendNews(line: Line): Promise<void> {
      const { young, sealed } = await latest();
      const fresh = young.filter(({ isOwn }) => isOwn).map(({ entry }) => entry);
      parts.onWaiting(fresh.length);
      if (fresh.length > 0) await send({ runs: [], entries: fresh }, sending(line));
      for (const { entry, id } of young) {
        held.add(headOfEntries([entry]));
        see(id.station, id.seq);
      }
      const others = young.filter(({ isOwn }) => !isOwn).map(({ entry }) => entry);
      const there = knownEnds();
      if (others.length > 0) for (const head of line.ledger.heads().keys()) there.add(head);
      const isKnown = (head: RunHead) => there.has({ ...head, first: Number.MAX_SAFE_INTEGER });
      if (sealed.size > 0 || !headsOfChains(others).every(isKnown)) onMore();
      parts.onWaiting(0);
    },

    /** How many taps of this tablet were not sent yet. */
    async unsent(): Promise<number> {
      const { young } = await latest();
      return young.filter(({ isOwn }) => isOwn).length;
    },
  };
}

/** The heads of the chains in which entries follow on from each other. */
function headsOfChains(entries: readonly Entry[]): readonly RunHead[] {
  return [...chainsOf(entries)].map((chain) => headOfEntries(chain.map(({ entry }) => entry)));
}
