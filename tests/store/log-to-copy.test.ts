import { openDB } from 'idb';
import { describe, expect, test } from 'vitest';
import { demoShop } from '../../shared/demo/demo-shop.ts';
import { chained } from '../../src/domain/log/chain.ts';
import { readBackup } from '../../src/store/backup/read-backup.ts';
import { writeBackup } from '../../src/store/backup/write-backup.ts';
import { copyJobs } from '../../src/store/copy-jobs.ts';
import { openToRead } from '../../src/store/open-to-read.ts';
import { spellDraft } from '../support/drafts.ts';
import { freshName, openTestLog, quietNews, sealAll } from '../support/log-makers.ts';
import { longLog, otherStory } from '../support/long-logs.ts';
import { about } from './backup/sample-log.ts';

const now = Date.UTC(2026, 2, 2, 9);
const tap = (name: string | number) => ({ act: `tap-${name}`, drafts: [spellDraft('turn')], now });
const jobs = copyJobs(null);
const inStore = (name: string) => ({ kind: 'store', name }) as const;

/** A log of several stations, one of which was cloned: most of it sealed, some of each station young. */
async function longLived() {
  const name = freshName();
  const log = await openTestLog(name);
  const long = longLog(900);
  for (let at = 0; at < 60; at += 1) await log.append(tap(at));
  await log.merge({ entries: chained(demoShop({ now: Date.UTC(2026, 2, 4, 14) })), now });
  await log.merge({ entries: long, now });
  await log.merge({ entries: otherStory(long, 301).slice(0, 400), now });
  await sealAll(name, { young: 20, together: 30 });
  await log.merge({ entries: otherStory(long, 850), now });
  for (let at = 60; at < 70; at += 1) await log.append(tap(at));
  return { name, log };
}

describe('a copy of a log that is read where it lies', () => {
  test('is byte for byte the one of its entries, sealed and young, of all stations and branches', async () => {
    const { name, log } = await longLived();
    const entries = await log.entries();
    const { runs, entries: young } = await log.parcel();
    expect(runs.length).toBeGreaterThan(4);
    expect(young.length).toBeGreaterThan(60);
    const copy = await jobs.write({ log: inStore(name), least: entries.length, about });
    expect(copy).toEqual({ bytes: writeBackup({ entries, about }), entries: entries.length });
    const lines = entries.map((entry) => JSON.stringify(entry));
    expect(await jobs.write({ log: { kind: 'lines', lines }, least: 0, about })).toEqual(copy);
  });

  test('has every tap that was taken before it was asked for', async () => {
    const { name, log } = await longLived();
    const [last] = await log.append(tap('last'));
    const { bytes } = await jobs.write({ log: inStore(name), least: 0, about });
    const reading = readBackup(bytes);
    expect(reading.kind === 'read' && reading.entries).toContainEqual(last);
  });

  test('is not made of a log that lacks something, or of a store that is not there', async () => {
    const { name, log } = await longLived();
    const least = (await log.entries()).length + 1;
    await expect(jobs.write({ log: inStore(name), least, about })).rejects.toThrow('lacks entries');
    const nowhere = freshName();
    await expect(jobs.write({ log: inStore(nowhere), least: 0, about })).rejects.toThrow();
    expect((await indexedDB.databases()).map((database) => database.name)).not.toContain(nowhere);
  });

  test('is not made of a log of which a sealed run is damaged', async () => {
    const { name, log } = await longLived();
    const least = (await log.entries()).length;
    const db = await openDB(name);
    const [key = ''] = await db.getAllKeys('packs');
    await db.put('packs', { ...(await db.get('packs', key)), check: 0 }, key);
    db.close();
    await expect(jobs.write({ log: inStore(name), least, about })).rejects.toThrow('lacks entries');
  });

  test('keeps no later version of the app waiting', async () => {
    const { name, log } = await longLived();
    log.close();
    await jobs.write({ log: inStore(name), least: 0, about });
    (await openDB(name, 98)).close();
    // Nor while it is at it.
    const reader = await openToRead(name, quietNews);
    (await openDB(name, 99)).close();
    expect(() => reader.transaction('events')).toThrow();
  });
});
