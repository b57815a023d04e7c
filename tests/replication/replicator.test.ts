import { afterEach, describe, expect, test } from 'vitest';
import { Refused } from '../../src/replication/exchange.ts';
import { handClock } from '../support/hand-clock.ts';
import { memoryBroker } from '../support/memory-broker.ts';
import { aReplica, areSame, type Replica, until } from '../support/replicas.ts';

const started: Replica[] = [];
afterEach(async () => {
  for (const replica of started.splice(0)) await replica.stop();
});

async function aShopOf(seats: readonly Replica['seat'][]) {
  const hand = handClock();
  const broker = memoryBroker();
  const tablets = await Promise.all(
    seats.map((seat, index) => aReplica({ open: broker.open, seat, hand, seed: index + 1 })),
  );
  started.push(...tablets);
  const isCalm = async () =>
    tablets.every((tablet) => tablet.status().kind === 'up-to-date') && (await areSame(tablets));
  return { hand, broker, tablets, isCalm };
}

const entriesOf = async ({ store }: Replica) => (await store.holding()).records;

describe('tablets of one shop', () => {
  test('that have worked apart show the same as soon as they meet', async () => {
    const { hand, tablets, isCalm } = await aShopOf(['A', 'B', 'C']);
    for (const [index, tablet] of tablets.entries()) await tablet.tap(3 + index);
    for (const tablet of tablets) tablet.start();
    await until(hand, isCalm);
    expect(await Promise.all(tablets.map(entriesOf))).toEqual([12, 12, 12]);
  });

  test('have each tap of the others while they are in touch', async () => {
    const { hand, tablets, isCalm } = await aShopOf(['A', 'B']);
    for (const tablet of tablets) tablet.start();
    await until(hand, isCalm);
    for (const tablet of tablets) await tablet.tap();
    await until(hand, async () => (await isCalm()) && (await entriesOf(tablets[0] as Replica)) === 2);
  });

  test('say so while the broker cannot be reached, with how much waits', async () => {
    const { hand, broker, tablets, isCalm } = await aShopOf(['A', 'B']);
    const [here] = tablets as [Replica, Replica];
    for (const tablet of tablets) tablet.start();
    await until(hand, isCalm);
    broker.setUp(false);
    await until(hand, () => here.status().kind === 'unreachable');
    await here.tap(2);
    await until(hand, () => {
      const status = here.status();
      return status.kind === 'unreachable' && status.entries === 2;
    });
    broker.setUp(true);
    await until(hand, isCalm);
    expect(await Promise.all(tablets.map(entriesOf))).toEqual([2, 2]);
  });

  test('say why the broker refuses them, and go on when it does no longer', async () => {
    const { hand, broker, tablets, isCalm } = await aShopOf(['A']);
    broker.refuse(new Refused('key', 'not this key'));
    for (const tablet of tablets) tablet.start();
    await until(hand, () => tablets[0]?.status().kind === 'refused');
    expect(tablets[0]?.status()).toEqual({ kind: 'refused', why: 'key' });
    broker.refuse(undefined);
    await until(hand, isCalm);
  });
});

describe('a broker that has lost', () => {
  test.each<[string, (at: number, last: number) => boolean]>([
    ['its tail', (at, last) => at > last - 4],
    ['its middle', (at, last) => at > 2 && at < last - 1],
    ['everything but its name', () => true],
  ])('%s gets it again from those who hold it', async (_, isLost) => {
    const { hand, broker, tablets, isCalm } = await aShopOf(['A', 'B']);
    for (const tablet of tablets) tablet.start();
    for (let round = 0; round < 4; round += 1) {
      for (const tablet of tablets) await tablet.tap();
      await until(hand, isCalm);
    }
    const last = broker.messages().at(-1)?.at ?? 0;
    broker.lose(({ at }) => isLost(at, last));
    const newcomer = await aReplica({ open: broker.open, seat: 'C', hand, seed: 9 });
    started.push(newcomer);
    newcomer.start();
    await until(hand, () => areSame([...tablets, newcomer]));
    expect(await entriesOf(newcomer)).toBe(8);
  });

  test('everything, and stands there anew, is filled by the others when the one that wrote it is gone', async () => {
    const { hand, broker, tablets, isCalm } = await aShopOf(['A', 'B']);
    const [gone, stays] = tablets as [Replica, Replica];
    for (const tablet of tablets) tablet.start();
    await gone.tap(5);
    await until(hand, isCalm);
    await until(hand, async () => (await entriesOf(stays)) === 5);
    await gone.stop();
    broker.wipe();
    const newcomer = await aReplica({ open: broker.open, seat: 'C', hand, seed: 9 });
    started.push(newcomer);
    newcomer.start();
    await until(hand, async () => (await entriesOf(newcomer)) === 5);
  });
});
