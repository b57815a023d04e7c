import type { Page } from 'playwright-core';

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
