import { openIndexedDbLog } from '../../../src/store/indexeddb-log.ts';
import type { LogStore } from '../../../src/store/log-store.ts';
// A page of the bench has it at hand: what is measured is the store and not how code is fetched.
import '../../../src/store/reads-of-sealed.ts';
import '../../../src/store/indexeddb-merge.ts';

/** Opens the app's store under a name of the bench. */
export function openLog(name: string): Promise<LogStore> {
  return openIndexedDbLog({
    name,
    newStation: () => 'station-of-the-bench',
    news: { blocked: () => {}, outdated: () => {}, lost: () => {} },
  });
}
