import type { Random } from '../../src/domain/chance/seeded-random.ts';
import {
  type Exchange,
  LaneMoved,
  type Look,
  laneKey,
  type Placed,
  type Refused,
  type TakeBatch,
} from '../../src/replication/exchange.ts';
import type { Seat } from '../../src/replication/shop-key.ts';

/** What goes wrong on a line, drawn anew each time: chances from 0 to 1, which a test may change as it goes. */
export interface Weather {
  readonly random: Random;
  /** That the line is lost with a call, before it or after the broker has done it. */
  cut: number;
  /** That messages which come in are shuffled, and some of them come twice. */
  shuffle: number;
}

/** A broker's copy of one shop, held in memory, with hands on what a broker can lose. */
export interface MemoryBroker {
  readonly open: (seat: Seat, weather?: Weather) => Promise<Exchange>;
  readonly messages: () => readonly Placed[];
  /** Puts any message at the end, as a holder of the broker could. */
  readonly plant: (message: Omit<Placed, 'at'>) => number;
  /** Loses the messages that match; `last` falls with the end of them. */
  readonly lose: (isLost: (message: Placed) => boolean) => void;
  /** Loses everything to a message without sense by a seat; nothing begins anew. */
  readonly sweep: (seat: Seat) => void;
  /** Loses everything, and begins anew. */
  readonly wipe: () => void;
  /** Whether it can be reached; all lines are cut when it cannot be any more. */
  readonly setUp: (isUp: boolean) => void;
  readonly refuse: (refusal: Refused | undefined) => void;
}

const batchLength = 16;

export function memoryBroker(): MemoryBroker {
  let created = 1;
  let messages = new Map<number, Placed>();
  let ids = new Map<string, number>();
  let last = 0;
  let isUp = true;
  let refusal: Refused | undefined;
  const lines = new Set<() => void>();
  const arrivals = new Set<() => void>();

  function put(message: Omit<Placed, 'at'>): number {
    last += 1;
    if (message.replaces)
      for (const [at, each] of messages) if (laneKey(each) === laneKey(message)) messages.delete(at);
    messages.set(last, { ...message, at: last });
    for (const arrived of arrivals) arrived();
    return last;
  }

  const lastOn = (lane: string) =>
    Math.max(0, ...[...messages.values()].filter((each) => laneKey(each) === lane).map(({ at }) => at));

  async function open(seat: Seat, weather?: Weather): Promise<Exchange> {
    if (!isUp) throw new Error('it cannot be reached');
    if (refusal) throw refusal;
    let isOpen = true;
    let end = () => {};
    const closed = new Promise<void>((resolve) => {
      end = resolve;
    });
    const close = () => {
      isOpen = false;
      lines.delete(close);
      end();
    };
    lines.add(close);
    const chance = (odds: number) => weather !== undefined && weather.random() < odds;
    /** A call over the line: it may be lost on the way there, or on the way back. */
    async function call<Result>(work: () => Result): Promise<Result> {
      await undefined;
      if (chance((weather?.cut ?? 0) / 2)) close();
      if (!isOpen) throw new Error('the line is lost');
      if (refusal) throw refusal;
      const result = work();
      if (chance((weather?.cut ?? 0) / 2)) close();
      if (!isOpen) throw new Error('the line is lost');
      return result;
    }
    async function give(found: readonly Placed[], take: TakeBatch, bodies: boolean): Promise<void> {
      for (let from = 0; from < found.length; from += batchLength) {
        const batch = await call(() => found.slice(from, from + batchLength));
        await take(batch.map((each) => (bodies ? each : { ...each, body: null })));
      }
    }
    const between = (from: number, to: number) =>
      [...messages.values()].filter(({ at }) => at >= from && at <= to).sort((a, b) => a.at - b.at);

    return {
      glance: () => call(() => ({ created: String(created), last, messages: messages.size })),
      look: () =>
        call((): Look => {
          const counts = new Map<string, number>();
          for (const each of messages.values())
            counts.set(laneKey(each), (counts.get(laneKey(each)) ?? 0) + 1);
          return { created: String(created), last, messages: messages.size, counts };
        }),
      read: async ({ from, to, bodies, of }, take) => {
        const found = await call(() =>
          between(from, to ?? last).filter((each) => !of || laneKey(each) === laneKey(of)),
        );
        await give(found, take, bodies);
      },
      async follow(after, take) {
        let next = after + 1;
        while (isOpen) {
          const found = between(next, last);
          next = Math.max(next, last + 1);
          const isMuddled = chance(weather?.shuffle ?? 0);
          await give(isMuddled && weather ? muddled(found, weather.random) : found, take, true);
          if (next <= last) continue;
          await new Promise<void>((resolve) => {
            arrivals.add(resolve);
            void closed.then(resolve);
          });
        }
      },
      push: async (outgoing) => {
        const places: number[] = [];
        for (const { id, after, ...message } of outgoing)
          places.push(
            await call(() => {
              const before = ids.get(id);
              if (before !== undefined && !message.replaces) return before;
              if (after !== undefined && lastOn(laneKey({ seat, lane: message.lane })) !== after)
                throw new LaneMoved('the lane has gone on');
              const at = put({ ...message, seat });
              ids.set(id, at);
              return at;
            }),
          );
        return places;
      },
      closed,
      close,
    };
  }

  return {
    open,
    messages: () => [...messages.values()],
    plant: put,
    lose(isLost) {
      messages = new Map([...messages].filter(([, each]) => !isLost(each)));
      // A broker that lost them remembers no ids either, and gives their places anew.
      ids = new Map();
      last = Math.max(0, ...messages.keys());
    },
    sweep(seat) {
      messages = new Map();
      put({ seat, lane: 'ev', kind: '', head: '', body: new Uint8Array() });
    },
    wipe() {
      created += 1;
      messages = new Map();
      ids = new Map();
      last = 0;
      for (const close of lines) close();
    },
    setUp(next) {
      isUp = next;
      if (!isUp) for (const close of lines) close();
    },
    refuse(next) {
      refusal = next;
    },
  };
}

function muddled(found: readonly Placed[], random: Random): readonly Placed[] {
  const twice = found.flatMap((each) => (random() < 0.3 ? [each, each] : [each]));
  return twice
    .map((each) => ({ each, key: random() }))
    .sort((a, b) => a.key - b.key)
    .map(({ each }) => each);
}
