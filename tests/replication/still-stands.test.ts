import { expect, test } from 'vitest';
import { readLedger, stillStands } from '../../src/replication/meeting.ts';
import { memoryBroker } from '../support/memory-broker.ts';

const message = (head: string) =>
  ({ seat: 'A', lane: 'ev', kind: 'log1', head, body: new Uint8Array() }) as const;

/** A broker with three messages, what was read of it, and hands on what comes then. */
async function read() {
  const broker = memoryBroker();
  for (const head of ['one', 'two', 'three']) broker.plant(message(head));
  const exchange = await broker.open('B');
  const ledger = await readLedger(exchange, {
    note: async (placed, into) => {
      into.note(placed, null);
      return null;
    },
  });
  const come = () => broker.messages().forEach((each) => void ledger.note(each, null));
  return { broker, come, isStill: stillStands({ exchange, ledger }) };
}

test('a broker that holds what was read of it is believed, look by look', async () => {
  const { isStill } = await read();
  expect([await isStill(), await isStill()]).toEqual([true, true]);
});

test('one that gives the last place anew is read anew, though it says the same of itself', async () => {
  const { broker, isStill } = await read();
  broker.lose(({ at }) => at === 3);
  broker.plant(message('other'));
  expect(await isStill()).toBe(false);
});

test('one that lost a message in the middle, or all of them, is read anew', async () => {
  const [middle, all] = [await read(), await read()];
  middle.broker.lose(({ at }) => at === 2);
  all.broker.lose(() => true);
  expect(await middle.isStill()).toBe(false);
  expect(await all.isStill()).toBe(false);
});

test('what is on its way is waited for until the next look, and then not any more', async () => {
  const { broker, isStill } = await read();
  broker.plant(message('four'));
  expect([await isStill(), await isStill()]).toEqual([true, false]);
});

test('one of which more has come is read anew: places before may be other ones', async () => {
  const { broker, come, isStill } = await read();
  broker.plant(message('four'));
  come();
  expect(await isStill()).toBe(false);
});
