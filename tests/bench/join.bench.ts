/**
 * How long a new tablet takes to have a shop from its broker, every message opened, judged and on disk, beside the same bytes
 * over a bare WebSocket from a server that does nothing else.
 */
import { createHash } from 'node:crypto';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { chained } from '../../src/domain/log/chain.ts';
import type { Placed } from '../../src/replication/exchange.ts';
import { openLedger } from '../../src/replication/ledger.ts';
import { messageDesk } from '../../src/replication/message.ts';
import { send } from '../../src/replication/sending.ts';
import { eventsKeyOf } from '../../src/replication/shop-key.ts';
import { type Broker, startBroker } from '../support/broker.ts';
import { longLog } from '../support/long-log.ts';
import { guessableBytes, testKey, testShop } from '../support/replicas.ts';
import type { Bench } from './harness/bench.ts';
import { until } from './harness/log-profiles.ts';
import type { Measured } from './harness/row.ts';

const events = 100_000;

/** Puts a long log on the broker as a tablet does that offers all that it has; how many bytes that is there. */
async function fill(broker: Broker): Promise<number> {
  const exchange = await broker.open('A');
  const desk = messageDesk({
    ...{ shop: testShop, seat: 'A', random: guessableBytes(1) },
    key: await eventsKeyOf(testKey),
  });
  const entries = chained(longLog({ events, until }));
  await send({ runs: [], entries }, { exchange, ledger: openLedger('bench'), desk, seat: 'A' });
  let bytes = 0;
  const weigh = async (batch: readonly Placed[]) => {
    for (const { head, body } of batch) bytes += head.length + (body?.length ?? 0);
  };
  await exchange.read({ from: 1, bodies: true }, weigh);
  exchange.close();
  return bytes;
}

/** RFC 6455: the answer to a handshake, and binary frames of 64 kB. */
async function bareServer(bytes: number) {
  const server = createServer();
  server.on('upgrade', (request, socket) => {
    const asked = `${request.headers['sec-websocket-key']}258EAFA5-E914-47DA-95CA-C5AB0DC85B11`;
    const accepted = createHash('sha1').update(asked).digest('base64');
    socket.on('error', () => socket.destroy());
    socket.write(
      `HTTP/1.1 101 Switching Protocols\r\nUpgrade: websocket\r\nConnection: Upgrade\r\nSec-WebSocket-Accept: ${accepted}\r\n\r\n`,
    );
    for (let left = bytes; left > 0; left -= 65_535) {
      const length = Math.min(left, 65_535);
      socket.write(
        Buffer.concat([Buffer.from([0x82, 126, length >> 8, length & 255]), Buffer.alloc(length)]),
      );
    }
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return {
    address: `ws://127.0.0.1:${port}`,
    close() {
      server.closeAllConnections();
      server.close();
    },
  };
}

export async function measure(bench: Bench): Promise<readonly Measured[]> {
  const broker = await startBroker({ shop: testShop, key: testKey, anyOrigin: true });
  const bytes = await fill(broker);
  const bare = await bareServer(bytes);
  const [ours, limit]: [number[], number[]] = [[], []];
  try {
    for (let turn = 0; turn < bench.rounds; turn += 1)
      await bench.inPage({ profile: bench.newProfile(), module: 'join' }, async ({ call }) => {
        const joining = {
          address: `ws://127.0.0.1:${broker.webSocketPort}/sync`,
          ...{ shop: testShop, key: [...testKey], events, now: until },
        };
        limit.push(await call<number>('takeBytes', { address: bare.address, bytes }));
        ours.push(await call<number>('joinShop', joining));
      });
  } finally {
    bare.close();
    await broker.stop();
  }
  return [
    {
      id: 'join',
      work: `a shop of ${events.toLocaleString('en')} events joined by a new tablet`,
      unit: 'ms',
      figures: { ours, limit },
      bars: [{ kind: 'at-most-times', times: 3, of: 'limit' }],
    },
  ];
}
