import { emptyHolding } from '../domain/log/holding.ts';
import type { Twin } from './twin.ts';

/** Where the browser keeps nothing outside of IndexedDB: every look says so, and nothing is taken for copied. */
export function noTwin(): Twin {
  const refuse = () => Promise.reject(new Error('this browser keeps no second copy'));
  return {
    look: async () => ({ reach: 'none', holding: emptyHolding, unreadable: 0, unsettled: [] }),
    add: refuse,
    keepAct: refuse,
    settleAct: refuse,
    freshen: async () => undefined,
    heads: async () => [],
    parcel: async () => ({ runs: [], entries: [] }),
    close: () => undefined,
  };
}
