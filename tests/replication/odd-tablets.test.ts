import { afterEach, expect, test } from 'vitest';
import { foldLanes } from '../../src/replication/folding.ts';
import { readLedger } from '../../src/replication/meeting.ts';
import { takeSeat } from '../../src/replication/seat-claim.ts';
import { seatLetters } from '../../src/replication/shop-key.ts';
import { memoryLog } from '../../src/store/memory-log.ts';
import { clonedTablet } from '../support/cloned-tablet.ts';
import { spellDraft } from '../support/drafts.ts';
import { handClock } from '../support/hand-clock.ts';
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

function aPlace() {
  const hand = handClock();
  const broker = memoryBroker();
  const join = async (
    seat: Replica['seat'],
    more: Partial<Parameters<typeof aReplica>[0]> = {},
  ): Promise<Replica> => {
    const tablet = await aReplica({
      open: broker.open,
      seat,
      hand,
      seed: seatLetters.indexOf(seat) + 1,
      ...more,
    });
    started.push(tablet);
    return tablet;
  };
  const calm = (tablets: readonly Replica[]) =>
    until(
      hand,
      async () =>
        tablets.every((tablet) => tablet.status().kind === 'up-to-date') && (await areSame(tablets)),
    );
  return { hand, broker, join, calm };
}

const recordsOf = async ({ store }: Replica) => (await store.holding()).records;

test('a cloned tablet and its original both keep every tap, and go on under names of their own', async () => {
  const { join, calm, hand } = aPlace();
  const { common, here, there } = clonedTablet({ wall: hand.clock.now() });
  const station = here[0]?.event.station;
  if (!station) throw new Error('a log has a station');
  const [one, clone] = [
    await join('A', { store: memoryLog(station) }),
    await join('B', { store: memoryLog(station) }),
  ];
  await one.store.merge({ entries: here, now: hand.clock.now() });
  await clone.store.merge({ entries: there, now: hand.clock.now() });
  for (const tablet of [one, clone]) tablet.start();
  await calm([one, clone]);
  expect(await recordsOf(one)).toBe(here.length + there.length - common);
  for (const tablet of [one, clone]) await tablet.tap(2);
  const third = await join('C');
  third.start();
  await until(hand, async () => (await recordsOf(third)) === here.length + there.length - common + 4);
  await calm([one, clone, third]);
  expect(third.aside).toEqual([]);
});

test('a tablet that was put back to an old backup takes a new station, and gets again what it had', async () => {
  const { join, calm, hand } = aPlace();
  const [before, other] = [await join('A'), await join('B')];
  await before.tap(3);
  const backup = await before.store.entries();
  await before.tap(4);
  for (const tablet of [before, other]) tablet.start();
  await calm([before, other]);
  await before.stop();
  const old = memoryLog(before.store.station());
  // The backup is of its own station: a store that is filled from one goes on under another.
  await old.merge({ entries: backup, now: hand.clock.now() });
  expect(old.station()).not.toBe(before.store.station());
  const again = await join('A', { store: old, seed: 77 });
  again.start();
  await again.tap(1);
  await until(hand, async () => (await recordsOf(again)) === 8 && areSame([again, other]));
});

test('a tablet whose store lost its tail unnoticed takes a new station when that comes in', async () => {
  const { join, hand, calm } = aPlace();
  const whole = await join('A');
  await whole.tap(5);
  whole.start();
  await calm([whole]);
  const torn = memoryLog(whole.store.station());
  for (let tap = 0; tap < 2; tap += 1)
    await torn.append({ act: `torn ${tap}`, drafts: [spellDraft('wax')], now: hand.clock.now() });
  await whole.stop();
  const again = await join('A', { store: torn, seed: 78 });
  again.start();
  await until(hand, async () => (await recordsOf(again)) === 7);
  expect(torn.station()).not.toBe(whole.store.station());
});

