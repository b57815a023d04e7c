import type { Entry, Link } from '../domain/log/chain.ts';
import { holdingOf } from '../domain/log/holding.ts';
import { readEntry } from '../domain/log/read-entry.ts';
import { entriesIn } from '../domain/packed/parcel.ts';
import { headOfEntry } from '../domain/packed/stretch.ts';
import type { Act } from './log-store.ts';
import type { Twin } from './twin.ts';

/** What several twins in memory hold in common, as several windows do. */
export interface MemoryJournal {
  readonly entries: Map<Link, string>;
  readonly acts: Map<string, Act>;
  readonly settled: Set<string>;
}

export function emptyJournal(): MemoryJournal {
  return { entries: new Map(), acts: new Map(), settled: new Set() };
}

/** A twin that lives as long as its journal: for tests. It promises no durability. */
export function memoryTwin(journal: MemoryJournal = emptyJournal()): Twin {
  let closed = false;
  const ifOpen = () => {
    if (closed) throw new Error('this copy is closed');
    return journal;
  };
  return {
    async look() {
      const { entries, acts, settled } = ifOpen();
      return {
        reach: 'all',
        holding: holdingOf(entries.keys()),
        unreadable: 0,
        unsettled: [...acts.values()].filter(({ act }) => !settled.has(act)),
      };
    },
    async add(parcel) {
      const { entries } = ifOpen();
      const added = entriesIn(parcel);
      if (added.some((entry) => readEntry(entry).kind !== 'sound'))
        throw new Error('an entry does not fit its link');
      for (const entry of added) if (!entries.has(entry.link)) entries.set(entry.link, JSON.stringify(entry));
    },
    async keepAct(act) {
      ifOpen().acts.set(act.act, structuredClone(act));
    },
    async settleAct(act) {
      ifOpen().settled.add(act);
    },
    freshen: async () => undefined,
    heads: async () => [...ifOpen().entries.values()].map((text) => headOfEntry(JSON.parse(text))),
    async parcel(heads) {
      const { entries } = ifOpen();
      const found = heads.flatMap(({ link }): readonly Entry[] => {
        const text = entries.get(link);
        return text === undefined ? [] : [JSON.parse(text)];
      });
      return { runs: [], entries: found };
    },
    close() {
      closed = true;
    },
  };
}
