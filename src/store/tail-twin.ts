import * as v from 'valibot';
import type { Entry, Link } from '../domain/log/chain.ts';
import { type Holding, holdingOf, holdingSchema, joined, withLink } from '../domain/log/holding.ts';
import {
  actLine,
  entryLine,
  type JournalLine,
  readJournalLine,
  settledLine,
} from '../domain/log/journal-line.ts';
import { readEntry } from '../domain/log/read-entry.ts';
import type { PackedRun } from '../domain/packed/packed-run.ts';
import { headOfEntry, lastOf } from '../domain/packed/stretch.ts';
import { entriesOf } from '../domain/packed/unpack-run.ts';
import { readAct } from './kept-act.ts';
import { type RingPart, type SmallStorage, tailRing } from './tail-ring.ts';
import type { Twin } from './twin.ts';

/** Settled acts that are remembered. */
const mostSettled = 100;

interface TailLine {
  readonly text: string;
  readonly says: JournalLine;
}

interface Tail {
  readonly holding: Holding;
  readonly lines: readonly TailLine[];
}

/**
 * Where there are no files: the newest entries in the small storage of the browser, and how many there were in all. Each
 * line is one of a journal and checks itself. Entries lie in a ring, acts in one text. The storage is written to the disk
 * when the browser sees fit: it is the best there is, and no more. What comes packed is counted, and not kept.
 */
export function tailTwin(storage: SmallStorage, name: string): Twin {
  const place = `${name} tail`;
  const ring = tailRing(storage, place);
  let checked = new Map<string, readonly TailLine[]>();
  let closed = false;

  /** The acts, and the entries that an earlier version kept with them. */
  function readNotes(): { readonly holding: Holding | undefined; readonly lines: readonly TailLine[] } {
    const [head = '', ...texts] = (storage.getItem(place) ?? '').split('\n');
    return { holding: readHead(head), lines: texts.map(tailLine) };
  }

  function writeNotes(lines: readonly TailLine[]): void {
    const { holding } = readNotes();
    const text = [JSON.stringify(holding ?? null), ...lines.map((line) => line.text)].join('\n');
    storage.setItem(place, text);
    if (storage.getItem(place) !== text) throw new Error('the storage keeps nothing');
  }

  /** What the ring says; each part is checked once, and again when another has taken its place. */
  function saidIn(parts: readonly RingPart[]): readonly TailLine[] {
    checked = new Map(parts.map(({ raw, lines }) => [raw, checked.get(raw) ?? lines.map(tailLine)]));
    return [...checked.values()].flat();
  }

  /** Read anew each time: other windows of the tablet write the same tail. */
  function read(): Tail {
    if (closed) throw new Error('this copy is closed');
    const fresh = ring.parts();
    const notes = readNotes();
    const lines = [...notes.lines, ...saidIn(fresh)];
    const newest = fresh.at(-1);
    const counted = newest && newest.number > 0 ? newest.holding : notes.holding;
    return { holding: counted ?? holdingOf(linksOf(lines)), lines };
  }

  function addNote(line: TailLine): void {
    if (closed) throw new Error('this copy is closed');
    const { lines } = readNotes();
    if (lines.every(({ text }) => text !== line.text)) writeNotes(worthKeeping([...lines, line]));
  }

  /** What is new in runs: those that touch nothing that is held are only counted. */
  function unpacked(runs: readonly PackedRun[], { lines }: Tail): { whole: PackedRun[]; entries: Entry[] } {
    const held = entriesIn(lines).map(headOfEntry);
    const touches = (run: PackedRun) =>
      held.some(
        ({ station, first }) => station === run.station && first >= run.first && first <= lastOf(run),
      );
    return {
      whole: runs.filter((run) => !touches(run)),
      entries: runs.filter(touches).flatMap((run) => entriesOf(run)),
    };
  }

  return {
    async look() {
      const { holding, lines } = read();
      const unreadable = lines.filter(({ says }) => says.kind === 'unreadable').length;
      return { reach: 'tail', holding, unreadable, unsettled: unsettled(lines).flatMap(readAct) };
    },
    async add({ runs, entries }) {
      const tail = read();
      const packed = runs.length > 0 ? unpacked(runs, tail) : { whole: [], entries: [] };
      const held = new Set(linksOf(tail.lines));
      const fresh = [...packed.entries, ...entries]
        .filter(({ link }) => !held.has(link))
        .map((entry) => ({ link: entry.link, ...tailLine(entryLine(entry)) }));
      if (fresh.some(({ says }) => says.kind !== 'entry')) throw new Error('an entry does not fit its link');
      let holding = packed.whole.reduce(joined, tail.holding);
      if (fresh.length === 0 && packed.whole.length > 0) ring.add([], holding);
      for (const part of inTaps(fresh)) {
        holding = part.reduce((sum, { link }) => withLink(sum, link), holding);
        ring.add(
          part.map(({ text }) => text),
          holding,
        );
      }
    },
    async keepAct(act) {
      addNote(tailLine(actLine(JSON.stringify(act))));
    },
    async settleAct(act) {
      addNote(tailLine(settledLine(act)));
    },
    async freshen() {
      if (!closed) ring.freshen();
    },
    heads: async () => entriesIn(read().lines).map(headOfEntry),
    async parcel(heads) {
      const wanted = new Set(heads.map(({ link }) => link));
      return { runs: [], entries: entriesIn(read().lines).filter(({ link }) => wanted.has(link)) };
    },
    close() {
      closed = true;
    },
  };
}

/** More entries than this are of no single tap: they need not stand or fall together. */
const mostOfTap = 10;

function inTaps<Item>(items: readonly Item[]): readonly (readonly Item[])[] {
  return items.length > mostOfTap ? items.map((item) => [item]) : items.length > 0 ? [items] : [];
}

const tailLine = (text: string): TailLine => ({ text, says: readJournalLine(text) });

function linksOf(lines: readonly TailLine[]): readonly Link[] {
  return lines.flatMap(({ says }) => (says.kind === 'entry' ? [says.link] : []));
}

function entriesIn(lines: readonly TailLine[]): readonly Entry[] {
  return lines.flatMap(({ text, says }): readonly Entry[] => {
    if (says.kind !== 'entry') return [];
    const entry = readEntry(JSON.parse(text));
    return entry.kind === 'sound' ? [entry.entry] : [];
  });
}

function readHead(head: string): Holding | undefined {
  try {
    return v.parse(holdingSchema, JSON.parse(head));
  } catch {
    return undefined;
  }
}

/** The acts that are not settled, as JSON. */
function unsettled(lines: readonly TailLine[]): readonly string[] {
  const settled = new Set(lines.map(({ says }) => (says.kind === 'settled' ? says.act : undefined)));
  return lines.flatMap(({ says }) => (says.kind === 'act' && !settled.has(says.act) ? [says.json] : []));
}

/** Every act that is not settled, the newest of those that are, and what else there is. */
function worthKeeping(lines: readonly TailLine[]): readonly TailLine[] {
  const open = new Set(unsettled(lines));
  const acts = lines.filter(({ says }) => says.kind === 'act' && open.has(says.json));
  const settled = lines.filter(({ says }) => says.kind === 'settled').slice(-mostSettled);
  const others = lines.filter(({ says }) => says.kind === 'entry' || says.kind === 'unreadable');
  return [...acts, ...settled, ...others];
}
