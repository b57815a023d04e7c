import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { Refused } from '../../src/replication/exchange.ts';
import { brokers, type TestBroker } from '../support/brokers.ts';
import { handClock } from '../support/hand-clock.ts';
import { memoryBroker } from '../support/memory-broker.ts';
import { aReplica, areSame, type Replica, until } from '../support/replicas.ts';

const started: Replica[] = [];
afterEach(async () => {
  for (const replica of started.splice(0)) await replica.stop();
});

async function aShopOf(seats: readonly Replica['seat'][], { open, pace }: Pick<TestBroker, 'open' | 'pace'>) {
  const hand = handClock();
  const aTablet = async (seat: Replica['seat'], seed: number) => {
    const tablet = await aReplica({ open, seat, hand, seed });
    started.push(tablet);
    return tablet;
  };
  const tablets = await Promise.all(seats.map((seat, index) => aTablet(seat, index + 1)));
  const isCalm = async () =>
    tablets.every((tablet) => tablet.status().kind === 'up-to-date') && (await areSame(tablets));
  const become = (isSo: () => boolean | Promise<boolean>) => until(hand, isSo, { pace });
  return { hand, tablets, isCalm, become, aTablet };
}

const entriesOf = async ({ store }: Replica) => (await store.holding()).records;

describe.each(brokers)('with a broker, %s, tablets of one shop', (_, make) => {
  const broker = make();
  // A real one takes a while to start on a machine with other work.
  beforeAll(broker.begin, 60_000);
  afterAll(broker.end);

  test('that have worked apart hold the same as soon as they meet', async () => {
    await broker.anew();
    const { tablets, isCalm, become } = await aShopOf(['A', 'B', 'C'], broker);
    for (const [index, tablet] of tablets.entries()) await tablet.tap(3 + index);
    for (const tablet of tablets) tablet.start();
    await become(isCalm);
    expect(await Promise.all(tablets.map(entriesOf))).toEqual([12, 12, 12]);
  });

  test('have each tap of the others while they are in touch', async () => {
    await broker.anew();
    const { tablets, isCalm, become } = await aShopOf(['A', 'B'], broker);
    for (const tablet of tablets) tablet.start();
    await become(isCalm);
    for (const tablet of tablets) await tablet.tap();
    await become(async () => (await isCalm()) && (await entriesOf(tablets[0] as Replica)) === 2);
  });

  test('say so while it cannot be reached, with how much waits, and go on when it can be', async () => {
    await broker.anew();
    const { tablets, isCalm, become } = await aShopOf(['A', 'B'], broker);
    const [here] = tablets as [Replica, Replica];
    for (const tablet of tablets) tablet.start();
    await become(isCalm);
    await broker.setUp(false);
    await become(() => here.status().kind === 'unreachable');
    await here.tap(2);
    await become(() => {
      const status = here.status();
      return status.kind === 'unreachable' && status.entries === 2;
    });
    await broker.setUp(true);
    await become(async () => (await isCalm()) && (await entriesOf(here)) === 2);
  });

  test.each<[string, (at: number, last: number) => boolean]>([
    ['its tail', (at, last) => at > last - 4],
    ['its middle', (at, last) => at > 2 && at < last - 1],
    ['everything but its name', () => true],
  ])('give it again what it lost: %s', async (_what, isLost) => {
    await broker.anew();
    const { tablets, isCalm, become, aTablet } = await aShopOf(['A', 'B'], broker);
    for (const tablet of tablets) tablet.start();
    for (let round = 0; round < 4; round += 1) {
      for (const tablet of tablets) await tablet.tap();
      await become(isCalm);
    }
    await broker.lose(isLost);
    for (const tablet of tablets) tablet.running().hurry();
    const newcomer = await aTablet('C', 9);
    newcomer.start();
    await become(() => areSame([...tablets, newcomer]));
    expect(await entriesOf(newcomer)).toBe(8);
  });

  test('give it again what a seat in wrong hands took away, as often as that happens', async () => {
    await broker.anew();
    const { tablets, isCalm, become, aTablet } = await aShopOf(['A', 'B'], broker);
    for (const tablet of tablets) tablet.start();
    for (const tablet of tablets) await tablet.tap(3);
    await become(isCalm);
    for (let sweep = 0; sweep < 3; sweep += 1) {
      await broker.sweep('M');
      expect(await broker.messages()).toHaveLength(1);
      // Nobody is told: a look finds it out.
      for (const tablet of tablets) tablet.running().hurry();
      const newcomer = await aTablet('C', 9 + sweep);
      newcomer.start();
      await become(async () => (await entriesOf(newcomer)) === 6 + 2 * sweep);
      await newcomer.stop();
      for (const tablet of tablets) await tablet.tap();
      await become(isCalm);
    }
  });

  test('fill one that stands there anew, when the one that wrote is gone', async () => {
    await broker.anew();
    const { tablets, become, aTablet } = await aShopOf(['A', 'B'], broker);
    const [gone, stays] = tablets as [Replica, Replica];
    await gone.tap(5);
    for (const tablet of tablets) tablet.start();
    await become(async () => (await entriesOf(stays)) === 5);
    await gone.stop();
    await broker.wipe();
    stays.running().hurry();
    const newcomer = await aTablet('C', 9);
    newcomer.start();
    await become(async () => (await entriesOf(newcomer)) === 5);
  });
});

test('a tablet says why the broker refuses it, and goes on when it does no longer', async () => {
  const broker = memoryBroker();
  const { tablets, isCalm, become } = await aShopOf(['A'], { open: broker.open, pace: 0 });
  const [tablet] = tablets as [Replica];
  broker.refuse(new Refused('key', 'not this key'));
  tablet.start();
  await become(() => tablet.status().kind === 'refused');
  expect(tablet.status()).toEqual({ kind: 'refused', why: 'key' });
  broker.refuse(undefined);
  await become(isCalm);
});

test('a refusal stands, whatever is tapped meanwhile, until the tablet is let in again', async () => {
  const broker = memoryBroker();
  const { tablets, isCalm, become } = await aShopOf(['A'], { open: broker.open, pace: 0 });
  const [tablet] = tablets as [Replica];
  tablet.start();
  await become(isCalm);
  broker.refuse(new Refused('key', 'not this key'));
  for (const isUp of [false, true]) broker.setUp(isUp);
  await become(() => tablet.status().kind === 'refused');
  const before = tablet.statuses.length;
  await tablet.tap(2);
  // Some seconds go by.
  let looks = 0;
  await become(() => {
    looks += 1;
    return looks > 60;
  });
  expect(new Set(tablet.statuses.slice(before).map(({ kind }) => kind))).toEqual(new Set(['refused']));
  broker.refuse(undefined);
  await become(isCalm);
});
