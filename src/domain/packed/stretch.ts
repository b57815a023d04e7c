import type { Entry, Link } from '../log/chain.ts';
import type { PackedRun, RunHead } from './packed-run.ts';

/** What is said of one entry as of a run of one. */
export function headOfEntry({ prev, link, event }: Entry): RunHead {
  return { station: event.station, first: event.seq, entries: 1, prev, link, sum: link };
}

export function headOfRun({ station, first, entries, prev, link, sum }: PackedRun): RunHead {
  return { station, first, entries, prev, link, sum };
}

/** The number of the last entry. */
export function lastOf({ first, entries }: Pick<RunHead, 'first' | 'entries'>): number {
  return first + entries - 1;
}

/** Heads of one station of which each follows on from the one before, link by link. */
export interface Stretch {
  readonly station: string;
  readonly first: number;
  readonly last: number;
  readonly heads: readonly RunHead[];
}

/** Puts heads together into stretches, each as long as can be. Heads that overlap stand in different ones. */
export function stretchesOf(heads: readonly RunHead[]): readonly Stretch[] {
  const byEnd = new Map<Link, RunHead[]>();
  const all: RunHead[][] = [];
  for (const head of heads.toSorted((a, b) => a.first - b.first)) {
    const before = byEnd.get(head.prev);
    const end = before?.at(-1);
    const follows = before && end?.station === head.station && lastOf(end) + 1 === head.first;
    const stretch = follows ? before : [];
    if (follows) byEnd.delete(head.prev);
    else all.push(stretch);
    stretch.push(head);
    byEnd.set(head.link, stretch);
  }
  return all.map((stretch) => {
    const [first, last] = [stretch[0] as RunHead, stretch.at(-1) as RunHead];
    return { station: first.station, first: first.first, last: lastOf(last), heads: stretch };
  });
}
