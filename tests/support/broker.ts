/** A real broker for tests: a NATS server of its own on free ports of this machine, which a test can kill and rob. */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { type AddressInfo, connect as connectTcp, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DiscardPolicy, jetstream, jetstreamManager, RetentionPolicy, StorageType } from '@nats-io/jetstream';
import { headers, nkeyAuthenticator, nkeys } from '@nats-io/nats-core';
import { connect } from '@nats-io/transport-node';
import { findPrograms } from '../../.ci/hub/programs.mjs';
import type { Exchange } from '../../src/replication/exchange.ts';
import { openNatsExchange } from '../../src/replication/nats-exchange.ts';
import { nkeySeed } from '../../src/replication/nkey-seed.ts';
import { type Seat, type ShopKey, seatLetters, seatSeedOf } from '../../src/replication/shop-key.ts';
import { inboxOf, type StreamKind, streamOf, subjectOf } from '../../src/replication/subjects.ts';

export interface Broker {
  /** Where its WebSocket listens, without TLS. */
  readonly webSocketPort: number;
  /** Opens a line over TCP: Node has no WebSocket of its own before version 22. */
  readonly open: (seat: Seat, key?: ShopKey) => Promise<Exchange>;
  /** The same, to the photos. */
  readonly openPhotos: (seat: Seat) => Promise<Exchange>;
  /** Kills it at once; what it had acknowledged and not yet written down is lost only with the machine. */
  readonly kill: () => Promise<void>;
  readonly start: () => Promise<void>;
  /** As the one who set it up: makes the shop's streams where they are not, takes them away, or takes away single messages. */
  readonly makeStream: (limits?: Limits) => Promise<void>;
  readonly removeStream: () => Promise<void>;
  readonly lose: (isLost: (at: number, last: number) => boolean) => Promise<void>;
  /** Publishes anything at all, past every right. */
  readonly plant: (
    subject: string,
    message: { readonly headers: Readonly<Record<string, string>>; readonly body: Uint8Array },
  ) => Promise<void>;
  /** Publishes on the seat's own lane with its own rights and headers of its choice, as a tablet in wrong hands can. */
  readonly publishAs: (seat: Seat, headers: Readonly<Record<string, string>>) => Promise<void>;
  readonly stop: () => Promise<void>;
}

/** A port that nobody listens on. */
async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  server.close();
  await once(server, 'close');
  return port;
}

async function isListening(port: number): Promise<boolean> {
  const socket = connectTcp(port, '127.0.0.1');
  const [event] = await Promise.race([
    once(socket, 'connect').then(() => ['connect']),
    once(socket, 'error').then(() => ['error']),
  ]).catch(() => ['error']);
  socket.destroy();
  return event === 'connect';
}

const publicKeyOf = (seed: Uint8Array) => nkeys.fromSeed(nkeySeed(seed)).getPublicKey();

/** The seats and what each may do, in the server's own notation. */
async function configOf(
  shop: string,
  parts: { key: ShopKey; admin: string; ports: Ports; folder: string; anyOrigin: boolean },
) {
  const streams = [streamOf(shop), streamOf(shop, 'photos')];
  const users = await Promise.all(
    seatLetters.map(async (seat) => {
      const publish = [
        ...[`tw.${shop}.ev.${seat}`, `tw.${shop}.run.${seat}.>`, `tw.${shop}.ph.${seat}.>`],
        ...streams.flatMap((stream) => [
          `$JS.API.STREAM.INFO.${stream}`,
          ...['CREATE', 'INFO', 'MSG.NEXT', 'DELETE'].map((what) => `$JS.API.CONSUMER.${what}.${stream}.>`),
        ]),
      ];
      const permissions = { publish: { allow: publish }, subscribe: { allow: [`${inboxOf(shop, seat)}.>`] } };
      return { nkey: publicKeyOf(await seatSeedOf(parts.key, seat)), permissions };
    }),
  );
  return JSON.stringify({
    listen: `127.0.0.1:${parts.ports.tcp}`,
    jetstream: { store_dir: parts.folder },
    websocket: { listen: `127.0.0.1:${parts.ports.webSocket}`, no_tls: true, same_origin: !parts.anyOrigin },
    // A client on a machine with other work may take long to sign: two seconds, as usual, are too few.
    authorization: { timeout: 60, users: [{ nkey: parts.admin }, ...users] },
  });
}

interface Limits {
  readonly max_bytes?: number;
}

interface Ports {
  readonly tcp: number;
  readonly webSocket: number;
}

