import { type Entry, type Link, linkOver } from '../log/chain.ts';
import { holdingOf } from '../log/holding.ts';
import { eventTexts } from './event-texts.ts';
import type { PackedRun } from './packed-run.ts';
import { newSheet } from './run-sheet.ts';
import { type TextEntry, textEntryOf } from './text-entry.ts';

/** More entries than this are never in one run: a lost run is to cost little, and a run is written whole. */
export const mostInRun = 32_768;

/** An entry to be packed; `mark` is the mark of the tap that it was appended by on this tablet. */
export interface EntryToPack {
  readonly entry: Entry;
  readonly mark?: number | undefined;
}

/** What tells whether entries follow on from each other. */
type Linked = Pick<TextEntry, 'station' | 'seq' | 'prev' | 'link'>;

function linked({ prev, link, event: { station, seq } }: Entry): Linked {
  return { station, seq, prev, link };
}

/** How many of the entries from the first on can be packed in one run: they follow on from each other, link by link. */
export function runLength(entries: readonly EntryToPack[]): number {
  let length = 0;
  let before: Linked | undefined;
  for (const { entry } of entries) {
    const next = linked(entry);
    if (length === mostInRun || (before && !isNext(next, before))) break;
    before = next;
    length += 1;
  }
  return length;
}

/** Whether an entry follows on from the one before it in the chain of its station. */
export function isNext({ station, seq, prev }: Linked, before: Linked): boolean {
  return station === before.station && seq === before.seq + 1 && prev === before.link;
}

/**
 * Packs entries that follow on from each other (see `runLength`). Throws when they do not, or are not as they were written:
 * a run takes their place for good, so each is read back from it, chain and all, before it may.
 */
export function packRun(entries: readonly EntryToPack[]): PackedRun {
  const [first, last] = [entries[0]?.entry, entries.at(-1)?.entry];
  if (!first || !last || runLength(entries) !== entries.length) throw new Error('these entries are no run');
  const sheet = newSheet();
  for (const { entry, mark } of entries) sheet.take(textEntryOf(entry), mark);
  const run: PackedRun = {
    station: first.event.station,
    first: first.event.seq,
    entries: entries.length,
    prev: first.prev,
    link: last.link,
    sum: holdingOf(entries.map(({ entry }) => entry.link)).sum,
    ...sheet.packed(),
  };
  let link: Link = run.prev;
  for (const { at, text } of eventTexts(run)) {
    link = linkOver(link, text);
    if (link !== entries[at]?.entry.link) throw new Error(unlike);
  }
  return run;
}

export const unlike = 'a packed run does not say what its entries say';

/** What is left of the name of a tap: enough to look for it, not enough to be sure. Never 0. */
export function actMark(act: string): number {
  let mark = 0x811c_9dc5;
  // FNV-1a, 32 bits (G. Fowler, L. C. Noll, K.-P. Vo; draft-eastlake-fnv).
  for (let at = 0; at < act.length; at += 1) mark = Math.imul(mark ^ act.charCodeAt(at), 0x0100_0193);
  return mark >>> 0 || 1;
}
