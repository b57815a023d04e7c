import type { Entry, Link } from './chain.ts';
import { noLink } from './chain.ts';
import type { StationId } from './ids.ts';

/** Numbers of a station, both ends included. */
interface Gap {
  readonly station: StationId;
  readonly from: number;
  readonly to: number;
}

export interface ChainFaults {
  /** Runs of numbers that are missing before others that are there. */
  readonly gaps: readonly Gap[];
  /** Entries that do not follow on from any entry with the number before theirs. */
  readonly breaks: readonly { readonly station: StationId; readonly seq: number }[];
}

/** What is wrong with the chains of a log of sound entries. A branch follows on from the chain that it left. */
export function chainFaults(entries: readonly Entry[]): ChainFaults {
  const links = new Map<StationId, Map<number, Set<Link>>>();
  for (const { link, event } of entries) {
    const of = links.get(event.station) ?? new Map<number, Set<Link>>();
    links.set(event.station, of);
    of.set(event.seq, (of.get(event.seq) ?? new Set()).add(link));
  }
  const gaps: Gap[] = [];
  for (const [station, of] of links) {
    let last = 0;
    for (const seq of [...of.keys()].sort((a, b) => a - b)) {
      if (seq > last + 1) gaps.push({ station, from: last + 1, to: seq - 1 });
      last = seq;
    }
  }
  const breaks = entries.filter(({ prev, event: { station, seq } }) => {
    if (seq === 1) return prev !== noLink;
    const before = links.get(station)?.get(seq - 1);
    return before !== undefined && !before.has(prev);
  });
  return { gaps, breaks: breaks.map(({ event: { station, seq } }) => ({ station, seq })) };
}
