import type { Link } from '../../domain/log/chain.ts';
import type { StationId } from '../../domain/log/ids.ts';
import type { Parcel } from '../../domain/packed/parcel.ts';
import { cutAfter, firstLinkOf, type Section, sectionOfEntry, sectionOfRun } from './log-section.ts';

/** What a backup has of one station, in its order. */
export interface StationSections {
  readonly station: StationId;
  readonly sections: readonly Section[];
}

/**
 * Puts a log in the order of a backup: stations by id, the entries of each by number, none twice. Where two tablets
 * went on under one identity (a cloned device) each branch stays together after the other. The order depends on what
 * the log holds, not on how it came in or what of it is packed. A run is opened only where a branch leaves it.
 */
export function inBackupOrder({ runs = [], entries }: Pick<Parcel, 'entries'> & Partial<Parcel>) {
  const stations = new Map<StationId, Map<Link, Section>>();
  function add(section: Section): void {
    const held = stations.get(section.station) ?? new Map<Link, Section>();
    stations.set(section.station, held);
    if (!held.has(section.link)) held.set(section.link, section);
  }
  for (const run of runs) add(sectionOfRun(run));
  for (const entry of entries) add(sectionOfEntry(entry));
  return [...stations]
    .sort(([a], [b]) => byText(a, b))
    .map(([station, held]): StationSections => ({ station, sections: branchByBranch([...held.values()]) }));
}

const byText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
const byNumber = (a: Section, b: Section) => a.first - b.first || byText(firstLinkOf(a), firstLinkOf(b));

function branchByBranch(held: readonly Section[]): readonly Section[] {
  const sorted = cutAtBranches(held).sort(byNumber);
  const ends = new Set(sorted.map(({ link }) => link));
  const next = new Map<Link, Section[]>();
  for (const section of sorted) {
    const siblings = next.get(section.prev);
    if (siblings) siblings.push(section);
    else next.set(section.prev, [section]);
  }
  const placed: Section[] = [];
  // A stack, the lowest number on top: first the sections before which this log holds nothing.
  const waiting = sorted.filter(({ prev }) => !ends.has(prev)).reverse();
  for (let section = waiting.pop(); section; section = waiting.pop()) {
    placed.push(section);
    waiting.push(...(next.get(section.link) ?? []).toReversed());
  }
  if (placed.length < sorted.length) throw new Error('entries follow on from each other in a ring');
  return placed;
}

/** The same sections, in two where another one follows on from an entry within. */
function cutAtBranches(held: readonly Section[]): Section[] {
  const ends = new Set(held.map(({ link }) => link));
  let long = held.filter(({ entries }) => entries > 1);
  for (const { prev, first } of held) {
    if (ends.has(prev)) continue;
    // Numbers say where it would be. Seldom is there anything: a run of a tablet that was cloned.
    const mayHave = (run: Section) => run.first < first && first < run.first + run.entries;
    long = long.flatMap((run) => (mayHave(run) ? cutAfter(run, prev) : run));
    for (const { link } of long) ends.add(link);
  }
  return [...held.filter(({ entries }) => entries === 1), ...long];
}
