import fc from 'fast-check';
import { openDB } from 'idb';
import { describe, expect, test } from 'vitest';
import { demoShop } from '../../shared/demo/demo-shop.ts';
import { chained, type Entry } from '../../src/domain/log/chain.ts';
import { holdingOf } from '../../src/domain/log/holding.ts';
import { countIn, emptyParcel } from '../../src/domain/packed/parcel.ts';
import { shopOf } from '../../src/domain/shop/shop.ts';
import type { LogStore } from '../../src/store/log-store.ts';
import { sealOldRecords } from '../../src/store/sealing.ts';
import { openShopDatabase } from '../../src/store/shop-database.ts';
import { spellDraft } from '../support/drafts.ts';
import { freshName, openTestLog, quietNews, sealAll } from '../support/log-makers.ts';
import { packedRuns } from '../support/run-makers.ts';

const now = Date.UTC(2026, 2, 2, 9);
const demo = chained(demoShop({ now: Date.UTC(2026, 2, 4, 14) }));
const everything = new Map();
const tap = (name: string | number) => ({ act: `tap-${name}`, drafts: [spellDraft('turn')], now });

async function inStores(name: string) {
  const db = await openDB(name);
  const [young, runs, packs] = await Promise.all(['events', 'runs', 'packs'].map((store) => db.count(store)));
  db.close();
  return { young, runs, packs };
}

/** All that can be read of a log. */
async function readAll(log: LogStore) {
  const { events, newer, damaged } = await log.since(everything);
  const byId = (a: { station: string; seq: number }, b: typeof a) =>
    a.station < b.station ? -1 : a.station > b.station ? 1 : a.seq - b.seq;
  const trays = [...shopOf(events).trays.keys()].sort().slice(0, 5);
  return {
    events: events.toSorted(byId),
    others: [newer.length, damaged.length],
    entries: (await log.entries()).toSorted((a, b) => byId(a.event, b.event)),
    latest: (await log.latestOwn(7)).events.toSorted(byId),
    trays: await Promise.all(trays.map(async (tray) => (await log.about(tray)).events.toSorted(byId))),
    holding: await log.holding(),
  };
}

describe('sealing old records', () => {
  test('changes nothing of what the log says, and a tap goes on after it', async () => {
    const name = freshName();
    const log = await openTestLog(name);
    for (let at = 0; at < 40; at += 1) await log.append(tap(at));
    await log.merge({ entries: demo, now });
    for (let at = 40; at < 80; at += 1) await log.append(tap(at));
    const before = await readAll(log);
    await sealAll(name, { young: 10, together: 20 });
    const { young, runs } = await inStores(name);
    expect(young).toBeLessThan(100);
    expect(runs).toBeGreaterThan(1);
    expect(await readAll(log)).toEqual(before);
    const [next] = await log.append(tap('next'));
    const isLast = ({ event }: Entry) => event.seq === 80 && event.station === log.station();
    expect(next?.prev).toBe(before.entries.find(isLast)?.link);
  });

  test('seals nothing before there is enough, and leaves the youngest', async () => {
    const name = freshName();
    const log = await openTestLog(name);
    for (let at = 0; at < 29; at += 1) await log.append(tap(at));
    await sealAll(name, { young: 10, together: 20 });
    expect(await inStores(name)).toEqual({ young: 29, runs: 0, packs: 0 });
    await log.append(tap('one more'));
    await sealAll(name, { young: 10, together: 20 });
    expect(await inStores(name)).toEqual({ young: 10, runs: 1, packs: 1 });
  });

  test('packs an entry only a few times in its life: of 64 sealings few runs are left', async () => {
    const name = freshName();
    const log = await openTestLog(name);
    for (let at = 0; at < 64; at += 1) {
      await log.append(tap(at));
      await sealAll(name);
    }
    expect(await inStores(name)).toEqual({ young: 0, runs: 1, packs: 1 });
    for (let at = 64; at < 71; at += 1) {
      await log.append(tap(at));
      await sealAll(name);
    }
    // 64, 4, 2 and 1, like the digits of a binary counter.
    expect((await inStores(name)).runs).toBe(4);
    expect((await log.entries()).map(({ event }) => event.seq)).toEqual(
      Array.from({ length: 71 }, (_, at) => at + 1),
    );
  });

  test('two windows that seal at once leave each entry once', async () => {
    const name = freshName();
    const log = await openTestLog(name);
    await log.merge({ entries: demo, now });
    for (let at = 0; at < 50; at += 1) await log.append(tap(at));
    const before = await readAll(log);
    await Promise.all([
      sealAll(name),
      sealAll(name, { young: 5, together: 3 }),
      ...[50, 51, 52].map((at) => log.append(tap(at))),
      sealAll(name),
    ]);
    const after = await readAll(log);
    expect(after.entries.length).toBe(before.entries.length + 3);
    expect(new Set(after.entries.map(({ link }) => link)).size).toBe(after.entries.length);
    expect(after.holding.records).toBe(after.holding.written.entries);
  });

  test('broken off at any step leaves the records or the run, never both and never neither', async () => {
    for (let step = 1; step < 12; step += 1) {
      const name = freshName();
      const log = await openTestLog(name);
      for (let at = 0; at < 12; at += 1) {
        await log.append(tap(at));
        if (at === 5) await sealAll(name);
      }
      const before = await readAll(log);
      const db = await openShopDatabase(name, quietNews);
      await sealOldRecords(brokenAt(db, step), { young: 2, together: 1 }).catch(() => undefined);
      db.close();
      expect(await readAll(log), `step ${step}`).toEqual(before);
      await sealAll(name);
      expect(await readAll(log), `step ${step}, sealed again`).toEqual(before);
    }
  });

  test('a damaged record stays where it is, and what is before and after it is sealed', async () => {
    const name = freshName();
    const log = await openTestLog(name);
    for (let at = 0; at < 20; at += 1) await log.append(tap(at));
    const db = await openDB(name);
    const key = [log.station(), 8];
    await db.put('events', { ...(await db.get('events', key)), link: 'a'.repeat(32) });
    db.close();
    await sealAll(name);
    expect(await inStores(name)).toEqual({ young: 1, runs: 2, packs: 2 });
    const { events, damaged } = await log.since(everything);
    expect([events.length, damaged.length]).toEqual([19, 1]);
  });
});

