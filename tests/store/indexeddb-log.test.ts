import { openDB } from 'idb';
import { afterEach, describe, expect, test } from 'vitest';
import { openIndexedDbLog } from '../../src/store/indexeddb-log.ts';
import { openNewerLog } from '../../src/store/newer-log.ts';
import { databaseVersion } from '../../src/store/shop-database.ts';
import { spellDraft } from '../support/drafts.ts';
import { freshName, openTestLog, quietNews } from '../support/log-makers.ts';

const tap = (act: string) => ({ act, drafts: [spellDraft('turn')], now: 1_000_000 });
const original = IDBDatabase.prototype.transaction;

/** Lets a test see, or spoil, the transactions that are opened. */
function onTransaction(before: (...args: Parameters<typeof original>) => void): void {
  IDBDatabase.prototype.transaction = function (...args) {
    before(...args);
    return original.apply(this, args);
  };
}

afterEach(() => {
  IDBDatabase.prototype.transaction = original;
});

test('a tap is one strict transaction over the events and the head', async () => {
  const log = await openTestLog();
  const seen: unknown[] = [];
  onTransaction((stores, mode, options) => seen.push([stores, mode, options]));
  await log.append(tap('tap-1'));
  expect(seen).toEqual([[['events', 'heads'], 'readwrite', { durability: 'strict' }]]);
});

test('a tap is acknowledged only when its transaction is complete', async () => {
  const log = await openTestLog();
  let complete = false;
  IDBDatabase.prototype.transaction = function (...args) {
    const tx = original.apply(this, args);
    tx.addEventListener('complete', () => {
      complete = true;
    });
    return tx;
  };
  await log.append(tap('tap-1'));
  expect(complete).toBe(true);
});

test('the station keeps its name when the shop is opened again', async () => {
  const name = freshName();
  const first = await openTestLog(name, 'station-a');
  first.close();
  expect((await openTestLog(name, 'station-b')).station()).toBe('station-a');
});

describe.each(['InvalidStateError', 'UnknownError'])(
  'when the browser has dropped the connection (%s)',
  (fault) => {
    test('twice in a row, the tap is stored once on a new connection', async () => {
      const log = await openTestLog();
      let failures = 2;
      onTransaction(() => {
        failures -= 1;
        if (failures >= 0) throw new DOMException('connection lost', fault);
      });
      await log.append(tap('tap-1'));
      expect((await log.since(new Map())).events.map(({ seq }) => seq)).toEqual([1]);
    });

    test('for good, the tap is refused after three tries and not before', async () => {
      const log = await openTestLog();
      let tries = 0;
      onTransaction(() => {
        tries += 1;
        throw new DOMException('connection lost', fault);
      });
      await expect(log.append(tap('tap-1'))).rejects.toThrow('connection lost');
      expect(tries).toBe(3);
    });
  },
);

test('two windows of one station tap at once: no number is given twice and none is left out', async () => {
  const name = freshName();
  const first = await openTestLog(name);
  const windows = [first, await openTestLog(name)];
  await Promise.all(
    Array.from({ length: 200 }, (_, index) =>
      Promise.all(windows.map((log, window) => log.append(tap(`window ${window} tap ${index}`)))),
    ),
  );
  const { events } = await first.since(new Map());
  expect(events.map(({ seq }) => seq).toSorted((a, b) => a - b)).toEqual(
    Array.from({ length: 400 }, (_, index) => index + 1),
  );
});

test('a store that a newer version has opened is refused and left as it is', async () => {
  const name = freshName();
  const newer = await openDB(name, databaseVersion + 1, {
    upgrade: (db) => void db.createObjectStore('later'),
  });
  newer.close();
  await expect(openTestLog(name)).rejects.toMatchObject({ name: 'VersionError' });
  const again = await openDB(name);
  expect([again.version, ...again.objectStoreNames]).toEqual([databaseVersion + 1, 'later']);
});

test('a window that a newer version asks for the store gives it up and says so', async () => {
  const name = freshName();
  let outdated = 0;
  await openIndexedDbLog({
    name,
    newStation: () => 'station-a',
    news: {
      ...quietNews,
      outdated: () => {
        outdated += 1;
      },
    },
  });
  const newer = await openDB(name, databaseVersion + 1);
  expect([outdated, newer.version]).toEqual([1, databaseVersion + 1]);
});

test('a head that makes no sense is an error, never a new shop', async () => {
  const name = freshName();
  (await openTestLog(name)).close();
  const db = await openDB(name);
  await db.put('heads', { station: 'station-a', seq: 'many' }, 'head');
  db.close();
  await expect(openTestLog(name)).rejects.toThrow();
  expect(await (await openDB(name)).get('heads', 'head')).toEqual({ station: 'station-a', seq: 'many' });
});

test('a store of a newer version is read, and nothing is written to it', async () => {
  const name = freshName();
  const log = await openTestLog(name);
  await log.append(tap('tap-1'));
  log.close();
  (await openDB(name, databaseVersion + 1, { upgrade: (db) => void db.createObjectStore('later') })).close();
  const newer = await openNewerLog(name, quietNews);
  expect((await newer.since(new Map())).events.map(({ seq }) => seq)).toEqual([1]);
  expect(newer.station()).toBe(log.station());
  for (const write of [
    () => newer.append(tap('tap-2')),
    () => newer.merge({ entries: [], now: 1 }),
    () => newer.saveSnapshot({ over: null, make: () => ({ format: 1, shop: {}, pages: new Map() }) }),
  ]) {
    await expect(write()).rejects.toMatchObject({ name: 'ReadOnlyError' });
  }
  newer.close();
  const db = await openDB(name);
  expect([db.version, await db.count('events')]).toEqual([databaseVersion + 1, 1]);
  db.close();
});

test('a long log is given whole and in order, in pieces between which taps are saved', async () => {
  const log = await openTestLog();
  const drafts = Array.from({ length: 500 }, () => spellDraft('turn'));
  for (let act = 0; act < 5; act += 1) await log.append({ ...tap(`act-${act}`), drafts });
  const order: string[] = [];
  const reading = log.entries().then((entries) => {
    order.push('read');
    return entries;
  });
  await log.append(tap('in between')).then(() => order.push('tapped'));
  const seqs = (await reading).map(({ event }) => event.seq);
  expect(order).toEqual(['tapped', 'read']);
  expect(seqs.slice(0, 2500)).toEqual(Array.from({ length: 2500 }, (_, index) => index + 1));
  expect(seqs.length).toBeLessThanOrEqual(2501);
});
