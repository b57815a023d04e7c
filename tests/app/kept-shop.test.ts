import fc from 'fast-check';
import { openDB } from 'idb';
import { describe, expect, test } from 'vitest';
import { demoShop } from '../../shared/demo/demo-shop.ts';
import { openKeptShop } from '../../src/app/kept-shop.ts';
import { chained } from '../../src/domain/log/chain.ts';
import type { ShopEvent } from '../../src/domain/log/event.ts';
import { shopOf } from '../../src/domain/shop/shop.ts';
import type { LogStore } from '../../src/store/log-store.ts';
import { histories, play } from '../support/histories.ts';
import { freshName, openTestLog } from '../support/log-makers.ts';

const now = Date.UTC(2026, 2, 4, 14);
const demo = demoShop({ now });

/** Opens a shop as a session does: from its snapshot, and what came since. */
async function opened(log: LogStore) {
  const kept = await openKeptShop(log);
  kept.take((await log.since(kept.shop.seen)).events);
  return kept;
}

async function append(log: LogStore, events: readonly ShopEvent[], all: readonly ShopEvent[]) {
  const wanted = new Set(events);
  await log.merge({ entries: chained(all).filter(({ event }) => wanted.has(event as ShopEvent)), now });
}

describe('a shop kept in a snapshot of a front and pages', () => {
  test('is the sum of its log after any row of openings, taps and savings, in one window or two', async () => {
    const steps = fc.array(
      fc.constantFrom('tap', 'save', 'open', 'whole', 'other', 'read') as fc.Arbitrary<string>,
      {
        minLength: 10,
        maxLength: 40,
        size: 'max',
      },
    );
    await fc.assert(
      fc.asyncProperty(histories, steps, async (history, does) => {
        const { log: all } = play(history);
        const name = freshName();
        const log = await openTestLog(name);
        let windows = [await opened(log), await opened(log)];
        let at = 0;
        for (const step of does) {
          const [first, second] = windows;
          if (!first || !second) throw new Error('there are two windows');
          if (step === 'tap') {
            const some = all.slice(at, at + 7);
            at += some.length;
            await append(log, some, all);
            first.take(some);
          } else if (step === 'save') await first.keep();
          else if (step === 'whole') await first.whole();
          else if (step === 'open') windows = [await opened(log), second];
          else if (step === 'other') windows = [second, first];
          else {
            await first.whole();
            first.take((await log.since(first.shop.seen)).events);
          }
        }
        for (const kept of [...windows, await opened(log)]) {
          await kept.whole();
          kept.take((await log.since(kept.shop.seen)).events);
          expect(kept.shop).toEqual(shopOf(all.slice(0, at)));
        }
        log.close();
      }),
      { numRuns: 100 },
    );
  });

  test('lacks nothing of an early day of which something was taken back before the pages were read', async () => {
    const log = await openTestLog();
    await append(log, demo, demo);
    await (await opened(log)).keep();
    const kept = await openKeptShop(log);
    const early = demo.find((event) => event.kind === 'passed');
    const last = demo.at(-1);
    if (early?.kind !== 'passed' || !last) throw new Error('the demo passes pieces');
    const { zone, day, person } = early;
    const taken: ShopEvent = {
      ...{ zone, day, person, station: 'late' as typeof early.station, seq: 1, stamp: last.stamp },
      ...{ kind: 'voided', event: early },
    };
    kept.take([taken]);
    await kept.whole();
    expect(kept.shop.days).toEqual(shopOf([...demo, taken]).days);
  });

  test('shows the trays in work at once, and the others and earlier days when the pages are read', async () => {
    const log = await openTestLog();
    await append(log, demo, demo);
    const before = await opened(log);
    await before.keep();
    const kept = await opened(log);
    expect(kept.isWhole.value).toBe(false);
    expect(kept.shop.positions.working).toEqual(before.shop.positions.working);
    expect([kept.shop.trays.size, kept.shop.days.size]).toEqual([before.shop.positions.working.size, 2]);
    await kept.whole();
    expect(kept.isWhole.value).toBe(true);
    expect(kept.shop).toEqual(shopOf(demo));
  });

  test('writes only the pages on which something has changed', async () => {
    const name = freshName();
    const log = await openTestLog(name);
    await append(log, demo.slice(0, -8), demo);
    const kept = await opened(log);
    await kept.keep();
    const written: string[] = [];
    const db = await openDB(name);
    const pages = async () => {
      const tx = db.transaction('snapshots');
      const keys = (await tx.store.getAllKeys()).map(String).filter((key) => key.startsWith('page '));
      return new Map(await Promise.all(keys.map(async (key) => [key, await tx.store.get(key)] as const)));
    };
    // A mark on each page shows which of them were put anew.
    for (const [key, page] of await pages()) await db.put('snapshots', { ...page, mark: true }, key);
    await append(log, demo.slice(-8), demo);
    kept.take(demo.slice(-8));
    await kept.keep();
    const after = await pages();
    for (const [key, page] of after) if (!page.mark) written.push(key);
    expect(written.length).toBeGreaterThan(0);
    expect(written.length).toBeLessThan(after.size / 4);
    db.close();
    const again = await opened(log);
    await again.whole();
    expect(again.shop).toEqual(shopOf(demo));
  });

  test('of which a page is damaged or gone is added up from the log', async () => {
    for (const spoil of [{ trays: 'none' }, null]) {
      const name = freshName();
      const log = await openTestLog(name);
      await append(log, demo, demo);
      await (await opened(log)).keep();
      const db = await openDB(name);
      const key =
        (await db.getAllKeys('snapshots')).find((each) => String(each).startsWith('page trays')) ?? '';
      await db.put('snapshots', spoil, key);
      db.close();
      const kept = await opened(log);
      await kept.whole();
      expect(kept.shop).toEqual(shopOf(demo));
      await kept.keep();
      const again = await opened(log);
      await again.whole();
      expect(again.shop).toEqual(shopOf(demo));
    }
  });

  test('is not saved before it is whole, nor when the store refuses: what changed is saved the next time', async () => {
    const log = await openTestLog();
    await append(log, demo.slice(0, -20), demo);
    await (await opened(log)).keep();
    const kept = await opened(log);
    await kept.keep();
    expect((await log.loadSnapshot())?.edition).toBe(1);
    await kept.whole();
    await append(log, demo.slice(-20), demo);
    let refuses = true;
    const refusing = await openKeptShop({
      ...log,
      saveSnapshot: (snapshot) =>
        refuses
          ? log.saveSnapshot({ ...snapshot, over: -1, make: () => snapshot.make() }).then(() => {
              snapshot.make();
              throw new DOMException('full', 'QuotaExceededError');
            })
          : log.saveSnapshot(snapshot),
    });
    await refusing.whole();
    refusing.take((await log.since(refusing.shop.seen)).events);
    await refusing.keep();
    refuses = false;
    await refusing.keep();
    const again = await opened(log);
    await again.whole();
    expect(again.shop).toEqual(shopOf(demo));
  });
});
