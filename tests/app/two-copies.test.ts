import { openDB } from 'idb';
import { describe, expect, test } from 'vitest';
import { openTwoCopies } from '../../src/app/two-copies.ts';
import { chained } from '../../src/domain/log/chain.ts';
import { holdingOf } from '../../src/domain/log/holding.ts';
import type { LogStore } from '../../src/store/log-store.ts';
import { type MarkKeeper, markKeeper } from '../../src/store/mark.ts';
import { emptyJournal, type MemoryJournal, memoryTwin } from '../../src/store/memory-twin.ts';
import { noTwin } from '../../src/store/no-twin.ts';
import { removeShop } from '../../src/store/remove-shop.ts';
import type { Twin } from '../../src/store/twin.ts';
import { spellDraft } from '../support/drafts.ts';
import { freshName, openTestLog } from '../support/log-makers.ts';

const settle = () => new Promise((resolve) => setTimeout(resolve));

/** What a tablet keeps between two starts of the app. */
function aTablet() {
  const kept = new Map<string, string>();
  const storage = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
  };
  return { name: freshName(), journal: emptyJournal(), storage };
}
type Tablet = { name: string; journal: MemoryJournal; storage: Pick<Storage, 'getItem' | 'setItem'> };

let stations = 0;

async function start(
  tablet: Tablet,
  change: {
    twin?: (twin: Twin) => Twin;
    store?: (store: LogStore) => LogStore;
    later?: (run: () => void) => void;
  } = {},
) {
  stations += 1;
  const store = await openTestLog(tablet.name, `station-${stations}`);
  const marks: MarkKeeper = markKeeper(tablet.storage, tablet.name);
  const healed: boolean[] = [];
  const twin = memoryTwin(tablet.journal);
  const copies = await openTwoCopies({
    store: change.store ? change.store(store) : store,
    twin: change.twin ? change.twin(twin) : twin,
    marks,
    now: () => 5,
    later: change.later ?? ((run) => run()),
    onHealed: ({ renewed }) => healed.push(renewed),
  });
  let taps = 0;
  return {
    ...copies,
    healed,
    marks,
    tap(name?: string) {
      taps += 1;
      const act = name ?? `${stations}-${taps}`;
      return copies.log.append({ act, drafts: [spellDraft('turn')], now: 1 });
    },
    count: async () => (await copies.log.entries()).length,
  };
}

/** A tablet on which 41 taps were made, all of them in both copies. */
async function tabletWith41() {
  const tablet = aTablet();
  const app = await start(tablet);
  for (let tap = 0; tap < 41; tap += 1) await app.tap();
  await app.compare();
  app.log.close();
  return tablet;
}

async function loseRecords(name: string, from: number): Promise<void> {
  const db = await openDB(name);
  const keys = await db.getAllKeys('events');
  for (const key of keys.slice(from)) await db.delete('events', key);
  db.close();
}

/** A database as it was some taps ago, its head included: what a cut log of the browser's store amounts to. */
async function rollBack(name: string, to: number): Promise<void> {
  const db = await openDB(name);
  const records = await db.getAll('events');
  const kept = records.slice(0, to);
  const head = await db.get('heads', 'head');
  await loseRecords(name, to);
  const holding = holdingOf(kept.map(({ link }) => link));
  await db.put('heads', { ...head, seq: to, link: kept.at(-1).link, holding }, 'head');
  db.close();
}

describe('a tap', () => {
  test('is in both copies, and the mark says how far the store has got', async () => {
    const tablet = aTablet();
    const { tap, log, marks } = await start(tablet);
    await tap();
    await tap();
    await settle();
    expect([...tablet.journal.entries.keys()]).toEqual((await log.entries()).map(({ link }) => link));
    expect(marks.read()).toMatchObject({ station: log.station(), seq: 2 });
  });

  test('is copied once the screen has had its time, or the log is closed', async () => {
    const tablet = aTablet();
    const held: (() => void)[] = [];
    const { tap, log, marks } = await start(tablet, { later: (run) => held.push(run) });
    await tap();
    await settle();
    expect([tablet.journal.entries.size, marks.read()?.seq]).toEqual([0, 0]);
    held.shift()?.();
    await settle();
    expect([tablet.journal.entries.size, marks.read()?.seq]).toEqual([1, 1]);
    await tap();
    log.close();
    await settle();
    expect([tablet.journal.entries.size, marks.read()?.seq]).toEqual([2, 2]);
    held.shift()?.();
    await settle();
    expect(tablet.journal.entries.size).toBe(2);
  });

  test('that is tried again late does not lower the mark', async () => {
    const { tap, marks } = await start(aTablet());
    await tap('first');
    await tap('second');
    await tap('first');
    expect(marks.read()?.seq).toBe(2);
  });

  test('is acknowledged without the second copy, which is compared again later', async () => {
    const tablet = aTablet();
    let broken = true;
    const { tap, state, compare, count } = await start(tablet, {
      twin: (twin) => ({
        ...twin,
        add: (some) => (broken ? Promise.reject(new Error('full')) : twin.add(some)),
      }),
    });
    await tap();
    await settle();
    expect([await count(), tablet.journal.entries.size, state.value.twin]).toEqual([1, 0, 'failed']);
    broken = false;
    await compare();
    expect([tablet.journal.entries.size, state.value.twin]).toEqual([1, 'all']);
  });
});

