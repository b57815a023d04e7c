import * as v from 'valibot';
import { seededRandom } from '../../src/domain/chance/seeded-random.ts';
import { stationId } from '../../src/domain/log/ids.ts';
import type { Exchange } from '../../src/replication/exchange.ts';
import { messageDesk } from '../../src/replication/message.ts';
import type { ReplicaStatus, SetAside } from '../../src/replication/replica-status.ts';
import { type Replicator, replicator } from '../../src/replication/replicator.ts';
import { eventsKeyOf, type Seat } from '../../src/replication/shop-key.ts';
import type { LogStore } from '../../src/store/log-store.ts';
import { memoryLog } from '../../src/store/memory-log.ts';
import { spellDraft } from './drafts.ts';
import type { handClock } from './hand-clock.ts';

export const testShop = 'awlhafts7';
export const testKey = Uint8Array.from({ length: 16 }, (_, at) => 7 * at);

/** So many bytes that anybody could guess: for tests only. */
export function guessableBytes(seed: number) {
  const random = seededRandom(seed);
  return (length: number) => Uint8Array.from({ length }, () => Math.floor(random() * 256));
}

/** A tablet: its store, and what keeps that the same as a broker's copy. */
export interface Replica {
  readonly store: LogStore;
  readonly seat: Seat;
  readonly tap: (count?: number) => Promise<void>;
  readonly statuses: readonly ReplicaStatus[];
  readonly status: () => ReplicaStatus;
  readonly aside: readonly SetAside[];
  readonly start: () => void;
  readonly running: () => Replicator;
  readonly stop: () => Promise<void>;
}

interface ReplicaParts {
  readonly open: (seat: Seat) => Promise<Exchange>;
  readonly seat: Seat;
  readonly hand: ReturnType<typeof handClock>;
  readonly store?: LogStore;
  readonly seed?: number;
  readonly key?: Uint8Array<ArrayBuffer>;
  readonly shop?: string;
  /** The tablet's own clock, where it is another than the test's. */
  readonly now?: () => number;
}

let acts = 0;

export async function aReplica({
  open,
  seat,
  hand,
  seed = 1,
  key = testKey,
  shop = testShop,
  now = hand.clock.now,
  store = memoryLog(v.parse(stationId, `station-${seat.toLowerCase()}`)),
}: ReplicaParts): Promise<Replica> {
  const statuses: ReplicaStatus[] = [];
  const aside: SetAside[] = [];
  const desk = messageDesk({
    shop,
    seat,
    key: await eventsKeyOf(key),
    random: guessableBytes(seed * 100 + 1),
  });
  let running: Replicator | undefined;
  const stop = async () => {
    await running?.stop();
    running = undefined;
  };
  return {
    store,
    seat,
    statuses,
    aside,
    status: () => statuses.at(-1) ?? { kind: 'off' },
    async tap(count = 1) {
      for (let tap = 0; tap < count; tap += 1) {
        acts += 1;
        await store.append({ act: `act-${acts}`, drafts: [spellDraft('turn')], now: now() });
      }
      running?.news();
    },
    start() {
      running = replicator({
        open: () => open(seat),
        ...{ store, desk, seat, tablet: `tablet${seat.toLowerCase()}`, now, timer: hand.timer },
        random: seededRandom(seed),
        onStatus: (status) => statuses.push(status),
        onAside: (message) => aside.push(message),
        onMerged: () => running?.news(),
      });
    },
    running() {
      if (!running) throw new Error('it is not started');
      return running;
    },
    stop,
  };
}

/** Whether all hold the same, by number and sum of their entries. */
export async function areSame(replicas: readonly Replica[]): Promise<boolean> {
  const holdings = await Promise.all(replicas.map(({ store }) => store.holding()));
  return new Set(holdings.map(({ written }) => `${written.entries} ${written.sum}`)).size === 1;
}

/** Lets work go on, and time pass, until something is so; `pace` is real time (ms) for each turn. Throws when it does not become so. */
export async function until(
  hand: ReturnType<typeof handClock>,
  isSo: () => boolean | Promise<boolean>,
  { minutes = 120, pace = 0 }: { minutes?: number; pace?: number } = {},
): Promise<void> {
  for (let waited = 0; waited < minutes * 60; waited += 1) {
    for (let turn = 0; turn < 12; turn += 1) {
      if (await isSo()) return;
      await new Promise((resolve) => (pace ? setTimeout(resolve, pace) : setImmediate(resolve)));
    }
    hand.pass(1000);
  }
  throw new Error(`it is not so after ${minutes} minutes`);
}
