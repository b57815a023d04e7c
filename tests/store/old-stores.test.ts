import { readFileSync } from 'node:fs';
import { type IDBPDatabase, openDB } from 'idb';
import { expect, test } from 'vitest';
import { chained } from '../../src/domain/log/chain.ts';
import type { ShopEvent } from '../../src/domain/log/event.ts';
import { holdingOf } from '../../src/domain/log/holding.ts';
import { spellDraft } from '../support/drafts.ts';
import { freshName, openTestLog } from '../support/log-makers.ts';

const events: readonly ShopEvent[] = JSON.parse(
  readFileSync(new URL('../../shared/old-logs/format-1.json', import.meta.url), 'utf8'),
).events;
const [first] = events;
const last = events.at(-1);
if (!first || !last) throw new Error('the fixture has events');

const byKey = (a: ShopEvent, b: ShopEvent) => a.seq - b.seq;

/** A database as layout 1 wrote it, made with no code of the app. */
async function inFirstLayout(fill: (db: IDBPDatabase) => Promise<unknown>): Promise<string> {
  const name = freshName();
  const db = await openDB(name, 1, {
    upgrade(made) {
      const store = made.createObjectStore('events', { keyPath: ['station', 'seq'] });
      store.createIndex('byTray', 'trays', { multiEntry: true });
      made.createObjectStore('heads');
      made.createObjectStore('snapshots');
    },
  });
  await fill(db);
  db.close();
  return name;
}

test('a store of layout 1 is chained on opening: nothing is lost, and its station writes on', async () => {
  const name = await inFirstLayout(async (db) => {
    for (const event of events) {
      await db.put('events', { station: event.station, seq: event.seq, trays: [], event });
    }
    const run = { act: 'last', from: last.seq, to: last.seq };
    await db.put('heads', { station: first.station, seq: last.seq, stamp: last.stamp, acts: [run] }, 'head');
  });
  const log = await openTestLog(name, 'another-station');
  expect(log.station()).toBe(first.station);
  expect((await log.since(new Map())).events).toEqual(events.toSorted(byKey));
  const entries = await log.entries();
  expect(entries).toEqual(chained(events));
  const written = holdingOf(entries.map(({ link }) => link));
  expect(await log.holding()).toEqual({ written, records: events.length });
  const [next] = await log.append({ act: 'next', drafts: [spellDraft('turn')], now: 0 });
  expect(next?.prev).toBe(entries.at(-1)?.link);
  expect(next?.event).toMatchObject({ station: first.station, seq: last.seq + 1 });
});

test('an empty store of layout 1 is an empty store', async () => {
  const log = await openTestLog(await inFirstLayout(async () => undefined), 'station-n');
  expect(log.station()).toBe('station-n');
  expect(await log.entries()).toEqual([]);
});