describe('at the next start', () => {
  test('a store that was wiped is filled again before anybody sees it empty', async () => {
    const tablet = await tabletWith41();
    await removeShop(tablet.name);
    const { state, count, stationBefore, log } = await start(tablet);
    expect([await count(), state.value.putBack, state.value.missing]).toEqual([41, 41, 0]);
    expect(stationBefore()).not.toBe(log.station());
  });

  test('a store that lost its newest taps gets them back, and writes on under a new station', async () => {
    const tablet = await tabletWith41();
    await rollBack(tablet.name, 24);
    const { state, tap, count, log, stationBefore } = await start(tablet);
    expect([await count(), state.value.putBack]).toEqual([41, 17]);
    expect(stationBefore()).not.toBe(log.station());
    const [entry] = await tap();
    expect(entry?.event.seq).toBe(1);
    expect(await count()).toBe(42);
  });

  test('a store that lost taps without knowing it gets them back', async () => {
    const tablet = await tabletWith41();
    await loseRecords(tablet.name, 38);
    const { state, count } = await start(tablet);
    expect([await count(), state.value.putBack]).toEqual([41, 3]);
  });

  test('a second copy that was lost is made anew', async () => {
    const tablet = await tabletWith41();
    tablet.journal.entries.clear();
    const { compare, state } = await start(tablet);
    await compare();
    expect([tablet.journal.entries.size, state.value.putBack]).toEqual([41, 0]);
  });

  test('when neither copy has what the mark speaks of, it is said, until the person goes on without', async () => {
    const tablet = await tabletWith41();
    await removeShop(tablet.name);
    tablet.journal.entries.clear();
    const first = await start(tablet);
    expect(first.state.value.missing).toBe(41);
    await first.tap();
    await first.compare();
    first.log.close();
    const second = await start(tablet);
    expect(second.state.value.missing).toBe(40);
    await second.goOnWithout();
    await second.compare();
    second.log.close();
    expect((await start(tablet)).state.value.missing).toBe(0);
  });

  test('where no second copy can be had, the mark alone tells of a loss', async () => {
    const tablet = await tabletWith41();
    await rollBack(tablet.name, 30);
    const { state } = await start(tablet, { twin: () => noTwin() });
    expect([state.value.twin, state.value.missing]).toEqual(['none', 11]);
  });

  test('a tap that was never stored is put back once, however often it is found', async () => {
    const tablet = await tabletWith41();
    const broken = await start(tablet);
    await broken.compare();
    broken.net.unsaved({ act: 'lost tap', drafts: [spellDraft('sand')], now: 1 });
    await settle();
    broken.log.close();
    const { state, count, compare } = await start(tablet);
    await compare();
    expect([await count(), state.value.putBack]).toEqual([42, 1]);
    await compare();
    expect(await count()).toBe(42);
  });

  test('a tap that was stored after all is not put back', async () => {
    const tablet = await tabletWith41();
    const broken = await start(tablet);
    await broken.compare();
    broken.net.unsaved({ act: 'late tap', drafts: [spellDraft('sand')], now: 1 });
    await broken.tap('late tap');
    await settle();
    broken.log.close();
    const { state, count, compare } = await start(tablet);
    await compare();
    expect([await count(), state.value.putBack]).toEqual([42, 0]);
  });
});

describe('a store in doubt', () => {
  test('acknowledges a tap only when the second copy has it too', async () => {
    const tablet = await tabletWith41();
    let release = () => {};
    const gate = new Promise<void>((resolve) => {
      release = resolve;
    });
    const { net, tap, state } = await start(tablet, {
      twin: (twin) => ({
        ...twin,
        async add(some) {
          await gate;
          await twin.add(some);
        },
      }),
    });
    net.doubt();
    expect(state.value.suspect).toBe(true);
    let isAcknowledged = false;
    const done = tap().then(() => {
      isAcknowledged = true;
    });
    await settle();
    await settle();
    expect(isAcknowledged).toBe(false);
    release();
    await done;
    expect(tablet.journal.entries.size).toBe(42);
  });

  test('does not acknowledge what the second copy refuses', async () => {
    const tablet = await tabletWith41();
    const { net, tap } = await start(tablet, {
      twin: (twin) => ({ ...twin, add: () => Promise.reject(new Error('full')) }),
    });
    net.doubt();
    await expect(tap()).rejects.toThrow('full');
  });

  test('begins new files once, and is believed again after a start that found it whole', async () => {
    const tablet = await tabletWith41();
    let [freshened, twinFreshened] = [0, 0];
    const counting = (store: LogStore): LogStore => ({
      ...store,
      freshen: async () => {
        freshened += 1;
      },
    });
    const app = await start(tablet, {
      store: counting,
      twin: (twin) => ({
        ...twin,
        freshen: async () => {
          twinFreshened += 1;
        },
      }),
    });
    app.net.doubt();
    await app.tap();
    await app.tap();
    expect([freshened, twinFreshened]).toEqual([1, 1]);
    app.log.close();
    const next = await start(tablet);
    expect([next.state.value.suspect, next.marks.isSuspect()]).toEqual([false, false]);
  });

  test('that lied about what it stored is filled again from the second copy', async () => {
    const tablet = await tabletWith41();
    const app = await start(tablet);
    app.net.doubt();
    await app.tap();
    app.log.close();
    await rollBack(tablet.name, 20);
    const { count, state } = await start(tablet);
    expect([await count(), state.value.putBack]).toEqual([42, 22]);
  });
});

test('a changed record is found by its link and put right from the second copy', async () => {
  const tablet = await tabletWith41();
  const db = await openDB(tablet.name);
  const [record] = await db.getAll('events');
  await db.put('events', { ...record, link: 'f'.repeat(32) });
  await db.delete('events', (await db.getAllKeys('events')).at(-1) ?? []);
  db.close();
  const { log, state } = await start(tablet);
  const entries = await log.entries();
  expect(entries).toEqual(chained(entries.map(({ event }) => event)));
  expect([entries.length, state.value.putBack]).toEqual([41, 2]);
});
