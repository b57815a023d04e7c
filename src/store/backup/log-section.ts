import { type Entry, type Link, linkOver } from '../../domain/log/chain.ts';
import type { StationId } from '../../domain/log/ids.ts';
import { eventTexts } from '../../domain/packed/event-texts.ts';
import type { PackedRun } from '../../domain/packed/packed-run.ts';

/** Entries of a station that follow on from each other, as far as they can be told of without being opened. */
export interface Section {
  readonly station: StationId;
  /** The number of its first entry. */
  readonly first: number;
  readonly entries: number;
  /** What its first entry follows on, and the link of its last one. */
  readonly prev: Link;
  readonly link: Link;
  /** A single entry, or a packed run and how many of its entries stand before the section. */
  readonly of: { readonly entry: Entry } | { readonly run: PackedRun; readonly from: number };
}

export function sectionOfEntry(entry: Entry): Section {
  const { prev, link, event } = entry;
  return { station: event.station, first: event.seq, entries: 1, prev, link, of: { entry } };
}

export function sectionOfRun(run: PackedRun): Section {
  const { station, first, entries, prev, link } = run;
  return { station, first, entries, prev, link, of: { run, from: 0 } };
}

/** An entry as a line of a backup, without its end. */
interface LogLine {
  readonly link: Link;
  readonly text: string;
}

/** The lines of a section, `JSON.stringify(entry)` each. Throws when it is not whole or does not end in its link. */
export function* linesOf({ of, prev, link: last, entries }: Section): Generator<LogLine, void> {
  if ('entry' in of) {
    yield { link: of.entry.link, text: JSON.stringify(of.entry) };
    return;
  }
  const { run, from } = of;
  let before = prev;
  for (const { text } of eventTexts(run, (at) => at >= from && at < from + entries)) {
    const link = linkOver(before, text);
    yield { link, text: `{"prev":"${before}","link":"${link}","event":${text}}` };
    before = link;
  }
  if (before !== last) throw new Error('a run does not end in its link');
}

/** The link of the first entry. */
export function firstLinkOf(section: Section): Link {
  for (const { link } of linesOf(section)) return link;
  return section.link;
}

/** A section in two, the first ending with the entry that has the given link; in one where it is not within. */
export function cutAfter(section: Section, link: Link): readonly Section[] {
  const { of, first, entries } = section;
  if ('entry' in of) return [section];
  let at = 0;
  for (const line of linesOf(section)) {
    at += 1;
    if (line.link === link) break;
  }
  if (at === entries) return [section];
  return [
    { ...section, entries: at, link },
    {
      ...section,
      first: first + at,
      entries: entries - at,
      prev: link,
      of: { run: of.run, from: of.from + at },
    },
  ];
}
