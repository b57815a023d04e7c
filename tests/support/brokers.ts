/** The brokers that the same behaviour is asked of: one in memory, and a real one. */
import type { Exchange, Placed } from '../../src/replication/exchange.ts';
import type { Seat } from '../../src/replication/shop-key.ts';
import { subjectOf } from '../../src/replication/subjects.ts';
import { type Broker, startBroker } from './broker.ts';
import { memoryBroker } from './memory-broker.ts';
import { testKey, testShop } from './replicas.ts';

export interface TestBroker {
  readonly begin: () => Promise<void>;
  readonly end: () => Promise<void>;
  /** An empty shop takes the place of the one before. */
  readonly anew: () => Promise<void>;
  readonly open: (seat: Seat) => Promise<Exchange>;
  /** The same, to the photos. */
  readonly openPhotos: (seat: Seat) => Promise<Exchange>;
  readonly setUp: (isUp: boolean) => Promise<void>;
  readonly lose: (isLost: (at: number, last: number) => boolean) => Promise<void>;
  /** Everything is gone, and it begins anew. */
  readonly wipe: () => Promise<void>;
  readonly plant: (message: Omit<Placed, 'at' | 'lane'> & { readonly lane: 'ev' | 'run.1' }) => Promise<void>;
  /** A seat in wrong hands takes everything away with one message (`Nats-Rollup: all`). */
  readonly sweep: (seat: Seat) => Promise<void>;
  readonly messages: () => Promise<readonly Placed[]>;
  /** Real time that is left to it between two looks (ms). */
  readonly pace: number;
}

function inMemory(): TestBroker {
  let broker = memoryBroker();
  let photos = memoryBroker();
  return {
    begin: async () => undefined,
    end: async () => undefined,
    anew: async () => {
      broker = memoryBroker();
      photos = memoryBroker();
    },
    open: (seat) => broker.open(seat),
    openPhotos: (seat) => photos.open(seat),
    setUp: async (isUp) => {
      broker.setUp(isUp);
      photos.setUp(isUp);
    },
    lose: async (isLost) => {
      const last = broker.messages().at(-1)?.at ?? 0;
      broker.lose(({ at }) => isLost(at, last));
    },
    wipe: async () => {
      broker.wipe();
      photos.wipe();
    },
    plant: async (message) => void broker.plant(message),
    sweep: async (seat) => broker.sweep(seat),
    messages: async () => broker.messages(),
    pace: 0,
  };
}

function real(): TestBroker {
  let broker: Broker;
  const wipe = async () => {
    await broker.removeStream();
    await broker.makeStream();
  };
  return {
    begin: async () => {
      broker = await startBroker({ shop: testShop, key: testKey });
    },
    end: () => broker.stop(),
    anew: wipe,
    open: (seat) => broker.open(seat),
    openPhotos: (seat) => broker.openPhotos(seat),
    setUp: (isUp) => (isUp ? broker.start() : broker.kill()),
    lose: (isLost) => broker.lose(isLost),
    wipe,
    plant: ({ seat, lane, kind, head, body, replaces }) =>
      broker.plant(subjectOf(testShop, { seat, lane }), {
        headers: { 'Tw-Kind': kind, 'Tw-Head': head, ...(replaces && { 'Nats-Rollup': 'sub' }) },
        body: body ?? new Uint8Array(),
      }),
    sweep: (seat) => broker.publishAs(seat, { 'Nats-Rollup': 'all' }),
    async messages() {
      const line = await broker.open('M');
      const found: Placed[] = [];
      await line.read({ from: 1, bodies: true }, async (batch) => void found.push(...batch));
      line.close();
      return found;
    },
    pace: 4,
  };
}

export const brokers: readonly (readonly [string, () => TestBroker])[] = [
  ['in memory', inMemory],
  ['a real broker', real],
];