test.each([
  ['decades ahead', 40 * 365],
  ['years behind', -6 * 365],
])(
  'a tablet whose clock is %s harms nobody: all taps are there, and no other clock is drawn along',
  async (_, days) => {
    const { join, calm, hand } = aPlace();
    const wild = await join('A', { now: () => hand.clock.now() + days * 86_400_000 });
    const sound = await join('B');
    await wild.tap(3);
    for (const tablet of [wild, sound]) tablet.start();
    await calm([wild, sound]);
    await sound.tap();
    await until(hand, async () => (await recordsOf(wild)) === 4);
    const [own] = (await sound.store.latestOwn(1)).events;
    // The most that a foreign stamp may draw a clock along is 24 h (domain/log/stamp.ts).
    expect(Math.abs((own?.stamp.wall ?? 0) - hand.clock.now())).toBeLessThan(24 * 3_600_000);
  },
);

test('many short messages are folded into a few long ones, from which a newcomer gets everything', async () => {
  const { join, calm, hand, broker } = aPlace();
  const busy = await join('A');
  busy.start();
  await calm([busy]);
  const watching = await join('B');
  watching.start();
  const last = () => broker.messages().at(-1)?.at ?? 0;
  for (let message = 0; message < 320; message += 1) {
    const before = last();
    await busy.tap();
    await until(hand, () => last() > before);
  }
  busy.running().hurry();
  // The long ones stand there a moment before the short ones go.
  await until(hand, () => broker.messages().length < 300);
  await calm([busy, watching]);
  expect(broker.messages().find(({ lane }) => lane === 'run.1')).toMatchObject({ seat: 'A', kind: 'pack1' });
  const newcomer = await join('C');
  newcomer.start();
  await calm([busy, watching, newcomer]);
  expect(await recordsOf(newcomer)).toBe(320);
  expect([...watching.aside, ...newcomer.aside]).toEqual([]);
});

test('a lane on which a clone has written meanwhile is not cleared', async () => {
  const { broker, join, calm } = aPlace();
  const tablet = await join('A');
  await tablet.tap(2);
  tablet.start();
  await calm([tablet]);
  await tablet.stop();
  const exchange = await broker.open('A');
  const { messageDesk } = await import('../../src/replication/message.ts');
  const { eventsKeyOf } = await import('../../src/replication/shop-key.ts');
  const { intake } = await import('../../src/replication/intake.ts');
  const { knownEnds } = await import('../../src/replication/known-ends.ts');
  const desk = messageDesk({
    shop: testShop,
    seat: 'A',
    key: await eventsKeyOf(testKey),
    random: guessableBytes(8),
  });
  const nothing = () => undefined;
  const reading = intake({
    ...{ store: tablet.store, desk, held: knownEnds(), now: () => 0 },
    ...{ setAside: nothing, onMerged: nothing, onWanted: nothing },
  });
  for (let message = 0; message < 301; message += 1)
    await exchange.push([
      await desk.seal({ kind: 'seat1', tablet: `clone${message}` }, { lane: 'ev', body: new Uint8Array() }),
    ]);
  const ledger = await readLedger(exchange, reading);
  const late = await desk.seal({ kind: 'seat1', tablet: 'late' }, { lane: 'ev', body: new Uint8Array() });
  await exchange.push([late]);
  await foldLanes({ exchange, ledger, desk, seat: 'A', store: tablet.store, tablet: 'tableta' });
  expect(broker.messages().some(({ head }) => head === late.head)).toBe(true);
  expect(broker.messages().length).toBeGreaterThan(300);
});

test('two tablets that join at once take two seats; one that joins again gets its own; the fourteenth gets none', async () => {
  const broker = memoryBroker();
  const invitation = { address: 'wss://shop-pc.lan/sync', shop: testShop, key: testKey };
  const claim = (tablet: string, seed: number) =>
    takeSeat({ invitation, tablet, open: (seat) => broker.open(seat), random: guessableBytes(seed) });
  const [one, two] = await Promise.all([claim('tablet1', 1), claim('tablet2', 2)]);
  expect(new Set([one, two])).toEqual(new Set(['A', 'B']));
  expect(await claim('tablet1', 3)).toBe(one);
  for (let tablet = 3; tablet <= 13; tablet += 1)
    expect(await claim(`tablet${tablet}`, tablet + 10)).toBeDefined();
  expect(await claim('tablet14', 40)).toBeUndefined();
});
