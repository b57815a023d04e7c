import { describe, expect, test } from 'vitest';
import { chained, type Entry } from '../../src/domain/log/chain.ts';
import { emptyParcel } from '../../src/domain/packed/parcel.ts';
import { addEvent, emptyShop, type Shop } from '../../src/domain/shop/shop.ts';
import type { LogStore } from '../../src/store/log-store.ts';
import { clonedTablet } from '../support/cloned-tablet.ts';
import { spellDraft } from '../support/drafts.ts';
import { logMakers } from '../support/log-makers.ts';

const now = Date.UTC(2026, 2, 2, 9);

const clones = () => clonedTablet({ wall: now + 7 });

const shopIn = async (log: LogStore): Promise<Shop> => {
  const shop = emptyShop();
  for (const event of (await log.since(new Map())).events) addEvent(shop, event);
  return shop;
};
const waiting = (shop: Shop) => [...shop.ledger.wip].toSorted();

describe.each(logMakers)('a log %s, where a cloned tablet wrote on under the same station', (_, make) => {
  const merged = async (...files: readonly (readonly Entry[])[]) => {
    const log = await make();
    for (const entries of files) await log.merge({ entries, now });
    return log;
  };

  test('keeps the taps of both, each once', async () => {
    const { common, here, there } = clones();
    const log = await merged(here, there);
    expect(await log.entries()).toHaveLength(here.length + there.length - common);
    const passed = (await log.since(new Map())).events.filter(({ kind }) => kind === 'passed');
    expect(passed).toHaveLength(6);
    // Of six passed two were taken back, one on each side.
    expect((await shopIn(log)).ledger.wip).toEqual(
      new Map([
        ['bore|ash|first|waiting', 4],
        ['glue|ash|first|waiting', 4],
      ]),
    );
  });

  test('has the same sums whichever came first, and twice changes nothing', async () => {
    const { here, there } = clones();
    const log = await merged(here, there);
    const before = await log.holding();
    expect(await log.merge({ entries: there, now })).toMatchObject({ added: emptyParcel, unplaced: 0 });
    expect(await log.merge({ entries: here, now })).toMatchObject({ added: emptyParcel, unplaced: 0 });
    expect(await log.holding()).toEqual(before);
    expect(waiting(await shopIn(await merged(there, here)))).toEqual(waiting(await shopIn(log)));
  });

  test('gives its whole log to a third, which then holds the same and takes both originals for known', async () => {
    const { here, there } = clones();
    const log = await merged(here, there);
    for (const whole of [await log.entries(), (await log.entries()).toReversed()]) {
      const third = await merged(whole);
      expect((await third.holding()).written).toEqual((await log.holding()).written);
      for (const entries of [here, there]) {
        expect(await third.merge({ entries, now })).toMatchObject({ added: emptyParcel, unplaced: 0 });
      }
      expect(waiting(await shopIn(third))).toEqual(waiting(await shopIn(log)));
    }
  });

  test('takes the rest of a branch whose beginning it knows, and tells of a rest that it cannot place', async () => {
    const { common, here, there } = clones();
    const rest = there.slice(common + 1);
    const log = await merged(here);
    expect(await log.merge({ entries: rest, now })).toMatchObject({
      added: emptyParcel,
      unplaced: rest.length,
    });
    expect(await log.merge({ entries: there, now })).toMatchObject({ unplaced: 0 });
    expect(await log.entries()).toHaveLength(here.length + rest.length + 1);
  });

  test('takes a branch piece by piece, in whatever order the pieces come', async () => {
    const { common, here, there } = clones();
    const whole = await merged(here, there);
    const log = await merged(here, there.slice(0, common + 2));
    for (const piece of [there.slice(common + 2, common + 3), there.slice(common + 3)])
      expect(await log.merge({ entries: piece, now })).toMatchObject({ unplaced: 0 });
    expect((await log.holding()).written).toEqual((await whole.holding()).written);
    expect(waiting(await shopIn(log))).toEqual(waiting(await shopIn(whole)));
    expect(await log.merge({ entries: there.slice(common + 2), now })).toMatchObject({ added: emptyParcel });
  });

  test('takes no rest of a branch of which a piece between is missing', async () => {
    const { common, here, there } = clones();
    const log = await merged(here, there.slice(0, common + 1));
    const rest = there.slice(common + 2);
    expect(await log.merge({ entries: rest, now })).toMatchObject({
      added: emptyParcel,
      unplaced: rest.length,
    });
  });

  test('whose own station it was takes a new one, so that the two part for good', async () => {
    const log = await make();
    const own = log.station();
    for (const act of ['one', 'two']) await log.append({ act, drafts: [spellDraft('turn')], now });
    const [first] = await log.entries();
    if (!first) throw new Error('the log has entries');
    const clone = chained([first.event, { ...first.event, seq: 2, stamp: { wall: now + 9, tick: 0 } }]);
    expect(await log.merge({ entries: clone, now })).toMatchObject({ renewed: true });
    expect(log.station()).not.toBe(own);
    await log.append({ act: 'three', drafts: [spellDraft('turn')], now });
    expect(await log.entries()).toHaveLength(4);
  });
});
