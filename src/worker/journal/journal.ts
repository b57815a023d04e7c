import type { Link } from '../../domain/log/chain.ts';
import type { Holding } from '../../domain/log/holding.ts';
import { actLine, type JournalLine, readJournalLine, settledLine } from '../../domain/log/journal-line.ts';
import { compact } from './compaction.ts';
import { emptyContents, readOn, readUpTo, saysNothingNew, takeLine, unsettledOf } from './contents.ts';
import type { FileInfo, Folder } from './folder.ts';
import { segmentWriter } from './segment-writer.ts';
import { bytesOf, textOf } from './whole-lines.ts';

interface JournalReport {
  readonly holding: Holding;
  readonly unreadable: number;
  /** Acts as JSON. */
  readonly unsettled: readonly string[];
}

export interface Journal {
  readonly look: () => Promise<JournalReport>;
  /** Adds entries, each as its JSON; all of them or, when one does not fit its link, none. */
  readonly add: (texts: readonly string[]) => Promise<void>;
  readonly keepAct: (json: string) => Promise<void>;
  readonly settleAct: (act: string) => Promise<void>;
  readonly links: () => Promise<readonly Link[]>;
  readonly texts: (links: readonly Link[]) => Promise<readonly string[]>;
  /** Folds many segments into one. Until it is done, and if it fails, all is where it was. */
  readonly tidy: () => Promise<void>;
  readonly release: () => void;
}

export interface JournalOptions {
  readonly folder: Folder;
  /** What the segments of this window are called; no other window may have it. */
  readonly writer: string;
  /** Lets what has been asked meanwhile come in, so that one flush serves it all. */
  readonly turn: () => Promise<void>;
  /** Called now and then during long work. */
  readonly alive: () => void;
}

/** So many segments that no window holds may lie about before they are folded into one. */
const mostSegments = 8;
/** Segments come and go while other windows fold theirs; a folder that never stands still is broken. */
const mostListings = 5;

interface NewLine {
  readonly text: string;
  readonly says: JournalLine;
}

interface Waiting {
  readonly lines: readonly NewLine[];
  readonly resolve: () => void;
  readonly reject: (why: unknown) => void;
}

/**
 * The journal of one folder, as one window sees it. Each window adds to segments of its own, and reads those of all.
 * Segments only ever grow, or go as a whole once their lines stand in another.
 */
