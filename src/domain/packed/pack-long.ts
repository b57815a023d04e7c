import type { Entry } from '../log/chain.ts';
import { packRun, runLength } from './pack-run.ts';
import type { PackedRun } from './packed-run.ts';
import type { Parcel } from './parcel.ts';

/** Fewer entries than this stay single: a run of a few costs more than it saves. */
export const shortestRun = 256;

/** The same entries, packed where enough follow on from each other. None may be in it twice. */
export function packLong(entries: readonly Entry[]): Parcel {
  const runs: PackedRun[] = [];
  const singles: Entry[] = [];
  for (const chain of chainsOf(entries)) {
    for (let from = 0; from < chain.length; ) {
      const part = chain.slice(from, from + runLength(chain.slice(from)));
      if (part.length < shortestRun) singles.push(...part.map(({ entry }) => entry));
      else runs.push(packRun(part));
      from += part.length;
    }
  }
  return { runs, entries: singles };
}

/** Entries in the order of their numbers, those of each chain together: a cloned station has several. */
export function chainsOf(entries: readonly Entry[]): Iterable<readonly { readonly entry: Entry }[]> {
  const chains = new Map<string, { entry: Entry }[]>();
  const ends = new Map<string, { entry: Entry }[]>();
  for (const entry of entries.toSorted((a, b) => a.event.seq - b.event.seq)) {
    const chain = ends.get(entry.prev) ?? [];
    if (chain.length === 0) chains.set(entry.link, chain);
    else ends.delete(entry.prev);
    chain.push({ entry });
    ends.set(entry.link, chain);
  }
  return chains.values();
}
