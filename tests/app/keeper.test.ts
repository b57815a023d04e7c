import { signal } from '@preact/signals';
import { describe, expect, test } from 'vitest';
import { type CopyOrder, type CopyResult, openKeeper } from '../../src/app/keeper.ts';
import { rememberCopies } from '../../src/app/known-copies.ts';
import type { Turn } from '../../src/app/one-at-a-time.ts';
import type { Saving } from '../../src/app/saver.ts';
import { chained, type Entry } from '../../src/domain/log/chain.ts';
import { shopDay } from '../../src/domain/log/zone.ts';
import { aWorkshop } from '../support/a-shop.ts';
import { handClock } from '../support/hand-clock.ts';

const minute = 60_000;
const hour = 60 * minute;

/** A shop's log with a keeper at work, a clock moved by hand, and a shelf that does as it is told, or none. */
function keptShop({ shelf = true, store = null as string | null } = {}) {
  const hands = handClock();
  const shop = aWorkshop();
  const saving = signal<Saving>({ kind: 'idle' });
  const memory = rememberCopies('shop', undefined);
  const orders: CopyOrder[] = [];
  const outside: CopyOrder[] = [];
  const world = {
    read: async (): Promise<readonly Entry[]> => chained(shop.log),
    answer: async ({ least }: CopyOrder): Promise<CopyResult> => ({ kind: 'kept', entries: least }),
    turn: async <R>(work: () => Promise<R>): Promise<Turn<R>> => ({ kind: 'ran', result: await work() }),
  };
  const keeper = openKeeper({
    session: {
      view: signal({ shop: shop.shop, uncounted: 0 }),
      saving,
      today: () => shopDay(hands.clock.now(), { zone: 'Europe/London', startHour: 4 }),
      now: hands.clock.now,
      entries: () => world.read(),
    },
    store,
    memory,
    keepCopy: shelf
      ? (order) => {
          orders.push(order);
          return world.answer(order);
        }
      : null,
    writeOutside: async (order) => void outside.push(order),
    runAlone: (work) => world.turn(work),
    timer: hands.timer,
    version: '1.2.3',
  });
  return {
    ...{ keeper, shop, memory, saving, world, orders, outside, hands },
    async pass(ms: number) {
      for (let left = ms; left > 0; left -= 10_000) {
        hands.pass(Math.min(10_000, left));
        await new Promise((done) => setImmediate(done));
      }
    },
    taps(count: number) {
      const value = { zone: 'Europe/London', dayStartHour: 4 };
      for (let tap = 0; tap < count; tap += 1)
        shop.set({ register: 'shop', id: 'shop', value: { ...value, name: `Shop ${tap}` } });
    },
  };
}

