import type { Holding } from '../../domain/log/holding.ts';
import { actLine, readJournalLine, settledLine } from '../../domain/log/journal-line.ts';
import { differences } from '../../domain/packed/differences.ts';
import { packLong } from '../../domain/packed/pack-long.ts';
import type { PackedRun, RunHead } from '../../domain/packed/packed-run.ts';
import { headOfRun } from '../../domain/packed/stretch.ts';
import { entriesOf } from '../../domain/packed/unpack-run.ts';
import { compact } from './compaction.ts';
import {
  emptyContents,
  forgetRun,
  headOfLine,
  readOn,
  readUpTo,
  saysNothingNew,
  takeLine,
  unsettledOf,
} from './contents.ts';
import { type Counted, countOnce, insideOf } from './count-once.ts';
import type { FileInfo, Folder } from './folder.ts';
import { lineBatches, type NewLine } from './line-batches.ts';
import { oneAtATime } from './one-at-a-time.ts';
import { opener } from './opener.ts';
import { isPacked } from './packed-file.ts';
import { segmentWriter } from './segment-writer.ts';
import { soundLines } from './sound-lines.ts';
import { stockOf, toFold } from './tidy-plan.ts';
import { bytesOf } from './whole-lines.ts';
import { writeFile } from './written-file.ts';

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
  /** Adds what is new in runs, as runs in a file of their own; all of it, or nothing. */
  readonly addRuns: (runs: readonly PackedRun[]) => Promise<void>;
  readonly keepAct: (json: string) => Promise<void>;
  readonly settleAct: (act: string) => Promise<void>;
  /** What it holds, each entry under one head. */
  readonly heads: () => Promise<readonly RunHead[]>;
  /** What is held under these heads; what is no longer sound is left out. */
  readonly parcel: (
    heads: readonly RunHead[],
  ) => Promise<{ readonly runs: readonly PackedRun[]; readonly texts: readonly string[] }>;
  /** Folds files when there are many of them. Until it is done, and if it fails, all is where it was. */
  readonly tidy: () => Promise<void>;
  /** Reads one packed file whole. What is damaged there is held no longer, and is laid aside. */
  readonly verify: () => Promise<void>;
  readonly release: () => void;
}

export interface JournalOptions {
  readonly folder: Folder;
  /** What the files of this window are called; no other window may have it. */
  readonly writer: string;
  /** Lets what has been asked meanwhile come in, so that one flush serves it all. */
  readonly turn: () => Promise<void>;
  /** Called now and then during long work. */
  readonly alive: () => void;
  /** From 0 to below 1: chooses what is verified. */
  readonly chance: () => number;
}

/** Files come and go while other windows fold theirs; a folder that never stands still is broken. */
const mostListings = 5;

/**
 * The journal of one folder, as one window sees it. Each window adds to segments of its own, and reads those of all.
 * Segments only ever grow, or go as a whole once their lines stand in other files.
 */
