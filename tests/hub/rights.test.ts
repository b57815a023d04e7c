/** What the generated configuration lets a seat do, asked of a real broker. */
import { jetstream, jetstreamManager } from '@nats-io/jetstream';
import { connect, headers, type NatsConnection, PermissionViolationError } from '@nats-io/transport-node';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { asAdmin, connectAs, makeStream, streamState, usersConnected } from '../../.ci/hub/broker-admin.mjs';
import { streamConfigs } from '../../.ci/hub/broker-config.mjs';
import { keysIn } from '../../.ci/hub/data-folder.mjs';
import { userKey } from '../../.ci/hub/nkey.mjs';
import { seatKey, seats } from '../../.ci/hub/shop-keys.mjs';
import { connectWith, openHub, type TestHub, takeSeat } from '../support/hub.ts';
import { aFolder } from '../support/hub-folder.ts';

const folder = aFolder();
let hub: TestHub;
let shop: string;
const open: NatsConnection[] = [];

beforeAll(async () => {
  hub = await openHub(folder);
  shop = hub.now().shop;
});
afterAll(async () => {
  await Promise.all(open.map((connection) => connection.close()));
  await hub?.close();
});

async function seat(letter: string): Promise<NatsConnection> {
  const connection = await takeSeat(hub, letter);
  open.push(connection);
  return connection;
}

const state = () => asAdmin(hub.now().broker, keysIn(hub.files), (admin) => streamState(admin, shop));

/** The subject that the broker refused to take a message on, or to let hear; undefined if it took it. */
async function refusal(connection: NatsConnection, act: () => void): Promise<string | undefined> {
  const statuses = connection.status();
  let refused: string | undefined;
  const heard = (async () => {
    for await (const status of statuses) {
      if (status.type === 'error' && status.error instanceof PermissionViolationError) {
        refused = status.error.subject;
        return;
      }
    }
  })();
  act();
  // The broker answers in order: what it has to say of the act comes before the answer to a ping.
  await connection.flush();
  await Promise.race([heard, new Promise((resolve) => setImmediate(resolve))]);
  return refused;
}

test('a seat sends on its own subjects, and the streams keep it, photos apart', async () => {
  const connection = await seat('A');
  const stream = jetstream(connection);
  for (const subject of ['ev.A', 'run.A.S1.1-9', 'ph.A.0f0f.0']) {
    const ack = await stream.publish(`tw.${shop}.${subject}`, 'sealed');
    expect(ack.stream).toBe(subject.startsWith('ph') ? `TW_${shop}_ph` : `TW_${shop}`);
  }
  expect(Object.keys((await state())?.subjects ?? {}).toSorted()).toEqual(
    ['ev.A', 'ph.A.0f0f.0', 'run.A.S1.1-9'].map((subject) => `tw.${shop}.${subject}`),
  );
});

test('the same message is kept once, and a seat is taken by one of two that ask at once', async () => {
  const stream = jetstream(await seat('C'));
  const first = await stream.publish(`tw.${shop}.run.C.1`, 'sealed', { msgID: 'S1:1-9:ab' });
  const again = await stream.publish(`tw.${shop}.run.C.1`, 'sealed', { msgID: 'S1:1-9:ab' });
  expect([first.duplicate, again.duplicate]).toEqual([false, true]);

  const nobody = { expect: { lastSubjectSequence: 0 } };
  const asked = await Promise.allSettled(
    ['one', 'other'].map((store) => stream.publish(`tw.${shop}.ev.C`, store, nobody)),
  );
  expect(asked.map(({ status }) => status).toSorted()).toEqual(['fulfilled', 'rejected']);
});

