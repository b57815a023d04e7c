/**
 * What a broker of the generated configuration takes on this machine: `node .ci/measure-hub.mjs`. Bytes of a message on the
 * disk, messages a second, memory of a connection and of a shop that is at rest. DEVELOPERS.md, "Scale", reckons with it.
 */
import { execFileSync } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { installWhatIsMissing } from './install.mjs';

installWhatIsMissing();

const { connect, headers, nkeyAuthenticator } = await import('@nats-io/transport-node');
const { jetstream } = await import('@nats-io/jetstream');
const { makeStream } = await import('./hub/broker-admin.mjs');
const { brokerConfig, streamName } = await import('./hub/broker-config.mjs');
const { openFolder, writeWhole } = await import('./hub/data-folder.mjs');
const { freePorts } = await import('./hub/free-ports.mjs');
const { keepRunning } = await import('./hub/keep-running.mjs');
const { userKey } = await import('./hub/nkey.mjs');
const { findPrograms } = await import('./hub/programs.mjs');
const { newShopKeys, openPart, seatKey, seats } = await import('./hub/shop-keys.mjs');
const { template } = await import('./hub/template.mjs');

/** What a tap comes to as a sealed message of its own: some 400 bytes of line, 28 of nonce and tag, and a sealed head. */
const tapBytes = 430;
const headBytes = 150;

const programs = findPrograms();
const folder = mkdtempSync(join(tmpdir(), 'tallywright-measure-'));
const isOver = () => false;

/** @param {number} count of shops @param {number} connections at most */
async function openBroker(count, connections) {
  const files = openFolder(join(folder, `broker-${count}-${connections}`));
  const shops = Array.from({ length: count }, () => newShopKeys(randomBytes));
  const [client, websocket] = (await freePorts(2)).map((port) => `127.0.0.1:${port}`);
  if (!client || !websocket) throw new Error('The system gave no ports.');
  const watch = userKey(randomBytes(32)).public;
  const config = brokerConfig(
    {
      name: 'hub',
      listen: client,
      websocket,
      store: files.broker,
      // As much for each as the hub gives to its own: the broker sets the limit of photos aside.
      room: `${20 * shops.length}GB`,
      connections,
      watch,
      shops: shops.map(openPart),
    },
    { broker: template('broker.conf'), cluster: template('cluster.conf') },
  );
  writeWhole(files.brokerConfig, config);
  const kept = keepRunning({
    name: 'Broker',
    command: programs.broker,
    args: ['-c', files.brokerConfig],
    say: (line) => (/\[(ERR|FTL)\]/.test(line) ? console.log(line) : undefined),
  });
  return { files, shops, client, kept, memory: () => memoryOf(kept.pid()), configBytes: config.length };
}

/** Resident memory in kB. @param {number | undefined} pid */
const memoryOf = (pid) => Number(execFileSync('ps', ['-o', 'rss=', '-p', String(pid)], { encoding: 'utf8' }));

/** Bytes of all files below. @param {string} path @returns {number} */
const bytesBelow = (path) =>
  readdirSync(path, { withFileTypes: true }).reduce((sum, entry) => {
    const below = join(path, entry.name);
    return sum + (entry.isDirectory() ? bytesBelow(below) : statSync(below).size);
  }, 0);

/** @param {string} client @param {import('./hub/shop-keys.mjs').ShopKeys} keys @param {string} seat */
const takeSeat = (client, keys, seat) =>
  connect({
    servers: client,
    authenticator: nkeyAuthenticator(new TextEncoder().encode(seatKey(keys.key, seat).seed)),
    inboxPrefix: `_INBOX_${keys.shop}_${seat}`,
  });

/** @param {string} what @param {string | number} figure */
const row = (what, figure) => console.log(`${what.padEnd(64)} ${figure}`);

async function messages() {
  const broker = await openBroker(1, 512);
  const [keys] = broker.shops;
  if (!keys) throw new Error('There is no shop.');
  await makeStream({ broker: broker.client, keys, replicas: 1, patience: 60_000, isOver });
  const store = join(broker.files.broker, 'jetstream', streamName(keys.shop));
  const stream = jetstream(await takeSeat(broker.client, keys, 'A'));
  const before = { bytes: bytesBelow(store), memory: broker.memory() };
  const count = 50_000;
  const head = randomBytes(headBytes).toString('base64');
  const began = performance.now();
  for (let n = 0; n < count; n += 250) {
    await Promise.all(
      Array.from({ length: 250 }, (_, index) => {
        const more = headers();
        more.set('Tw-Head', head);
        return stream.publish(`tw.${keys.shop}.ev.A`, randomBytes(tapBytes), {
          msgID: `S:${n + index}:x`,
          headers: more,
        });
      }),
    );
  }
  const seconds = (performance.now() - began) / 1000;
  row(
    `messages of ${tapBytes} bytes with a head of ${headBytes}, each acknowledged: a second`,
    Math.round(count / seconds),
  );
  row('bytes on the disk for each', ((bytesBelow(store) - before.bytes) / count).toFixed(0));
  row('memory after 50,000 of them, MB (before)', `${mb(broker.memory())} (${mb(before.memory)})`);

  const began2 = performance.now();
  for (let n = 0; n < 300; n++) await stream.publish(`tw.${keys.shop}.ev.A`, randomBytes(tapBytes));
  row('the same one after the other: ms each', ((performance.now() - began2) / 300).toFixed(2));

  const rollUp = headers();
  rollUp.set('Nats-Rollup', 'sub');
  await stream.publish(`tw.${keys.shop}.ev.A`, randomBytes(tapBytes), { headers: rollUp });
  row('bytes on the disk after a roll-up of them all', bytesBelow(store));
  const packed = 300_000;
  const size = bytesBelow(store);
  await stream.publish(`tw.${keys.shop}.run.A.S.1-10000`, randomBytes(packed));
  row(`bytes on the disk for a packed run of ${packed}`, bytesBelow(store) - size);
  await broker.kept.stop();
}

