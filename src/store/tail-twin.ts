import * as v from 'valibot';
import type { Entry, Link } from '../domain/log/chain.ts';
import { type Holding, holdingOf, holdingSchema, withLink } from '../domain/log/holding.ts';
import {
  actLine,
  entryLine,
  type JournalLine,
  readJournalLine,
  settledLine,
} from '../domain/log/journal-line.ts';
import { readEntry } from '../domain/log/read-entry.ts';
import { readAct } from './kept-act.ts';
import type { Twin } from './twin.ts';

/** What a tail keeps at most: entries, characters of them, settled acts. A browser gives a site some 5 million signs. */
const mostEntries = 300;
const mostCharacters = 256_000;
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
 * Where there are no files: the newest entries in the small storage of the browser, and how many there were in all.
 * The first line says what was ever added, each other line is one of a journal and checks itself. The storage is
 * written to the disk when the browser sees fit: it is the best there is, and no more.
 */
export function tailTwin(storage: Pick<Storage, 'getItem' | 'setItem'>, name: string): Twin {
  const place = `${name} tail`;
  let closed = false;

  /** Read anew each time: other windows of the tablet write the same tail. */
  function read(): Tail {
    if (closed) throw new Error('this copy is closed');
    const [head = '', ...texts] = (storage.getItem(place) ?? '').split('\n');
    const lines = texts.map(tailLine);
    return { holding: readHead(head) ?? holdingOf(linksOf(lines)), lines };
  }

  function write({ holding, lines }: Tail): void {
    const text = [JSON.stringify(holding), ...newest(lines).map((line) => line.text)].join('\n');
    storage.setItem(place, text);
    if (storage.getItem(place) !== text) throw new Error('the storage keeps nothing');
  }

  function addNote(line: TailLine): void {
    const tail = read();
    if (tail.lines.every(({ text }) => text !== line.text)) write({ ...tail, lines: [...tail.lines, line] });
  }

  return {
    async look() {
      const { holding, lines } = read();
      const unreadable = lines.filter(({ says }) => says.kind === 'unreadable').length;
      return { reach: 'tail', holding, unreadable, unsettled: unsettled(lines).flatMap(readAct) };
    },
    async add(entries) {
      const tail = read();
      const held = new Set(linksOf(tail.lines));
      const fresh = entries.filter(({ link }) => !held.has(link)).map((entry) => tailLine(entryLine(entry)));
      if (fresh.some(({ says }) => says.kind !== 'entry')) throw new Error('an entry does not fit its link');
      if (fresh.length === 0) return;
      const holding = linksOf(fresh).reduce(withLink, tail.holding);
      write({ holding, lines: [...tail.lines, ...fresh] });
    },
    async keepAct(act) {
      addNote(tailLine(actLine(JSON.stringify(act))));
    },
    async settleAct(act) {
      addNote(tailLine(settledLine(act)));
    },
    links: async () => linksOf(read().lines),
    async entries(links) {
      const wanted = new Set(links);
      return read().lines.flatMap(({ text, says }): readonly Entry[] => {
        if (says.kind !== 'entry' || !wanted.has(says.link)) return [];
        const entry = readEntry(JSON.parse(text));
        return entry.kind === 'sound' ? [entry.entry] : [];
      });
    },
    close() {
      closed = true;
    },
  };
}

const tailLine = (text: string): TailLine => ({ text, says: readJournalLine(text) });

function linksOf(lines: readonly TailLine[]): readonly Link[] {
  return lines.flatMap(({ says }) => (says.kind === 'entry' ? [says.link] : []));
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

/** What is kept: every act that is not settled, and of the rest the newest. An entry pushes out no act. */
function newest(lines: readonly TailLine[]): readonly TailLine[] {
  const open = new Set(unsettled(lines));
  const acts = lines.filter(({ says }) => says.kind === 'act' && open.has(says.json));
  const settled = lines.filter(({ says }) => says.kind === 'settled').slice(-mostSettled);
  const others = lines.filter(({ says }) => says.kind === 'entry' || says.kind === 'unreadable');
  let characters = 0;
  const fits = others
    .slice(-mostEntries)
    .toReversed()
    .map(({ text }) => {
      characters += text.length;
      return characters <= mostCharacters;
    })
    .filter(Boolean).length;
  return [...acts, ...settled, ...others.slice(others.length - fits)];
}