/** A database whose `step`-th writing request, or the commit after all of them, fails. */
function brokenAt(db: Awaited<ReturnType<typeof openShopDatabase>>, step: number): typeof db {
  let requests = 0;
  return new Proxy(db, {
    get(target, name) {
      if (name !== 'transaction') return Reflect.get(target, name);
      return (...args: Parameters<typeof target.transaction>) => {
        const tx = target.transaction(...args);
        if (args[1] !== 'readwrite') return tx;
        const objectStore = (store: never) => {
          const own = tx.objectStore(store);
          return new Proxy(own, {
            get(of, method) {
              const value = Reflect.get(of, method);
              if (typeof value !== 'function') return value;
              return (...given: unknown[]) => {
                const result = value.apply(of, given);
                if (method !== 'put' && method !== 'delete') return result;
                requests += 1;
                if (requests !== step) return result;
                return result.then(() => {
                  tx.abort();
                  throw new Error('broken off');
                });
              };
            },
          });
        };
        return new Proxy(tx, {
          get: (of, member) => (member === 'objectStore' ? objectStore : Reflect.get(of, member)),
        });
      };
    },
  });
}

describe('a tap that is tried again', () => {
  test('long after it was sealed adds nothing, and returns what is there', async () => {
    const name = freshName();
    const log = await openTestLog(name);
    const twice = { act: 'twice', drafts: [spellDraft('turn'), spellDraft('sand')], now };
    await log.append(tap('before'));
    const first = await log.append(twice);
    await log.append(tap('after'));
    await sealAll(name);
    expect(await log.append({ ...twice, tried: true })).toEqual(first);
    expect((await log.holding()).records).toBe(4);
  });

  test('and has the mark of another tap is stored: the mark alone proves nothing', async () => {
    const name = freshName();
    const log = await openTestLog(name);
    await log.append(tap('one'));
    await sealAll(name);
    await log.append({ act: 'tap-one', drafts: [spellDraft('sand')], now, tried: true });
    expect((await log.holding()).records).toBe(2);
  });
});