export function openJournal({ folder, writer, turn, alive, chance }: JournalOptions): Journal {
  let names = 0;
  const newName = (kind: 'journal' | 'packed') => {
    names += 1;
    return `${kind}-${writer}-${names}`;
  };
  const segment = segmentWriter(folder, () => newName('journal'));
  /** Files of this window of which nobody knows how much is on the disk. */
  const unsure = new Set<string>();
  let contents = emptyContents();
  let looked = false;
  const opened = opener(folder, { contents: () => contents, alive });
  const reading = oneAtATime();
  const write = lineBatches(writeNew, turn);

  /** Of a file of one's own only that is read which was written whole. */
  const readableSize = ({ name, size }: FileInfo) =>
    unsure.has(name) ? 0 : Math.min(size, segment.written.get(name) ?? size);
  const isChanged = (files: readonly FileInfo[]) =>
    [...contents.files].some(
      ([name, { upTo }]) => (files.find((file) => file.name === name)?.size ?? -1) < upTo,
    );

  async function files(): Promise<readonly FileInfo[]> {
    return (await folder.list()).filter(({ name }) => name.startsWith('journal-') || isPacked(name));
  }

  /** Reads what is new, over again while files come and go: a list of them may be old before it is read. */
  async function readAll(): Promise<readonly FileInfo[]> {
    for (let listings = 1; ; listings += 1) {
      const there = await files();
      if (isChanged(there)) contents = emptyContents();
      try {
        for (const file of there)
          await readOn(contents, folder, { name: file.name, to: readableSize(file), alive });
        if (namesOf(await files()) === namesOf(there)) {
          looked = true;
          return there;
        }
        if (listings === mostListings) throw new Error('the files do not stand still');
      } catch (error) {
        if (listings === mostListings || namesOf(await files()) === namesOf(there)) throw error;
      }
    }
  }

  /** A line without its newline is torn, unless its window is still at it. */
  async function countTorn(there: readonly FileInfo[]): Promise<number> {
    let torn = 0;
    for (const file of there) {
      if (segment.written.has(file.name) || unsure.has(file.name)) continue;
      if (file.size <= (contents.files.get(file.name)?.upTo ?? 0)) continue;
      const held = await folder.hold(file.name);
      held?.release();
      if (held) torn += 1;
    }
    return torn;
  }

  /** Again each time that a run is found damaged on the way. */
  async function count(): Promise<Counted> {
    for (;;) {
      const runs = contents.runs.size;
      try {
        return await countOnce(contents, opened.open);
      } catch (error) {
        if (contents.runs.size === runs) throw error;
      }
    }
  }

  async function look(): Promise<JournalReport> {
    const torn = await countTorn(await readAll());
    const { holding } = await withFiles(count);
    const unreadable = [...contents.files.values()].reduce((sum, file) => sum + file.unreadable, torn);
    return { holding, unreadable, unsettled: unsettledOf(contents) };
  }

  async function heads(): Promise<readonly RunHead[]> {
    const { apart, covered } = await count();
    const elsewhere = new Set(covered.map(({ link }) => link));
    const young = [...contents.young.values()].map(({ head }) => head);
    return [...apart, ...young.filter(({ link }) => !elsewhere.has(link))];
  }

  /** Does what opens files; once more after another look, for another window may have folded them meanwhile. */
  async function withFiles<Result>(work: () => Promise<Result>): Promise<Result> {
    if (!looked) await readAll();
    try {
      return await work();
    } catch {
      await readAll();
      return work();
    }
  }

  async function writeNew(lines: readonly NewLine[]): Promise<void> {
    const distinct = new Map(lines.map((line) => [line.text, line]));
    const fresh = await outsideOfRuns(
      [...distinct.values()].filter(({ says }) => !saysNothingNew(contents, says)),
    );
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

  /** The lines that are in no run. A tap has a new number, so that nothing needs to be opened for it. */
  async function outsideOfRuns(lines: readonly NewLine[]): Promise<readonly NewLine[]> {
    const entries = lines.flatMap(({ says }) => (says.kind === 'entry' ? [headOfLine(says)] : []));
    // In two places is better than in none.
    const inside = await insideOf(contents, { entries, open: opened.open }).catch(() => new Set());
    return lines.filter(({ says }) => says.kind !== 'entry' || !inside.has(says.link));
  }

  async function addRuns(runs: readonly PackedRun[]): Promise<void> {
    const given = new Map(runs.map((run) => [headOfRun(run), run]));
    const incoming = {
      heads: [...given.keys()],
      open: async (head: RunHead) => entriesOf(given.get(head) as PackedRun, alive),
    };
    const { here } = await withFiles(async () =>
      differences({ here: incoming, there: { heads: await heads(), open: opened.open } }),
    );
    const rest = packLong(here.entries);
    const whole = here.heads.flatMap((head) => given.get(head) ?? []);
    const parcel = { runs: [...whole, ...rest.runs], entries: rest.entries };
    if (parcel.runs.length + parcel.entries.length === 0) return;
    const name = newName('packed');
    unsure.add(name);
    await writeFile(folder, { name, parcel, alive });
    unsure.delete(name);
    await readAll();
  }

  async function othersFiles(): Promise<readonly string[]> {
    return (await files()).map(({ name }) => name).filter((name) => !segment.written.has(name));
  }

  async function tidy(): Promise<void> {
    const choose = (among: readonly string[]) => toFold(stockOf(contents, among));
    const others = await othersFiles();
    if (choose(others).length === 0) return;
    await compact(folder, { files: others, choose, newName, alive });
    await readAll();
  }

  async function isDamaged(name: string): Promise<boolean> {
    const size = (await files()).find((file) => file.name === name)?.size ?? 0;
    for await (const said of soundLines(folder, { name, size, alive }))
      if (said.kind === 'unreadable') return true;
    return false;
  }

  async function verify(): Promise<void> {
    const packed = (await othersFiles()).filter(isPacked);
    const known = packed.find((name) => (contents.files.get(name)?.unreadable ?? 0) > 0);
    const name = known ?? packed[Math.floor(chance() * packed.length)];
    if (name === undefined || !(await isDamaged(name))) return;
    for (const run of [...contents.runs])
      if (run.file === name && !(await opened.run(run.head))) forgetRun(contents, run);
    await compact(folder, { files: [name], choose: (held) => held, newName, alive });
    await readAll();
  }

  return {
    look: () => reading(look),
    async add(texts) {
      const lines = texts.map(newLine);
      if (lines.some(({ says }) => says.kind !== 'entry')) throw new Error('an entry does not fit its link');
      await write(lines);
    },
    addRuns: (runs) => reading(() => addRuns(runs)),
    keepAct: (json) => write([newLine(actLine(json))]),
    settleAct: (act) => write([newLine(settledLine(act))]),
    heads: () => reading(() => withFiles(heads)),
    parcel: (wanted) =>
      reading(() =>
        withFiles(async () => {
          const runs: PackedRun[] = [];
          const texts: string[] = [];
          for (const head of wanted) {
            const run = await opened.run(head);
            const text = run || head.entries > 1 ? undefined : await opened.text(head);
            if (run) runs.push(run);
            else if (text !== undefined) texts.push(text);
            alive();
          }
          return { runs, texts };
        }),
      ),
    tidy: () => reading(tidy),
    verify: () => reading(verify),
    release: segment.release,
  };
}

const newLine = (text: string): NewLine => ({ text, says: readJournalLine(text) });

const namesOf = (there: readonly FileInfo[]): string =>
  there
    .map(({ name }) => name)
    .toSorted()
    .join('/');
