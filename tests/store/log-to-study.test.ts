import { openDB } from 'idb';
import { expect, test } from 'vitest';
import { demoShop } from '../../shared/demo/demo-shop.ts';
import { chained } from '../../src/domain/log/chain.ts';
import { entriesIn, tapTable } from '../../src/domain/study/log-of-taps.ts';
import { readLogToStudy } from '../../src/store/log-to-study.ts';
import { aWorkshop } from '../support/a-shop.ts';
import { clonedTablet } from '../support/cloned-tablet.ts';
import { freshName, openTestLog, sealAll, spoilRecord } from '../support/log-makers.ts';
import { studied, tapsIn } from '../support/study-makers.ts';

const now = Date.UTC(2026, 2, 4, 14);
const inStore = (name: string) => ({ kind: 'store', name }) as const;

/** The demo shop, and a tablet that was cloned: most of it sealed, some young, on both branches. */
async function longLived() {
  const name = freshName();
  const log = await openTestLog(name);
  await log.merge({ entries: chained(demoShop({ now })), now });
  const { here, there } = clonedTablet({ tray: 50, here: 20, there: 30, wall: now + 7 });
  await log.merge({ entries: here, now });
  await log.merge({ entries: there.slice(0, -8), now });
  await sealAll(name, { young: 5, together: 10 });
  await log.merge({ entries: there, now });
  return { name, log };
}

test('a log is studied where it lies, sealed and young, with each tap of a cloned tablet', async () => {
  const { name, log } = await longLived();
  const read = await readLogToStudy(inStore(name));
  expect(read.runs.filter(({ branch }) => branch).length).toBeGreaterThan(0);
  expect(read.events.length).toBeGreaterThan(5);
  const { events } = await log.since(new Map());
  expect(entriesIn(read)).toBe(events.length);
  expect(tapsIn(tapTable(read))).toEqual(tapsIn(studied(events)));
});

test('a log in lines is studied all the same, without what a newer version wrote', async () => {
  const shop = aWorkshop();
  shop.pass(shop.tray('ash-copper', 3), 'bore');
  const newer = { ...shop.log.at(-1), kind: 'weighed', seq: 99 };
  const lines = [...shop.log, newer].map((event) => JSON.stringify(event));
  const read = await readLogToStudy({ kind: 'lines', lines });
  expect(read).toEqual({ runs: [], events: shop.log });
});

test('what is damaged is left out, and a store that is not there is not made', async () => {
  const { name } = await longLived();
  const before = await readLogToStudy(inStore(name));
  const young = before.events.find(({ station }) => station.startsWith('branch-'));
  if (!young) throw new Error('something young lies on a branch');
  await spoilRecord(name, [young.station, young.seq], (record) => ({ ...record, link: '0'.repeat(32) }));
  const db = await openDB(name);
  const [key = ''] = await db.getAllKeys('packs');
  await db.put('packs', { ...(await db.get('packs', key)), check: 0 }, key);
  db.close();
  const after = await readLogToStudy(inStore(name));
  expect(after.events).toHaveLength(before.events.length - 1);
  expect(after.runs).toHaveLength(before.runs.length - 1);
  const nowhere = freshName();
  await expect(readLogToStudy(inStore(nowhere))).rejects.toThrow();
  expect((await indexedDB.databases()).map((database) => database.name)).not.toContain(nowhere);
});
