import { utf8ToBytes } from '@noble/hashes/utils.js';
import { afterEach, describe, expect, test } from 'vitest';
import { chained, type Entry } from '../../src/domain/log/chain.ts';
import { packRun } from '../../src/domain/packed/pack-run.ts';
import { headOfRun } from '../../src/domain/packed/stretch.ts';
import type { Placed } from '../../src/replication/exchange.ts';
import { headOfEntries, logBody } from '../../src/replication/log-body.ts';
import { messageDesk, type Said } from '../../src/replication/message.ts';
import { packBody } from '../../src/replication/pack-body.ts';
import { eventsKeyOf, type Seat } from '../../src/replication/shop-key.ts';
import { wrapped } from '../../src/replication/wrapping.ts';
import { foreignLog } from '../support/drafts.ts';
import { handClock } from '../support/hand-clock.ts';
import { longLog } from '../support/long-logs.ts';
import { memoryBroker } from '../support/memory-broker.ts';
import {
  aReplica,
  areSame,
  guessableBytes,
  type Replica,
  testKey,
  testShop,
  until,
} from '../support/replicas.ts';

const started: Replica[] = [];
afterEach(async () => {
  for (const replica of started.splice(0)) await replica.stop();
});

const otherKey = Uint8Array.from(testKey, (byte) => byte ^ 1);
let seeds = 500;

/** A message as a holder of `key` at `seat` would put it. */
async function sealed(
  said: Said,
  body: Uint8Array,
  { seat = 'B', key = testKey, shop = testShop }: { seat?: Seat; key?: typeof testKey; shop?: string } = {},
): Promise<Omit<Placed, 'at'>> {
  seeds += 1;
  const desk = messageDesk({ shop, seat, key: await eventsKeyOf(key), random: guessableBytes(seeds) });
  const { id: _id, ...message } = await desk.seal(said, { lane: 'ev', body: wrapped(body) });
  return { ...message, seat };
}

const entries = chained(foreignLog()) as readonly Entry[];
const head = headOfEntries(entries);
const sound = () => sealed({ kind: 'log1', head }, logBody(entries));
const changed = (change: (text: string) => string) =>
  sealed({ kind: 'log1', head }, utf8ToBytes(change(new TextDecoder().decode(logBody(entries)))));

/** Entries whose links fit and whose events say what no station of ours would. */
function forged(change: object) {
  const told = chained(
    foreignLog().map((event, at) => (at === 2 ? { ...event, ...change } : event)) as never,
  );
  return sealed({ kind: 'log1', head: headOfEntries(told) }, logBody(told));
}

async function packed(change: object = {}, text = (body: Uint8Array) => body) {
  const run = packRun(longLog(300).map((entry) => ({ entry })));
  return sealed({ kind: 'pack1', head: { ...headOfRun(run), ...change } }, text(packBody(run)));
}

/** A tablet with a tap of its own, a broker with one message too many, and another tablet's tap behind it. */
async function tabletThatMet(...planted: readonly Omit<Placed, 'at'>[]) {
  const hand = handClock();
  const broker = memoryBroker();
  for (const message of planted) broker.plant(message);
  const here = await aReplica({ open: broker.open, seat: 'A', hand, seed: 1 });
  const there = await aReplica({ open: broker.open, seat: 'C', hand, seed: 2 });
  started.push(here, there);
  await here.tap();
  here.start();
  await until(hand, () => here.status().kind === 'up-to-date');
  await there.tap(2);
  there.start();
  await until(hand, async () => (await here.store.holding()).records >= 3 && areSame([here, there]));
  return { here, there, broker, hand };
}

test('what another tablet of the shop has sealed comes in', async () => {
  const { here } = await tabletThatMet(await sound());
  expect(here.aside).toEqual([]);
  expect((await here.store.holding()).records).toBe(3 + entries.length);
});

test('a run that another tablet has sealed comes in', async () => {
  const { here } = await tabletThatMet(await packed());
  expect(here.aside).toEqual([]);
  expect((await here.store.holding()).records).toBe(303);
});

