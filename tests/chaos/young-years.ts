import * as v from 'valibot';
import { type Entry, entryAfter, noLink } from '../../src/domain/log/chain.ts';
import { holdingOf, joined } from '../../src/domain/log/holding.ts';
import { stationId } from '../../src/domain/log/ids.ts';
import { recordOf } from '../../src/store/event-record.ts';
import { headSchema } from '../../src/store/head.ts';
import { spellDraft } from '../support/drafts.ts';
import type { Station } from './station.ts';

/**
 * The records of another tablet, none of them sealed: so many as a worker seals in two steps, which takes 8192 for the first,
 * 1024 that stay young and as many more.
 */
const records = 10_300;

/** A station that wrote `records` events about nothing that is counted. */
function youngEntries(): readonly Entry[] {
  const entries: Entry[] = [];
  const station = v.parse(stationId, 'old-tablet');
  for (let seq = 1; seq <= records; seq += 1) {
    const stamp = { wall: Date.UTC(2025, 0, 6, 9) + seq * 60_000, tick: 0 };
    const prev = entries.at(-1)?.link ?? noLink;
    entries.push(entryAfter(prev, { ...spellDraft('kit-parts'), station, seq, stamp }));
  }
  return entries;
}

/** Puts them among the young records of a store, as they lay there before a worker has ever sealed any. */
export async function addYoungYears({ context }: Station): Promise<void> {
  const page = context.pages()[0] ?? (await context.newPage());
  const entries = youngEntries();
  const head = v.parse(headSchema, await page.evaluate(readHead));
  const holding = joined(head.holding, holdingOf(entries.map(({ link }) => link)));
  const written = { head: { ...head, holding }, records: entries.map((entry) => recordOf(entry)) };
  await page.evaluate(writeRecords, JSON.stringify(written));
}

/** Runs in the page. */
function readHead(): Promise<unknown> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open('tallywright');
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const reading = opening.result.transaction('heads').objectStore('heads').get('head');
      reading.onerror = () => reject(reading.error);
      reading.onsuccess = () => {
        opening.result.close();
        resolve(reading.result);
      };
    };
  });
}

/** Runs in the page. @param json the head and the records: so many go over much sooner as one text */
function writeRecords(json: string): Promise<void> {
  const { head, records }: { head: object; records: readonly object[] } = JSON.parse(json);
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open('tallywright');
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const tx = opening.result.transaction(['events', 'heads'], 'readwrite', { durability: 'strict' });
      tx.onabort = () => reject(tx.error);
      tx.oncomplete = () => {
        opening.result.close();
        resolve();
      };
      for (const record of records) tx.objectStore('events').put(record);
      tx.objectStore('heads').put(head, 'head');
    };
  });
}
