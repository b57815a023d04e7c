/** What a roll-up takes away, and what settings of a stream forbid it, asked of a real broker. */
import { type JetStreamManager, jetstream, jetstreamManager, type StreamConfig } from '@nats-io/jetstream';
import { headers, type NatsConnection } from '@nats-io/transport-node';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { connectAs } from '../../.ci/hub/broker-admin.mjs';
import { streamConfigs } from '../../.ci/hub/broker-config.mjs';
import { keysIn } from '../../.ci/hub/data-folder.mjs';
import { openHub, type TestHub, takeSeat } from '../support/hub.ts';
import { aFolder } from '../support/hub-folder.ts';

const folder = aFolder();
let hub: TestHub;
let admin: NatsConnection;
let manager: JetStreamManager;
beforeAll(async () => {
  hub = await openHub(folder);
  admin = await connectAs(hub.now().broker, keysIn(hub.files).admin);
  manager = await jetstreamManager(admin);
});
afterAll(async () => {
  await admin?.close();
  await hub?.close();
});

const rollUp = (what: string) => {
  const said = headers();
  said.set('Nats-Rollup', what);
  return said;
};

async function subjectsOf(stream: string): Promise<Record<string, number>> {
  const { state } = await manager.streams.info(stream, { subjects_filter: '>' });
  return { ...state.subjects };
}

/** A stream besides that of the shop, which differs from it as is said. */
async function aStream(name: string, more: Partial<StreamConfig>): Promise<string> {
  const config = { ...streamConfigs(name, 1)[0], ...more } as unknown as StreamConfig;
  await manager.streams.add({ ...config, name, subjects: [`${name}.>`] });
  return name;
}

test('a roll-up of all by one seat takes away what every seat has sent', async () => {
  const { shop } = hub.now();
  const [honest, hostile] = [await takeSeat(hub, 'A'), await takeSeat(hub, 'B')];
  for (let n = 0; n < 3; n += 1) await jetstream(honest).publish(`tw.${shop}.ev.A`, String(n));
  await jetstream(hostile).publish(`tw.${shop}.ev.B`, '', { headers: rollUp('all') });
  expect(await subjectsOf(`TW_${shop}`)).toEqual({ [`tw.${shop}.ev.B`]: 1 });
  await Promise.all([honest.close(), hostile.close()]);
});

test.each([
  ['purging is denied', { deny_purge: true, allow_rollup_hdrs: false }],
  ['roll-ups are not allowed', { allow_rollup_hdrs: false }],
] as const)('where %s, neither kind of roll-up is taken', async (what, more) => {
  const stream = await aStream(what.replaceAll(' ', '-'), more);
  await jetstream(admin).publish(`${stream}.A.1`, 'one');
  for (const kind of ['sub', 'all'])
    await expect(
      jetstream(admin).publish(`${stream}.A.1`, 'other', { headers: rollUp(kind) }),
    ).rejects.toThrow(/rollup not permitted/);
  expect(await subjectsOf(stream)).toEqual({ [`${stream}.A.1`]: 1 });
});

test('the broker makes no stream that allows roll-ups and denies purging: one kind cannot be had without the other', async () => {
  await expect(aStream('both', { deny_purge: true, allow_rollup_hdrs: true })).rejects.toThrow(/roll-?ups?/i);
});

test('with one message a subject, a seat’s numbered subjects take each other’s place one by one, without roll-ups', async () => {
  const stream = await aStream('slots', {
    max_msgs_per_subject: 1,
    deny_purge: true,
    deny_delete: true,
    allow_rollup_hdrs: false,
  });
  const put = (subject: string, text: string, after: number) =>
    jetstream(admin).publish(`${stream}.${subject}`, text, { expect: { lastSubjectSequence: after } });
  const first = await put('A.1', 'old', 0);
  await put('A.2', 'stays', 0);
  await put('B.1', 'of another', 0);
  await expect(put('A.1', 'by who has not read it', 0)).rejects.toThrow(/wrong last sequence/);
  const next = await put('A.1', 'new', first.seq);
  expect(next.seq).toBe(4);
  expect(await subjectsOf(stream)).toEqual({ 'slots.A.1': 1, 'slots.A.2': 1, 'slots.B.1': 1 });
  const consumer = await jetstream(admin).consumers.get(stream);
  const messages = await consumer.fetch({ max_messages: 3, expires: 5000 });
  const read: string[] = [];
  for await (const message of messages) read.push(message.string());
  expect(read).toEqual(['stays', 'of another', 'new']);
});
