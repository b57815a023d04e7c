/** Three stations of one shop that tap at once, a thousand times each, while the lines to a real broker are cut at random. */
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Session } from '../../src/app/session.ts';
import { seededRandom } from '../../src/domain/chance/seeded-random.ts';
import { stagesOfTray } from '../../src/domain/rollup/waiting.ts';
import type { Exchange } from '../../src/replication/exchange.ts';
import { type Broker, startBroker } from '../support/broker.ts';
import { handClock } from '../support/hand-clock.ts';
import { openTestSession, setUpWorkshop } from '../support/open-test-session.ts';
import { aReplica, areSame, type Replica, testKey, testShop, until } from '../support/replicas.ts';
import { expectSameSums } from '../support/same-shop.ts';
import { seedFrom } from '../support/seed.ts';
import { batch, stage, variant } from '../support/workshop.ts';

let broker: Broker;
beforeAll(async () => {
  broker = await startBroker({ shop: testShop, key: testKey });
}, 60_000);
afterAll(() => broker.stop());

const [rounds, pieces, trays] = [1000, 500, 4];

test('three stations hold the same 3,000 taps, each of which counts once, however often their lines are cut', async () => {
  const random = seededRandom(seedFrom(process.env, 1));
  const hands = handClock();
  const lines = new Set<Exchange>();
  const open = async (seat: Replica['seat']) => {
    const line = await broker.open(seat);
    lines.add(line);
    void line.closed.then(() => lines.delete(line));
    return line;
  };
  const seats = ['A', 'B', 'C'] as const;
  const tablets = await Promise.all(
    seats.map((seat, index) => aReplica({ open, seat, hand: hands, seed: index + 1 })),
  );
  const [first, ...others] = tablets.map(async ({ store }) => openTestSession({ log: store, hands }));
  if (!first) throw new Error('there are three');
  const { session } = await first;
  await setUpWorkshop(session);
  await session.act({
    kind: 'make-trays',
    ...{ variant: variant['ash-copper'], batch: batch.spring, pieces, trays },
  });
  for (const tablet of tablets) tablet.start();
  await until(hands, () => areSame(tablets), { pace: 4 });
  const sessions: readonly Session[] = [session, ...(await Promise.all(others)).map((each) => each.session)];
  for (const each of sessions) await each.refresh();

  const names = [...session.view.value.shop.trays.keys()];
  const leftIn = ({ view }: Session, tray: (typeof names)[number]) =>
    stagesOfTray(view.value.shop, tray).find((each) => each.stage === stage.bore)?.waiting.first ?? 0;
  const left = (each: Session) => names.reduce((sum, tray) => sum + leftIn(each, tray), 0);
  const tally = { passed: 0, undone: 0, cuts: 0 };

  /** A pass, or every third time the last one taken back; each is either saved or a failure of the test. */
  async function tapOn(each: Session, round: number): Promise<void> {
    if (round % 3 === 2) {
      expect(await each.undoLast()).toMatchObject({ kind: 'saved' });
      tally.undone += 1;
      return;
    }
    const tray = names[Math.floor(random() * names.length)] ?? names[0];
    if (!tray) throw new Error('trays were made');
    const shown = leftIn(each, tray);
    const spot = { tray, stage: stage.bore, at: 'waiting', grade: 'first', shown } as const;
    expect(await each.act({ kind: 'pass', spot, pieces: 1 })).toMatchObject({ kind: 'saved' });
    tally.passed += 1;
  }

  for (let round = 0; round < rounds; round += 1) {
    await Promise.all(sessions.map((each) => tapOn(each, round)));
    for (const tablet of tablets) tablet.running().news();
    hands.pass(300);
    await new Promise((resolve) => setTimeout(resolve, 2));
    if (random() < 0.05)
      for (const line of lines)
        if (random() < 0.5) {
          line.close();
          tally.cuts += 1;
        }
    // What the others did comes into view now and then, as a screen reads it.
    if (random() < 0.1) await Promise.all(sessions.map((each) => each.refresh()));
  }

  await until(hands, async () => (await areSame(tablets)) && tablets.every(isCalm), { pace: 4 });
  expect(tally.cuts).toBeGreaterThan(20);
  expect(tally.passed + tally.undone).toBe(3 * rounds);
  for (const each of sessions) {
    await each.refresh();
    expect(left(each)).toBe(pieces * trays - tally.passed + tally.undone);
    expectSameSums(each.view.value.shop, session.view.value.shop);
  }
  const kinds = ((await tablets[0]?.store.entries()) ?? []).map(({ event }) => event.kind);
  const written = (kind: string) => kinds.filter((each) => each === kind).length;
  expect({ passed: written('passed'), undone: written('voided') }).toEqual({
    passed: tally.passed,
    undone: tally.undone,
  });
  expect(tablets.flatMap(({ aside }) => aside)).toEqual([]);
  for (const tablet of tablets) await tablet.stop();

  // A newcomer gets all of it from the broker alone.
  const newcomer = await aReplica({ open, seat: 'D', hand: hands, seed: 9 });
  newcomer.start();
  await until(hands, () => areSame([...tablets, newcomer]), { pace: 4 });
  await newcomer.stop();
  const { session: there } = await openTestSession({ log: newcomer.store, hands });
  expectSameSums(there.view.value.shop, session.view.value.shop);
}, 240_000);

const isCalm = (tablet: Replica) => tablet.status().kind === 'up-to-date';