export function openJournal({ folder, writer, turn, alive }: JournalOptions): Journal {
  let names = 0;
  const newName = () => {
    names += 1;
    return `journal-${writer}-${names}`;
  };
  const segment = segmentWriter(folder, newName);
  let contents = emptyContents();
  let looked = false;
  const reading = oneAtATime();
  const writing = oneAtATime();
  let waiting: Waiting[] = [];

  /** Of a segment of one's own only that is read which was written whole. */
  const readableSize = ({ name, size }: FileInfo) => Math.min(size, segment.written.get(name) ?? size);
  const isChanged = (files: readonly FileInfo[]) =>
    [...contents.files].some(
      ([name, { upTo }]) => (files.find((file) => file.name === name)?.size ?? -1) < upTo,
    );

  async function segments(): Promise<readonly FileInfo[]> {
    return (await folder.list()).filter(({ name }) => name.startsWith('journal-'));
  }

  /** Reads what is new, over again while segments come and go: a list of them may be old before it is read. */
  async function readAll(): Promise<readonly FileInfo[]> {
    for (let listings = 1; ; listings += 1) {
      const files = await segments();
      if (isChanged(files)) contents = emptyContents();
      try {
        for (const file of files)
          await readOn(contents, folder, { name: file.name, to: readableSize(file), alive });
        if (namesOf(await segments()) === namesOf(files)) {
          looked = true;
          return files;
        }
        if (listings === mostListings) throw new Error('the segments do not stand still');
      } catch (error) {
        if (listings === mostListings || namesOf(await segments()) === namesOf(files)) throw error;
      }
    }
  }

  /** A line without its newline is torn, unless its window is still at it. */
  async function countTorn(files: readonly FileInfo[]): Promise<number> {
    let torn = 0;
    for (const file of files) {
      if (segment.written.has(file.name)) continue;
      if (file.size <= (contents.files.get(file.name)?.upTo ?? 0)) continue;
      const held = await folder.hold(file.name);
      held?.release();
      if (held) torn += 1;
    }
    return torn;
  }

  async function look(): Promise<JournalReport> {
    const torn = await countTorn(await readAll());
    const unreadable = [...contents.files.values()].reduce((sum, file) => sum + file.unreadable, torn);
    return { holding: contents.holding, unreadable, unsettled: unsettledOf(contents) };
  }

  function write(lines: readonly NewLine[]): Promise<void> {
    return new Promise((resolve, reject) => {
      waiting.push({ lines, resolve, reject });
      if (waiting.length === 1) void writing(writeWaiting);
    });
  }

  /** Writes all that waits with one flush. */
  async function writeWaiting(): Promise<void> {
    await turn();
    const batch = waiting;
    waiting = [];
    try {
      await writeNew(batch.flatMap(({ lines }) => lines));
      for (const { resolve } of batch) resolve();
    } catch (error) {
      for (const { reject } of batch) reject(error);
    }
  }

  async function writeNew(lines: readonly NewLine[]): Promise<void> {
    const distinct = new Map(lines.map((line) => [line.text, line]));
    const fresh = [...distinct.values()].filter(({ says }) => !saysNothingNew(contents, says));
    if (fresh.length === 0) return;
    const { name, from, to } = await segment.append(bytesOf(fresh.map(({ text }) => text)));
    let at = from;
    for (const { text, says } of fresh) {
      const end = at + bytesOf([text]).length;
      takeLine(contents, says, { file: name, from: at, to: end - 1 });
      at = end;
    }
    readUpTo(contents, name, to);
  }

  async function textAt(link: Link): Promise<string | undefined> {
    const place = contents.places.get(link);
    if (!place) return undefined;
    const text = textOf(await folder.read(place.file, place));
    const line = readJournalLine(text);
    return line.kind === 'entry' && line.link === link ? text : undefined;
  }

  async function textsOf(links: readonly Link[]): Promise<readonly string[]> {
    const texts: string[] = [];
    for (const link of links) {
      const text = await textAt(link);
      if (text !== undefined) texts.push(text);
    }
    return texts;
  }

  return {
    look: () => reading(look),
    async add(texts) {
      const lines = texts.map(newLine);
      if (lines.some(({ says }) => says.kind !== 'entry')) throw new Error('an entry does not fit its link');
      await write(lines);
    },
    keepAct: (json) => write([newLine(actLine(json))]),
    settleAct: (act) => write([newLine(settledLine(act))]),
    links: () =>
      reading(async () => {
        if (!looked) await readAll();
        return [...contents.places.keys()];
      }),
    texts: (links) =>
      reading(async () => {
        if (!looked) await readAll();
        try {
          return await textsOf(links);
        } catch {
          // Another window has folded the segments meanwhile.
          await readAll();
          return textsOf(links);
        }
      }),
    tidy: () =>
      reading(async () => {
        const others = (await segments())
          .map(({ name }) => name)
          .filter((name) => !segment.written.has(name));
        if (others.length <= mostSegments) return;
        await compact(folder, { segments: others, into: newName(), atMost: mostSegments, alive });
        await readAll();
      }),
    release: segment.release,
  };
}

const newLine = (text: string): NewLine => ({ text, says: readJournalLine(text) });

const namesOf = (files: readonly FileInfo[]): string =>
  files
    .map(({ name }) => name)
    .toSorted()
    .join('/');

/** Runs jobs one after another. */
function oneAtATime(): <Result>(job: () => Promise<Result>) => Promise<Result> {
  let last: Promise<unknown> = Promise.resolve();
  return (job) => {
    const result = last.then(job);
    last = result.catch(() => undefined);
    return result;
  };
}
