import type { Page } from 'playwright-core';
import { entriesOf } from '../../src/domain/packed/unpack-run.ts';
import type { RunRecord } from '../../src/store/run-record.ts';
import { openSealed } from '../../src/store/sealed-reads.ts';
import type { EventSketch } from './held-events.ts';

/** What lies in the app's database: records one by one, and sealed runs with their packs, whose bytes come as numbers. */
interface Raw {
  readonly young: readonly EventSketch[];
  readonly runs: readonly { readonly record: RunRecord; readonly pack: object; readonly bytes: number[] }[];
}

/**
 * The events in the app's database, which must be there already; an absent one has none. One that is held in both forms,
 * young and sealed, comes twice; those of a sealed run that is damaged do not come.
 */
export async function readStore(page: Page): Promise<readonly EventSketch[]> {
  const { young, runs }: Raw = JSON.parse(await page.evaluate(readRaw));
  const sealed = runs.flatMap(({ record, pack, bytes }) => {
    const run = openSealed({ record, pack: { ...pack, bytes: new Uint8Array(bytes).buffer } });
    return run ? entriesOf(run) : [];
  });
  return [
    ...young,
    ...sealed.map(({ event }) => ({ station: event.station, seq: event.seq, event: event as never })),
  ];
}

/**
 * Runs in the page, in one transaction: sealing may go on meanwhile. What it has read comes as JSON of a `Raw`: ten thousand
 * records one by one would take the devtools some ten times as long.
 */
function readRaw(): Promise<string> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open('tallywright');
    opening.onupgradeneeded = () => opening.transaction?.abort();
    opening.onerror = () => resolve(JSON.stringify({ young: [], runs: [] } satisfies Raw));
    opening.onsuccess = () => {
      const db = opening.result;
      const tx = db.transaction(['events', 'runs', 'packs']);
      const young = tx.objectStore('events').getAll();
      const records = tx.objectStore('runs').getAll();
      const packs = tx.objectStore('packs').getAll();
      tx.onabort = () => reject(tx.error);
      tx.oncomplete = () => {
        db.close();
        const runs = records.result.map((record, at) => {
          const { bytes, ...pack } = packs.result[at];
          return { record, pack, bytes: [...new Uint8Array(bytes)] };
        });
        resolve(JSON.stringify({ young: young.result, runs } satisfies Raw));
      };
    };
  });
}