test('a seat reads what every seat has sent: all, the heads alone, one subject, and what comes', async () => {
  const connection = await seat('B');
  const stream = jetstream(connection);
  await stream.publish(`tw.${shop}.ev.B`, 'from B');
  const reader = await seat('D');
  const manager = await jetstreamManager(reader, { checkAPI: false });
  const { last_seq } = (await manager.streams.info(`TW_${shop}`)).state;
  const read = async (more: object) => {
    const consumer = await jetstream(reader).consumers.get(`TW_${shop}`, more);
    const messages = await consumer.fetch({ max_messages: 1, expires: 5000 });
    for await (const message of messages) return { subject: message.subject, text: message.string() };
    return undefined;
  };
  expect(await read({ opt_start_seq: last_seq })).toEqual({ subject: `tw.${shop}.ev.B`, text: 'from B' });
  expect(await read({ filter_subjects: `tw.${shop}.ev.B`, headers_only: true })).toEqual({
    subject: `tw.${shop}.ev.B`,
    text: '',
  });
  const live = await (
    await jetstream(reader).consumers.get(`TW_${shop}`, { opt_start_seq: last_seq + 1 })
  ).consume();
  await stream.publish(`tw.${shop}.ev.B`, 'a moment later');
  for await (const message of live) {
    expect(message.string()).toBe('a moment later');
    break;
  }
});

test('a roll-up puts one message in the place of those of its own subject', async () => {
  const connection = await seat('E');
  const stream = jetstream(connection);
  for (let n = 0; n < 5; n++) await stream.publish(`tw.${shop}.ev.E`, String(n));
  const others = Object.entries((await state())?.subjects ?? {}).filter(
    ([subject]) => !subject.endsWith('.ev.E'),
  );
  const rollUp = headers();
  rollUp.set('Nats-Rollup', 'sub');
  await stream.publish(`tw.${shop}.ev.E`, 'all', { headers: rollUp });
  const after = (await state())?.subjects ?? {};
  expect(after[`tw.${shop}.ev.E`]).toBe(1);
  expect(Object.entries(after).filter(([subject]) => !subject.endsWith('.ev.E'))).toEqual(others);
});

test.each(seats)('seat %s may send on no subject of another', async (letter) => {
  const connection = await seat(letter);
  for (const other of [...seats.filter((one) => one !== letter), 'N', '']) {
    for (const kind of ['ev', 'run', 'ph']) {
      const subject = `tw.${shop}.${kind}.${other || letter.toLowerCase()}${kind === 'ev' ? '' : '.x'}`;
      expect(await refusal(connection, () => connection.publish(subject, 'forged'))).toBe(subject);
    }
  }
});

test.each([
  ['STREAM.PURGE', '{}'],
  ['STREAM.DELETE', ''],
  ['STREAM.UPDATE', '{}'],
  ['STREAM.CREATE', '{}'],
  ['STREAM.MSG.DELETE', '{"seq":1}'],
  ['STREAM.SNAPSHOT', '{"deliver_subject":"x"}'],
  ['STREAM.RESTORE', '{}'],
  ['STREAM.MSG.GET', '{"seq":1}'],
  ['CONSUMER.DURABLE.CREATE', '{}'],
])('no seat may ask for %s', async (what, body) => {
  const before = await state();
  const connection = await seat('A');
  for (const name of [`TW_${shop}`, `TW_${shop}_ph`, 'TW_other']) {
    const subject = `$JS.API.${what}.${name}`;
    expect(await refusal(connection, () => connection.publish(subject, body))).toBe(subject);
  }
  expect(await state()).toEqual(before);
});

test('a seat hears its own inbox and nothing besides', async () => {
  const connection = await seat('A');
  for (const subject of [
    '>',
    'tw.>',
    `tw.${shop}.ev.B`,
    '_INBOX.>',
    `_INBOX_${shop}_B.x`,
    '$JS.>',
    '$SYS.>',
  ]) {
    expect(await refusal(connection, () => connection.subscribe(subject))).toBe(subject);
  }
  expect(await refusal(connection, () => connection.subscribe(`_INBOX_${shop}_A.x`))).toBeUndefined();
});

