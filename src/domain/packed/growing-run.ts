import type { Entry, Link } from '../log/chain.ts';
import { holdingOf } from '../log/holding.ts';
import type { StationId } from '../log/ids.ts';
import type { LogEvent } from '../log/read-event.ts';
import { eventTexts } from './event-texts.ts';
import { isNext, unlike } from './pack-run.ts';
import type { PackedRun } from './packed-run.ts';
import { newSheet } from './run-sheet.ts';
import type { TextEntry } from './text-entry.ts';

/** A run in the making. Of its entries, which have just been held against their links, it keeps texts and links alone. */
export interface GrowingRun {
  readonly length: () => number;
  readonly ends: () => Ends;
  /** Takes an entry if it follows on from the last; whether it does. */
  readonly take: (entry: TextEntry) => boolean;
  readonly entries: () => readonly Entry[];
  /**
   * Throws when it does not say what its entries say. Each is read back by its text, which costs a fifth of what a link does
   * and is enough here.
   */
  readonly packed: () => PackedRun;
}

/** Whose entries they are, the numbers of the first and the last, what that one follows on and the link of this. */
interface Ends {
  readonly station: StationId;
  readonly first: number;
  readonly last: number;
  readonly prev: Link;
  readonly link: Link;
}

export function growingRun(first: TextEntry): GrowingRun {
  const sheet = newSheet();
  const texts: string[] = [];
  const links: Link[] = [];
  let last = first;

  function keep(entry: TextEntry): void {
    sheet.take(entry);
    texts.push(entry.text);
    links.push(entry.link);
    last = entry;
  }

  keep(first);
  return {
    length: () => texts.length,
    ends: () => ({
      ...{ station: first.station, first: first.seq, last: last.seq },
      ...{ prev: first.prev, link: last.link },
    }),
    take(entry) {
      const follows = isNext(entry, last);
      if (follows) keep(entry);
      return follows;
    },
    entries: () =>
      texts.map((text, at) => ({
        prev: links[at - 1] ?? first.prev,
        link: links[at] ?? last.link,
        event: JSON.parse(text) as LogEvent,
      })),
    packed() {
      const { station, seq, prev } = first;
      const { entries, sum } = holdingOf(links);
      const head = { station, first: seq, entries, prev, link: last.link, sum };
      const run = { ...head, ...sheet.packed() };
      for (const { at, text } of eventTexts(run)) if (text !== texts[at]) throw new Error(unlike);
      return run;
    },
  };
}
