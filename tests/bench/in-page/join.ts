/** Joins a shop on a broker with an empty store, and takes the same bytes from a bare WebSocket. */
import { seededRandom } from '../../../src/domain/chance/seeded-random.ts';
import { messageDesk } from '../../../src/replication/message.ts';
import { openOverWebSocket } from '../../../src/replication/over-web-socket.ts';
import { replicator } from '../../../src/replication/replicator.ts';
import { eventsKeyOf, seatSeedOf } from '../../../src/replication/shop-key.ts';
import { openLog } from './open-log.ts';

export interface Joining {
  readonly address: string;
  readonly shop: string;
  readonly key: readonly number[];
  readonly events: number;
  readonly now: number;
}

const random = (length: number) => crypto.getRandomValues(new Uint8Array(length));

/** Milliseconds from the first word to the broker to everything on disk, the store being open. */
export async function joinShop({ address, shop, key: bytes, events, now }: Joining): Promise<number> {
  const key = Uint8Array.from(bytes);
  const store = await openLog('joined');
  const parts = { seat: 'B', seed: await seatSeedOf(key, 'B') } as const;
  const desk = messageDesk({ shop, seat: parts.seat, key: await eventsKeyOf(key), random });
  const start = performance.now();
  await new Promise<void>((resolve, reject) => {
    let held = 0;
    replicator({
      open: () => openOverWebSocket({ address, shop, ...parts }),
      ...{ store, desk, seat: parts.seat, tablet: 'newcomer', now: () => now, random: seededRandom(1) },
      timer: {
        after(ms, run) {
          const handle = setTimeout(run, ms);
          return () => clearTimeout(handle);
        },
      },
      onStatus: (status) => {
        if (status.kind === 'unreachable' || status.kind === 'refused') reject(new Error(status.kind));
      },
      onAside: ({ problem }) => reject(new Error(problem)),
      onMerged({ added }) {
        held += added.runs.reduce((sum, run) => sum + run.entries, added.entries.length);
        if (held >= events) resolve();
      },
    });
  });
  return performance.now() - start;
}

/** Milliseconds from the first word to the last byte. */
export async function takeBytes({ address, bytes }: { address: string; bytes: number }): Promise<number> {
  const start = performance.now();
  await new Promise<void>((resolve, reject) => {
    const socket = new WebSocket(address);
    socket.binaryType = 'arraybuffer';
    let left = bytes;
    socket.onmessage = ({ data }: MessageEvent<ArrayBuffer>) => {
      left -= data.byteLength;
      if (left <= 0) resolve();
    };
    socket.onerror = () => reject(new Error('the line is lost'));
  });
  return performance.now() - start;
}