interface BrokerOptions {
  readonly shop: string;
  readonly key: ShopKey;
  /** Pages of other origins may speak to it, too. */
  readonly anyOrigin?: boolean;
}

export async function startBroker({ shop, key, anyOrigin = false }: BrokerOptions): Promise<Broker> {
  const { broker: path } = findPrograms();
  const folder = mkdtempSync(join(tmpdir(), 'tallywright-broker-'));
  const ports = { tcp: await freePort(), webSocket: await freePort() };
  const adminSeed = new Uint8Array(32).fill(5);
  const config = join(folder, 'broker.conf');
  writeFileSync(
    config,
    await configOf(shop, { key, admin: publicKeyOf(adminSeed), ports, folder, anyOrigin }),
  );
  let server: ChildProcess | undefined;
  const address = `127.0.0.1:${ports.tcp}`;

  const isRunning = () => server !== undefined && server.exitCode === null && server.signalCode === null;

  async function start(): Promise<void> {
    if (isRunning()) return;
    const started = spawn(path, ['-c', config], { stdio: 'ignore' });
    server = started;
    // A run that ends without closing leaves no server behind.
    process.once('exit', () => started.kill('SIGKILL'));
    while (!((await isListening(ports.tcp)) && (await isListening(ports.webSocket)))) {
      if (started.exitCode !== null) throw new Error(`the broker ended with ${started.exitCode}: ${config}`);
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
  }

  async function kill(): Promise<void> {
    if (!server || !isRunning()) return;
    const ended = once(server, 'exit');
    server.kill('SIGKILL');
    await ended;
  }

  async function asAdmin<Result>(
    work: (parts: {
      manager: Awaited<ReturnType<typeof jetstreamManager>>;
      connection: Awaited<ReturnType<typeof connect>>;
    }) => Promise<Result>,
  ): Promise<Result> {
    const authenticator = nkeyAuthenticator(nkeySeed(adminSeed));
    const connection = await connect({ servers: address, authenticator, reconnect: false });
    try {
      return await work({ manager: await jetstreamManager(connection), connection });
    } finally {
      await connection.close();
    }
  }

  const makeStream: Broker['makeStream'] = (limits = {}) =>
    asAdmin(async ({ manager }) => {
      const made = (kind: StreamKind, subjects: readonly string[]) =>
        manager.streams.add({
          name: streamOf(shop, kind),
          subjects: subjects.map((subject) => `tw.${shop}.${subject}.>`),
          storage: StorageType.File,
          retention: RetentionPolicy.Limits,
          discard: DiscardPolicy.New,
          allow_rollup_hdrs: true,
          ...limits,
        });
      await made('log', ['ev', 'run']);
      await made('photos', ['ph']);
    });

  await start();
  await makeStream();
  return {
    webSocketPort: ports.webSocket,
    open: async (seat, other = key) =>
      openNatsExchange({ connect, address, shop, seat, seed: await seatSeedOf(other, seat) }),
    openPhotos: async (seat) =>
      openNatsExchange({
        ...{ connect, address, shop, seat, kind: 'photos' },
        seed: await seatSeedOf(key, seat),
      }),
    kill,
    start,
    makeStream,
    removeStream: () =>
      asAdmin(async ({ manager }) => {
        for (const kind of ['log', 'photos'] as const) await manager.streams.delete(streamOf(shop, kind));
      }),
    lose: (isLost) =>
      asAdmin(async ({ manager }) => {
        const { state } = await manager.streams.info(streamOf(shop));
        for (let at = state.last_seq; at >= state.first_seq; at -= 1)
          if (isLost(at, state.last_seq))
            await manager.streams.deleteMessage(streamOf(shop), at, false).catch(() => false);
      }),
    plant: (subject, { headers: given, body }) =>
      asAdmin(async ({ connection }) => {
        const all = headers();
        for (const [name, value] of Object.entries(given)) all.set(name, value);
        await connection.request(subject, body, { headers: all, timeout: 10_000 });
      }),
    async publishAs(seat, said) {
      const connection = await connect({
        servers: address,
        authenticator: nkeyAuthenticator(nkeySeed(await seatSeedOf(key, seat))),
        inboxPrefix: inboxOf(shop, seat),
        reconnect: false,
      });
      const all = headers();
      for (const [name, value] of Object.entries(said)) all.set(name, value);
      await jetstream(connection).publish(subjectOf(shop, { seat, lane: 'ev' }), '', { headers: all });
      await connection.close();
    },
    async stop() {
      await kill();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
