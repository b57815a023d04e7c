/** Pages as tablets of one shop on a broker, without a screen to join by: what joining keeps is put where it is kept. */
import type { Page } from 'playwright-core';
import type { Seat, ShopKey } from '../../src/replication/shop-key.ts';
import { seatSeedOf } from '../../src/replication/shop-key.ts';

interface Joining {
  readonly address: string;
  readonly shop: string;
  readonly key: ShopKey;
  readonly seat: Seat;
}

/** Puts into a page's database what a tablet keeps that has joined; the app finds it at its next start. */
export async function joinPage(page: Page, { key, seat, ...place }: Joining): Promise<void> {
  const seed = [...(await seatSeedOf(key, seat))];
  await page.evaluate(
    async ({ joined, seed: seedBytes, key: keyBytes }) => {
      const raw = Uint8Array.from(keyBytes);
      const base = await crypto.subtle.importKey('raw', raw, 'HKDF', false, ['deriveKey']);
      const info = new TextEncoder().encode('tallywright events');
      const hkdf = { name: 'HKDF', hash: 'SHA-256', salt: new Uint8Array(), info };
      const aes = { name: 'AES-GCM', length: 256 };
      const events = await crypto.subtle.deriveKey(hkdf, base, aes, false, ['encrypt', 'decrypt']);
      const record = { ...joined, seed: Uint8Array.from(seedBytes), events, key: null, photos: true };
      await new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('joined-broker', 1);
        opening.onupgradeneeded = () => void opening.result.createObjectStore('joined');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const tx = opening.result.transaction('joined', 'readwrite');
          tx.objectStore('joined').put(record, 'own');
          tx.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      });
    },
    { joined: { ...place, seat, tablet: `tablet${seat.toLowerCase()}` }, seed, key: [...key] },
  );
}

/** What the page's store holds: how many entries, and their links added up bit by bit. */
export function holdingOfPage(page: Page): Promise<string> {
  return page.evaluate(
    () =>
      new Promise<string>((resolve, reject) => {
        const opening = indexedDB.open('tallywright');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const tx = db.transaction(['events', 'runs']);
          const events = tx.objectStore('events').getAll();
          const runs = tx.objectStore('runs').getAll();
          tx.oncomplete = () => {
            db.close();
            let sum = 0n;
            let entries = 0;
            for (const { link } of events.result) {
              sum ^= BigInt(`0x${link}`);
              entries += 1;
            }
            for (const { run } of runs.result) {
              sum ^= BigInt(`0x${run.sum}`);
              entries += run.entries;
            }
            resolve(`${entries} ${sum.toString(16)}`);
          };
        };
      }),
  );
}
