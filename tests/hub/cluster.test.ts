/** Three PCs as one hub, by the same templates: what was acknowledged is there when one of them dies. */
import { cpSync } from 'node:fs';
import { join } from 'node:path';
import { jetstream, jetstreamManager } from '@nats-io/jetstream';
import { afterAll, expect, inject, test } from 'vitest';
import { makeStream } from '../../.ci/hub/broker-admin.mjs';
import { keysIn, openFolder } from '../../.ci/hub/data-folder.mjs';
import { freePorts } from '../../.ci/hub/free-ports.mjs';
import { keepRunning } from '../../.ci/hub/keep-running.mjs';
import { nodesOf } from '../../.ci/hub/nodes.mjs';
import { seatKey } from '../../.ci/hub/shop-keys.mjs';
import { writeBrokerConfig } from '../../.ci/hub/written-config.mjs';
import { connectWith } from '../support/hub.ts';
import { aFolder } from '../support/hub-folder.ts';

const folder = aFolder();
const running = new Map<string, ReturnType<typeof keepRunning>>();
afterAll(async () => {
  await Promise.all([...running.values()].map((node) => node.stop()));
});

const names = ['bench', 'office', 'attic'];

/** Starts a broker on each of three folders that began as copies of the first, as the guide says. */
async function openCluster() {
  const ports = await freePorts(9);
  const HUB_NODES = names.map((name, index) => `${name}=127.0.0.1:${ports[index]}`).join(' ');
  const first = openFolder(join(folder, 'bench'));
  const keys = keysIn(first);
  return {
    keys,
    nodes: names.map((name, index) => {
      const files = openFolder(join(folder, name));
      if (name !== 'bench') cpSync(first.keys, files.keys);
      const client = `127.0.0.1:${ports[3 + index]}`;
      const websocket = `127.0.0.1:${ports[6 + index]}`;
      writeBrokerConfig(files, keysIn(files), {
        client,
        websocket,
        nodes: nodesOf({ HUB_NODES, HUB_NODE: name }),
      });
      const start = () =>
        running.set(
          name,
          keepRunning({
            name,
            command: inject('hubPrograms').broker,
            args: ['-c', files.brokerConfig],
            say: () => {},
            // One that was killed stays dead until the test starts it.
            wait: () => 1_000_000,
          }),
        );
      start();
      return { name, client, start };
    }),
  };
}

test('with the leader killed in mid-publish, no acknowledged message is missing, whichever of the three is asked', async () => {
  const { keys, nodes } = await openCluster();
  const patience = 60_000;
  const isOver = () => false;
  await makeStream({ broker: nodes[0]?.client ?? '', keys, replicas: 3, patience, isOver });
  // The others find it there.
  for (const { client } of nodes) await makeStream({ broker: client, keys, replicas: 3, patience, isOver });

  const stream = `TW_${keys.shop}`;
  const seat = (client: string) =>
    connectWith(client, { seed: seatKey(keys.key, 'A').seed, inboxPrefix: `_INBOX_${keys.shop}_A` });
  const clusterBy = async (client: string) => {
    const connection = await seat(client);
    const manager = await jetstreamManager(connection, { checkAPI: false });
    const { cluster } = await manager.streams.info(stream);
    await connection.close();
    return cluster;
  };
  const leaderOf = async (client: string) => (await clusterBy(client))?.leader;
  /** How many of those that follow the leader have all that it has. */
  const replicasUpToDate = async (client: string) =>
    (await clusterBy(client))?.replicas?.filter(({ current }) => current).length ?? 0;
  const leader = await leaderOf(nodes[0]?.client ?? '');
  const led = nodes.find(({ name }) => name === leader);
  const [other, third] = nodes.filter(({ name }) => name !== leader);
  if (!led || !other || !third) throw new Error(`The stream is led by ${leader}.`);

  const connection = await seat(other.client);
  const acknowledged: string[] = [];
  for (let n = 0; n < 300; n++) {
    const text = `entry ${n}`;
    const publish = () =>
      jetstream(connection)
        .publish(`tw.${keys.shop}.ev.A`, text, { msgID: text, timeout: 2000 })
        .then(
          () => true,
          () => false,
        );
    let answer = publish();
    if (n === 100) process.kill(running.get(led.name)?.pid() ?? 0, 'SIGKILL');
    // As tablets do: the same message by the same name until it is acknowledged.
    while (!(await answer)) answer = publish();
    acknowledged.push(text);
  }
  await connection.close();
  expect(acknowledged).toHaveLength(300);
  expect([other.name, third.name]).toContain(await leaderOf(third.client));

  led.start();
  for (const { client } of nodes) {
    const read = async () => {
      const reader = await seat(client);
      try {
        const consumer = await jetstream(reader).consumers.get(stream);
        const texts: string[] = [];
        const messages = await consumer.fetch({ max_messages: 300, expires: 10_000 });
        for await (const message of messages) texts.push(message.string());
        return texts;
      } finally {
        await reader.close();
      }
    };
    // The one that was dead starts, and catches up.
    await expect.poll(() => read().catch(() => []), { timeout: 30_000 }).toEqual(acknowledged);
  }
  await expect.poll(() => replicasUpToDate(other.client).catch(() => 0), { timeout: 30_000 }).toBe(2);
});

test('a node that does not know the shop’s keys is let in by none of the others', async () => {
  const ports = await freePorts(4);
  const HUB_NODES = names.map((name, index) => `${name}=127.0.0.1:${ports[index]}`).join(' ');
  const configs = ['bench', 'office'].map((name) => {
    const files = openFolder(join(folder, `strange-${name}`));
    const where = {
      client: '127.0.0.1:-1',
      websocket: '127.0.0.1:-1',
      nodes: nodesOf({ HUB_NODES, HUB_NODE: name }),
    };
    // Each makes keys of its own.
    writeBrokerConfig(files, keysIn(files), where);
    return files.brokerConfig;
  });
  const heard: string[] = [];
  const kept = configs.map((config) =>
    keepRunning({
      name: 'Broker',
      command: inject('hubPrograms').broker,
      args: ['-c', config],
      say: (line: string) => heard.push(line),
    }),
  );
  await expect
    .poll(() => heard.join('\n'), { timeout: 20_000 })
    .toMatch(/Authorization (Violation|Error)|authentication error/i);
  await Promise.all(kept.map((node) => node.stop()));
});