describe('the keeper', () => {
  test('copies the log soon after the first start, and remembers when and how much', async () => {
    const { pass, orders, memory, shop, hands } = keptShop();
    await pass(minute);
    expect(orders).toHaveLength(1);
    const [order] = orders;
    expect(order?.log).toEqual({ kind: 'entries', entries: chained(shop.log) });
    expect(order?.about).toEqual({
      version: '1.2.3',
      wall: hands.clock.now() - 40_000,
      zone: 'Europe/London',
      shop: 'The test shop',
    });
    expect(memory.known.value).toMatchObject({
      kept: { at: order?.about.wall, day: '2026-03-02', log: shop.log.length, entries: shop.log.length },
      trouble: null,
    });
  });

  test('copies again after 200 taps, at the turn of the day and after a day, and not without new entries', async () => {
    const { pass, orders, taps } = keptShop();
    await pass(minute);
    taps(199);
    await pass(minute);
    expect(orders).toHaveLength(1);
    taps(1);
    await pass(minute);
    expect(orders).toHaveLength(2);
    taps(1);
    await pass(19 * hour - 3 * minute - 10_000);
    expect(orders).toHaveLength(2);
    await pass(minute);
    expect(orders).toHaveLength(3);
    await pass(72 * hour);
    expect(orders).toHaveLength(3);
  });

  test('waits for a hand that taps to rest, but no longer than ten minutes', async () => {
    const { pass, orders, taps, saving } = keptShop();
    await pass(minute);
    taps(200);
    await pass(10_000);
    taps(1);
    await pass(20_000);
    expect(orders).toHaveLength(1);
    await pass(20_000);
    expect(orders).toHaveLength(2);
    taps(200);
    for (let third = 0; third < 30; third += 1) {
      await pass(20_000);
      taps(1);
    }
    expect(orders).toHaveLength(2);
    // A tap that is just being saved puts it off to the next look, not for ten minutes more.
    saving.value = { kind: 'taken' };
    await pass(20_000);
    taps(1);
    expect(orders).toHaveLength(2);
    saving.value = { kind: 'saved' };
    await pass(20_000);
    expect(orders).toHaveLength(3);
  });

  test('leaves a tap that is being saved, or was not, alone', async () => {
    const { pass, orders, saving, keeper } = keptShop();
    const act = { act: 'a', drafts: [], now: 0 };
    for (const busy of [{ kind: 'taken' }, { kind: 'not-saved', act, why: 'slow' }] as const) {
      saving.value = busy;
      await pass(minute);
      expect(await keeper.keep()).toEqual({ kind: 'saving' });
    }
    expect(orders).toHaveLength(0);
    saving.value = { kind: 'saved' };
    await pass(minute);
    expect(orders).toHaveLength(1);
  });

  test('makes one copy at a time', async () => {
    const { pass, orders, world, keeper } = keptShop();
    let finish: (result: CopyResult) => void = () => {};
    world.answer = () => new Promise((done) => (finish = done));
    await pass(2 * minute);
    expect(await keeper.keep()).toEqual({ kind: 'busy' });
    expect(orders).toHaveLength(1);
    expect(keeper.working.value).toBe(true);
    finish({ kind: 'kept', entries: 9 });
    await pass(10_000);
    expect(keeper.working.value).toBe(false);
  });

  test('leaves the work to another window that is at it', async () => {
    const { pass, orders, world, memory, keeper } = keptShop();
    world.turn = async () => ({ kind: 'busy' });
    await pass(minute);
    expect(await keeper.keep()).toEqual({ kind: 'busy' });
    expect(orders).toHaveLength(0);
    expect(memory.known.value.trouble).toBeNull();
  });

  test('says that a copy failed, and tries again after a quarter of an hour', async () => {
    const { pass, orders, world, memory } = keptShop();
    const { answer } = world;
    world.answer = async () => {
      throw new Error('disk full');
    };
    await pass(5 * minute);
    expect(orders).toHaveLength(1);
    expect(memory.known.value).toMatchObject({ kept: null, trouble: { kind: 'failed' } });
    world.answer = answer;
    await pass(11 * minute);
    expect(orders).toHaveLength(2);
    expect(memory.known.value.trouble).toBeNull();
  });

  test('has a log in a database read there, and wants all of it that the screen shows', async () => {
    const { keeper, orders, world, shop } = keptShop({ store: 'hafts' });
    world.read = () => Promise.reject(new Error('the window reads no log'));
    expect(await keeper.keep()).toEqual({ kind: 'kept', entries: shop.log.length });
    expect(orders[0]).toMatchObject({ log: { kind: 'store', name: 'hafts' }, least: shop.log.length });
  });

  test('carries nothing outside of a log that could not be read', async () => {
    const { keeper, outside, world, memory } = keptShop();
    world.answer = () => Promise.reject(new Error('the log on disk lacks entries that are shown'));
    expect(await keeper.keep()).toEqual({ kind: 'failed' });
    world.read = () => Promise.reject(new Error('no connection'));
    expect(await keeper.keep()).toEqual({ kind: 'failed' });
    expect(outside).toEqual([]);
    expect(memory.known.value.trouble?.kind).toBe('failed');
  });

  test('keeps the older copy of a log that has lost entries, says so, carries nothing outside and does not try on and on', async () => {
    const { pass, orders, outside, world, memory, taps } = keptShop();
    await pass(minute);
    expect(outside).toHaveLength(1);
    world.answer = async () => ({ kind: 'guarded' });
    taps(200);
    await pass(30 * minute);
    expect(orders).toHaveLength(2);
    expect(outside).toHaveLength(1);
    expect(memory.known.value).toMatchObject({
      kept: { at: orders[0]?.about.wall },
      trouble: { kind: 'guarded' },
    });
  });

  test('without a shelf still writes to the folder outside, as often as it would have kept a copy', async () => {
    const { pass, outside, keeper, memory, taps } = keptShop({ shelf: false });
    await pass(10 * minute);
    expect(outside).toHaveLength(1);
    taps(200);
    await pass(10 * minute);
    expect(outside).toHaveLength(2);
    expect(await keeper.keep()).toEqual({ kind: 'no-shelf' });
    expect(memory.known.value).toMatchObject({ kept: null, trouble: null });
  });

  test('ends with its shop', async () => {
    const { pass, orders, keeper } = keptShop();
    keeper.stop();
    await pass(hour);
    expect(orders).toHaveLength(0);
  });
});