describe('a sealed run that is damaged', () => {
  async function damaged() {
    const name = freshName();
    const log = await openTestLog(name);
    await log.merge({ entries: demo, now });
    await sealAll(name);
    const whole = await readAll(log);
    const db = await openDB(name);
    const [key] = await db.getAllKeys('packs');
    const pack = await db.get('packs', key ?? '');
    const bytes = new Uint8Array(pack.bytes);
    bytes[700] = (bytes[700] ?? 0) ^ 4;
    await db.put('packs', pack, key);
    const [record] = await db.getAll('runs');
    db.close();
    return { name, log, whole, lost: record.run.entries };
  }

  test('is told of by as many taps as it has; the others stay usable', async () => {
    const { log, whole, lost } = await damaged();
    const { events, damaged: spoilt } = await log.since(everything);
    expect(spoilt).toHaveLength(lost);
    expect(events).toHaveLength(demo.length - lost);
    expect(await log.entries()).toHaveLength(whole.entries.length - lost);
  });

  test.each([
    ['whole', { runs: packedRuns(demo) }],
    ['one by one', { entries: demo }],
  ])('is mended by its entries, %s; what stood there is kept', async (_, copy) => {
    const { name, log, whole, lost } = await damaged();
    expect(await log.merge({ ...copy, now })).toMatchObject({ added: emptyParcel, mended: lost });
    expect(await readAll(log)).toEqual(whole);
    const db = await openDB(name);
    expect(await db.count('aside')).toBe(1);
    db.close();
  });

  test('gives way to a part of its entries, and the log adds up again', async () => {
    const { log, lost } = await damaged();
    const { mended } = await log.merge({ entries: demo.slice(0, demo.length / 2), now });
    expect(mended).toBeGreaterThan(0);
    const { events, damaged: spoilt } = await log.since(everything);
    expect([events.length, spoilt.length]).toEqual([demo.length - lost + mended, 0]);
    const { records, written } = await log.holding();
    expect(written).toEqual(holdingOf((await log.entries()).map(({ link }) => link)));
    expect(records).toBe(written.entries);
  });
});

describe('runs that come in', () => {
  test('are the same as their entries, in whatever parts they come, and twice adds nothing', async () => {
    const all = demo.slice(0, 400);
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.nat(all.length), { maxLength: 6 }),
        fc.array(fc.boolean(), { minLength: 7, maxLength: 7 }),
        async (cuts, packed) => {
          const log = await openTestLog();
          const at = [0, ...cuts.toSorted((a, b) => a - b), all.length];
          const parts = at.slice(1).map((to, part) => all.slice(at[part], to));
          const order = parts.map((_, part) => part).toSorted((a, b) => ((a * 7) % 5) - ((b * 7) % 5));
          for (const part of order) {
            const entries = parts[part] ?? [];
            await log.merge(packed[part] ? { runs: packedRuns(entries), now } : { entries, now });
          }
          const expected = await openTestLog();
          await expected.merge({ entries: all, now });
          expect(await readAll(log)).toEqual(await readAll(expected));
          const again = await log.merge({ runs: packedRuns(all), now });
          expect([countIn(again.added), again.here]).toEqual([0, all.length]);
        },
      ),
      { numRuns: 25 },
    );
  });

  test('that touch nothing held are taken as they are', async () => {
    const name = freshName();
    const log = await openTestLog(name);
    const runs = packedRuns(demo);
    const { added } = await log.merge({ runs, now });
    expect(added.runs.map(({ link }) => link)).toEqual(runs.map(({ link }) => link));
    expect((await inStores(name)).young).toBe(0);
    expect((await log.parcel()).entries).toEqual([]);
    expect((await log.merge({ runs, now })).here).toBe(demo.length);
  });

  test('that follow on from something else than what is held lie on a branch', async () => {
    const own = demo.filter(({ event }) => event.station === demo[0]?.event.station).slice(0, 300);
    const other = chained(
      own.map(({ event }, at) => (at < 100 ? event : { ...event, person: null })) as never,
    );
    const log = await openTestLog();
    await log.merge({ runs: packedRuns(own), now });
    await log.merge({ runs: packedRuns(other.slice(100)), now });
    expect((await log.holding()).records).toBe(500);
    expect(new Set((await log.since(everything)).events.map(({ station }) => station)).size).toBe(2);
    expect((await log.parcel()).runs.length + (await log.parcel()).entries.length).toBeGreaterThan(1);
    expect(new Set((await log.entries()).map(({ link }) => link)).size).toBe(500);
  });

  test('of the own station give the store a new one', async () => {
    const log = await openTestLog(freshName(), demo[0]?.event.station ?? '');
    const before = log.station();
    expect(await log.merge({ runs: packedRuns(demo), now })).toMatchObject({ renewed: true });
    expect(log.station()).not.toBe(before);
  });
});
