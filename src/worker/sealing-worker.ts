/** Seals the old records of one store and says when it is done: packing takes seconds that a tap must not wait for. */
import { sealOldRecords } from '../store/sealing.ts';
import { openShopDatabase } from '../store/shop-database.ts';

const worker = globalThis as unknown as DedicatedWorkerGlobalScope;

async function seal(name: string): Promise<void> {
  const nobody = () => undefined;
  const db = await openShopDatabase(name, { blocked: nobody, outdated: nobody, lost: nobody });
  try {
    await sealOldRecords(db);
  } finally {
    db.close();
  }
}

worker.addEventListener('message', ({ data }: MessageEvent<string>) => {
  // What was not sealed is read as before, and tried the next time.
  void seal(data)
    .catch(() => undefined)
    .then(() => worker.postMessage('done'));
});
