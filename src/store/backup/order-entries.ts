import type { Entry, Link } from '../../domain/log/chain.ts';
import type { StationId } from '../../domain/log/ids.ts';

/** The entries of one station, in the order of a backup. */
export interface StationRun {
  readonly station: StationId;
  readonly entries: readonly Entry[];
}

/**
 * Puts a log in the order of a backup: stations by id, the entries of each by number, none twice. Where two tablets
 * went on under one identity (a cloned device) each branch stays together after the other. The order depends on what
 * the log holds, not on how it came in.
 */
export function inBackupOrder(entries: readonly Entry[]): readonly StationRun[] {
  const stations = new Map<StationId, Map<Link, Entry>>();
  for (const entry of entries) {
    const { station } = entry.event;
    const held = stations.get(station) ?? new Map<Link, Entry>();
    stations.set(station, held.set(entry.link, entry));
  }
  return [...stations]
    .sort(([a], [b]) => byText(a, b))
    .map(([station, held]) => ({ station, entries: branchByBranch(held) }));
}

const byText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
const byNumber = (a: Entry, b: Entry) => a.event.seq - b.event.seq || byText(a.link, b.link);

function branchByBranch(held: ReadonlyMap<Link, Entry>): readonly Entry[] {
  const sorted = [...held.values()].sort(byNumber);
  const next = new Map<Link, Entry[]>();
  for (const entry of sorted) next.set(entry.prev, [...(next.get(entry.prev) ?? []), entry]);
  const placed = new Set<Entry>();
  // A stack, the lowest number on top: first the entries before which this log holds none.
  const waiting = sorted.filter(({ prev }) => !held.has(prev)).reverse();
  for (let entry = waiting.pop(); entry; entry = waiting.pop()) {
    if (placed.has(entry)) continue;
    placed.add(entry);
    waiting.push(...[...(next.get(entry.link) ?? [])].reverse());
  }
  return [...placed];
}
