/** Puts the log of years into the store of the app that is served at this origin, while no window of it is open. */
import { storedRun } from '../../../src/domain/packed/packed-run.ts';
import { openIndexedDbLog } from '../../../src/store/indexeddb-log.ts';
import { longRuns } from '../../support/long-log.ts';

export async function fillShop({ events, until }: { events: number; until: number }): Promise<number> {
  const log = await openIndexedDbLog({
    name: 'tallywright',
    newStation: () => {
      throw new Error('the app has not begun the shop');
    },
    news: { blocked: () => {}, outdated: () => {}, lost: () => {} },
  });
  for (const run of longRuns({ events, until })) await log.merge({ runs: [run], now: until });
  const { records } = await log.holding();
  log.close();
  return records;
}

/** Bytes of the whole log in packed columns, opened to work with: the numbers, and the texts that they point to. */
export async function packedBytes(): Promise<number> {
  const log = await openIndexedDbLog({
    name: 'tallywright',
    newStation: () => 'none',
    news: { blocked: () => {}, outdated: () => {}, lost: () => {} },
  });
  const { runs } = await log.parcel();
  log.close();
  const encoder = new TextEncoder();
  return runs.reduce((sum, run) => {
    const { bytes, ...texts } = storedRun(run);
    return sum + bytes.byteLength + encoder.encode(JSON.stringify(texts)).length;
  }, 0);
}