describe('a message is set aside, told of, and what else comes goes on:', () => {
  const flipped = (message: Omit<Placed, 'at'>): Omit<Placed, 'at'> => ({
    ...message,
    body: Uint8Array.from(message.body ?? [], (byte, at) => (at === 40 ? byte ^ 1 : byte)),
  });

  test.each<[string, Placed['kind'], () => Promise<Omit<Placed, 'at'>>]>([
    [
      'sealed under another key',
      'not-sealed-here',
      () => sealed({ kind: 'log1', head }, logBody(entries), { key: otherKey }),
    ],
    [
      'of another shop under the same key',
      'not-sealed-here',
      () => sealed({ kind: 'log1', head }, logBody(entries), { shop: 'other' }),
    ],
    ['moved to another seat', 'not-sealed-here', async () => ({ ...(await sound()), seat: 'D' })],
    ['moved to another lane', 'not-sealed-here', async () => ({ ...(await sound()), lane: 'run.1' })],
    ['said to be of another kind', 'not-sealed-here', async () => ({ ...(await sound()), kind: 'pack1' })],
    ['of a kind that is not known', 'newer', async () => ({ ...(await sound()), kind: 'log9' })],
    [
      'with the head of another',
      'not-sealed-here',
      async () => ({ ...(await sound()), head: (await packed()).head }),
    ],
    [
      'with the body of another',
      'not-sealed-here',
      async () => ({ ...(await sound()), body: (await sound()).body }),
    ],
    ['with a bit changed', 'not-sealed-here', async () => flipped(await sound())],
    ['without a body', 'not-sealed-here', async () => ({ ...(await sound()), body: new Uint8Array() })],
    ['without a head', 'not-sealed-here', async () => ({ ...(await sound()), head: '' })],
    [
      'whose head is no head',
      'malformed',
      () => sealed({ kind: 'log1', head: { ...head, entries: 0 } }, logBody(entries)),
    ],
    [
      'whose head promises more',
      'malformed',
      () => sealed({ kind: 'log1', head: { ...head, entries: head.entries + 1 } }, logBody(entries)),
    ],
    [
      'whose head names another station',
      'malformed',
      () =>
        sealed(
          { kind: 'log1', head: { ...head, station: 'station-y' as typeof head.station } },
          logBody(entries),
        ),
    ],
    ['whose chain is broken', 'malformed', () => changed((text) => text.replace('"pieces":8', '"pieces":9'))],
    ['that is no JSON', 'malformed', () => changed((text) => text.replace('{', '('))],
    ['that is cut', 'malformed', () => changed((text) => text.slice(0, -20))],
    [
      'that is written with spaces',
      'malformed',
      () => changed((text) => text.replaceAll(',"seq"', ', "seq"')),
    ],
    ['with a number beyond reason', 'malformed', () => forged({ stamp: { wall: 9e15, tick: 0 } })],
    ['with an event that no schema fits', 'malformed', () => forged({ day: 'yesterday' })],
    ['with a run that its head does not tell of', 'malformed', () => packed({ first: 2 })],
    [
      'with a run that is damaged',
      'malformed',
      () => packed({}, (body) => body.map((byte, at) => (at === 4000 ? byte ^ 1 : byte))),
    ],
  ])('%s', async (_, reason, make) => {
    const { here, broker } = await tabletThatMet(await make());
    expect(here.aside).toMatchObject([{ at: 1, reason }]);
    expect((await here.store.holding()).records).toBe(3);
    // It is left where it is.
    expect(broker.messages().some(({ at }) => at === 1)).toBe(true);
  });

  test('that stood there before', async () => {
    const message = await sound();
    const { here } = await tabletThatMet(message, message);
    expect(here.aside).toMatchObject([{ at: 2, reason: 'repeated' }]);
    expect((await here.store.holding()).records).toBe(3 + entries.length);
  });
});

test('what a spoilt message promised is sent again by a tablet that holds it', async () => {
  const spoilt = { ...(await sound()), body: Uint8Array.of(1, 2, 3) };
  const { here, broker, hand } = await tabletThatMet(spoilt);
  const holder = await aReplica({ open: broker.open, seat: 'B', hand, seed: 3 });
  started.push(holder);
  await holder.store.merge({ entries, now: hand.clock.now() });
  holder.start();
  await until(hand, async () => (await here.store.holding()).records === 3 + entries.length);
  expect(here.aside).toMatchObject([{ at: 1 }]);
});