async function connections() {
  const broker = await openBroker(20, 1024);
  for (const keys of broker.shops)
    await makeStream({ broker: broker.client, keys, replicas: 1, patience: 60_000, isOver });
  const before = broker.memory();
  const open = [];
  for (const keys of broker.shops) {
    for (const seat of seats) {
      const connection = await takeSeat(broker.client, keys, seat);
      const consumer = await jetstream(connection).consumers.get(streamName(keys.shop));
      await consumer.consume();
      open.push(connection);
    }
  }
  await new Promise((resolve) => setTimeout(resolve, 2000));
  row(
    `memory of a connection with a live reader, kB (of ${open.length})`,
    ((broker.memory() - before) / open.length).toFixed(0),
  );
  await Promise.all(open.map((connection) => connection.close()));
  await broker.kept.stop();
}

/** @param {number} count */
async function shopsAtRest(count) {
  const broker = await openBroker(count, 256);
  const [first] = broker.shops;
  if (!first) throw new Error('There is no shop.');
  await makeStream({ broker: broker.client, keys: first, replicas: 1, patience: 120_000, isOver });
  const before = bytesBelow(broker.files.broker);
  for (const keys of broker.shops) {
    await makeStream({ broker: broker.client, keys, replicas: 1, patience: 60_000, isOver });
  }
  row(`${count} shops at rest: bytes of configuration for each`, Math.round(broker.configBytes / count));
  row(
    'bytes on the disk for the empty stream of each',
    Math.round((bytesBelow(broker.files.broker) - before) / count),
  );
  await broker.kept.stop();

  const again = keepRunning({
    name: 'Broker',
    command: programs.broker,
    args: ['-c', broker.files.brokerConfig],
    say: () => {},
  });
  const began = performance.now();
  await makeStream({ broker: broker.client, keys: first, replicas: 1, patience: 120_000, isOver });
  row('seconds until a restarted broker answers', ((performance.now() - began) / 1000).toFixed(1));
  row('memory of the restarted broker for each, kB', (memoryOf(again.pid()) / count).toFixed(0));
  await busy(broker.client, broker.shops, () => processorSecondsOf(again.pid()));
  await again.stop();
}

/**
 * A busy half minute: every tenth of a second 35 taps, each of another shop, each acknowledged.
 *
 * @param {string} client
 * @param {readonly import('./hub/shop-keys.mjs').ShopKeys[]} shops
 * @param {() => number} processorSeconds
 */
async function busy(client, shops, processorSeconds) {
  const open = [];
  for (const { shop, ...keys } of shops.slice(0, 210)) {
    open.push({ shop, stream: jetstream(await takeSeat(client, { shop, ...keys }, 'A')) });
  }
  /** @type {Promise<number>[]} */
  const waits = [];
  const before = processorSeconds();
  const began = performance.now();
  for (let tick = 0; tick < 300; tick++) {
    for (let n = 0; n < 35; n++) {
      const tablet = open[(tick * 35 + n) % open.length];
      if (!tablet) continue;
      const asked = performance.now();
      const ack = tablet.stream.publish(`tw.${tablet.shop}.ev.A`, randomBytes(tapBytes));
      waits.push(ack.then(() => performance.now() - asked));
    }
    await new Promise((resolve) =>
      setTimeout(resolve, Math.max(0, began + (tick + 1) * 100 - performance.now())),
    );
  }
  const sorted = (await Promise.all(waits)).toSorted((one, other) => one - other);
  const seconds = (performance.now() - began) / 1000;
  const at = (/** @type {number} */ share) =>
    (sorted[Math.floor(share * (sorted.length - 1))] ?? 0).toFixed(1);
  row(
    `${Math.round(sorted.length / seconds)} taps a second from ${open.length} shops: ms to the answer, median; 99 %`,
    `${at(0.5)}; ${at(0.99)}`,
  );
  row('share of one core that the broker took', ((processorSeconds() - before) / seconds).toFixed(2));
}

/** Seconds of a processor that a process has used (proc(5): ticks of a hundredth). @param {number | undefined} pid */
function processorSecondsOf(pid) {
  const [, rest = ''] = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ');
  const fields = rest.split(' ');
  return (Number(fields[11]) + Number(fields[12])) / 100;
}

/** @param {number} kilobytes */
const mb = (kilobytes) => (kilobytes / 1000).toFixed(0);

try {
  row('broker', execFileSync(programs.broker, ['--version'], { encoding: 'utf8' }).trim());
  row('processor', /^model name\s*:\s*(.*)$/m.exec(readFileSync('/proc/cpuinfo', 'utf8'))?.[1] ?? 'unknown');
  await messages();
  await connections();
  await shopsAtRest(250);
  await shopsAtRest(1000);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
process.exit(0);