test('no consumer of a seat carries its messages to another subject of the stream', async () => {
  const connection = await seat('A');
  await jetstream(connection).publish(`tw.${shop}.run.A.forged`, '{}');
  const before = await state();
  const answers = [
    `tw.${shop}.ev.B`,
    `$JS.API.STREAM.PURGE.TW_${shop}`,
    `$JS.API.STREAM.DELETE.TW_${shop}`,
  ].map(async (target, index) => {
    const name = `trick${index}`;
    const filter = `tw.${shop}.run.A.forged`;
    const config = {
      name,
      deliver_subject: target,
      filter_subject: filter,
      ack_policy: 'none',
      deliver_policy: 'all',
    };
    const question = JSON.stringify({ stream_name: `TW_${shop}`, config });
    await connection.request(`$JS.API.CONSUMER.CREATE.TW_${shop}.${name}.${filter}`, question);
    // A message that was carried would be there before the next one is kept.
    await jetstream(connection).publish(`tw.${shop}.run.A.mark.${index}`, '');
  });
  await Promise.all(answers);
  const after = await state();
  expect(after?.created).toBe(before?.created);
  expect(after?.subjects[`tw.${shop}.ev.B`]).toBe(before?.subjects[`tw.${shop}.ev.B`]);
  expect(after?.messages).toBe((before?.messages ?? 0) + 3);
});

test('a key that is not of this shop is refused, as is none', async () => {
  const stranger = userKey(new Uint8Array(32).fill(7));
  await expect(connectWith(hub.now().broker, { seed: stranger.seed })).rejects.toThrow(/authorization/i);
  await expect(connect({ servers: hub.now().broker, reconnect: false })).rejects.toThrow(/authorization/i);
});

test('who may look at connections sees those of the shop, and may reach no entry', async () => {
  await seat('F');
  const keys = keysIn(hub.files);
  expect(await usersConnected(hub.now().broker, keys)).toContain(seatKey(keys.key, 'F').public);
  const watch = await connectAs(hub.now().broker, keys.watch);
  open.push(watch);
  await expect(watch.request(`$JS.API.STREAM.INFO.TW_${shop}`, '')).rejects.toThrow();
});

test('the broker takes a roll-up of everything from any seat: what DEVELOPERS.md says that a seat can do all the same', async () => {
  const stream = jetstream(await seat('H'));
  await jetstream(await seat('I')).publish(`tw.${shop}.ev.I`, 'from I');
  const rollUp = headers();
  rollUp.set('Nats-Rollup', 'all');
  const { seq } = await stream.publish(`tw.${shop}.ev.H`, 'all', { headers: rollUp });
  // A tablet sees it: the number of the first message has grown, and the counts are not what it knew.
  const left = Object.entries((await state())?.subjects ?? {});
  expect(left.filter(([subject]) => !subject.startsWith(`tw.${shop}.ph.`))).toEqual([[`tw.${shop}.ev.H`, 1]]);
  const manager = await jetstreamManager(await seat('D'), { checkAPI: false });
  expect((await manager.streams.info(`TW_${shop}`)).state.first_seq).toBe(seq);
});

test('a hub that was begun before photos had a stream keeps all that it has, and gets one', async () => {
  const { broker } = hub.now();
  const keys = keysIn(hub.files);
  const [log, photos] = streamConfigs(shop, 1);
  if (!log || !photos) throw new Error('there are two streams');
  await asAdmin(broker, keys, async (admin) => {
    for (const { name } of [log, photos]) await admin.request(`$JS.API.STREAM.DELETE.${name}`);
    const before = JSON.stringify({ ...log, subjects: [`tw.${shop}.>`] });
    const { error } = (await admin.request(`$JS.API.STREAM.CREATE.${log.name}`, before)).json<{
      error?: unknown;
    }>();
    expect(error).toBeUndefined();
  });
  const stream = jetstream(await seat('K'));
  await stream.publish(`tw.${shop}.ev.K`, 'from before');
  const before = await state();
  // At each start, twice or more.
  for (let start = 0; start < 2; start += 1)
    await makeStream({ broker, keys, replicas: 1, patience: 60_000, isOver: () => false });
  expect(await state()).toEqual(before);
  expect((await stream.publish(`tw.${shop}.ph.K.0f.2`, 'a piece')).stream).toBe(photos.name);
  expect((await stream.publish(`tw.${shop}.ev.K`, 'a tap')).stream).toBe(log.name);
});
