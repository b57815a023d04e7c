import type { Link } from '../../domain/log/chain.ts';
import { emptyHolding, type Holding, withLink } from '../../domain/log/holding.ts';
import { type JournalLine, readJournalLine } from '../../domain/log/journal-line.ts';
import type { RunHead } from '../../domain/packed/packed-run.ts';
import { readIndexLine, readRunLine } from '../../domain/packed/run-line.ts';
import { headOfRun } from '../../domain/packed/stretch.ts';
import type { Folder } from './folder.ts';
import { isPacked, readIndex } from './packed-file.ts';
import type { Place, Placed } from './placed.ts';
import { type LineAt, wholeLines } from './whole-lines.ts';

/** How far a file was read, and how many of its lines said nothing. */
interface FileRead {
  upTo: number;
  unreadable: number;
}

/** What is known of the journal: not its text, but where that lies. */
export interface Contents {
  /** Entries on lines of their own, none of them twice. */
  readonly young: Map<Link, Placed>;
  /** What `young` holds. */
  holding: Holding;
  /** Runs; they may overlap, with each other and with young entries, where a fold was cut off. */
  readonly runs: Set<Placed>;
  /** Acts as JSON, by their names. */
  readonly acts: Map<string, string>;
  readonly settled: Set<string>;
  readonly files: Map<string, FileRead>;
}

export function emptyContents(): Contents {
  return {
    young: new Map(),
    holding: emptyHolding,
    runs: new Set(),
    acts: new Map(),
    settled: new Set(),
    files: new Map(),
  };
}

/** Takes in what a sound line says. */
export function takeLine(contents: Contents, line: JournalLine, place: Place): void {
  if (saysNothingNew(contents, line)) return;
  if (line.kind === 'entry') {
    contents.young.set(line.link, { ...place, head: headOfLine(line) });
    contents.holding = withLink(contents.holding, line.link);
  } else if (line.kind === 'act') contents.acts.set(line.act, line.json);
  else if (line.kind === 'settled') contents.settled.add(line.act);
}

/** Whether a line that lies outside of the runs adds nothing. */
export function saysNothingNew({ young, acts, settled }: Contents, line: JournalLine): boolean {
  if (line.kind === 'entry') return young.has(line.link);
  if (line.kind === 'act') return acts.get(line.act) === line.json;
  return line.kind === 'settled' && settled.has(line.act);
}

type EntryLine = Extract<JournalLine, { kind: 'entry' }>;

/** Its link fits, so that it is what an app has written: an event. */
export function headOfLine({ prev, link, json }: EntryLine): RunHead {
  const { station, seq } = JSON.parse(json) as { station: RunHead['station']; seq: number };
  return { station, first: seq, entries: 1, prev, link, sum: link };
}

export interface ReadOn {
  readonly name: string;
  /** The size up to which to read, in bytes. */
  readonly to: number;
  /** Called now and then during long work. */
  readonly alive: () => void;
}

/** Reads what a file has beyond what was read of it before. The runs of a packed file are taken from its index. */
export async function readOn(contents: Contents, folder: Folder, { name, to, alive }: ReadOn): Promise<void> {
  if (to > 0 && isPacked(name) && fileRead(contents, name).upTo === 0) {
    const index = await readIndex(folder, { name, to });
    for (const run of index?.runs ?? []) contents.runs.add(run);
    readUpTo(contents, name, index?.end ?? 0);
  }
  const { upTo: from } = fileRead(contents, name);
  for await (const lines of wholeLines(folder, { name, from, to })) {
    for (const line of lines) {
      readLine(contents, name, line);
      readUpTo(contents, name, line.to + 1);
    }
    alive();
  }
}

function readLine(contents: Contents, name: string, { text, from, to }: LineAt): void {
  if (text === '') return;
  const run = text.startsWith('{"run"') ? readRunLine(text) : undefined;
  if (run) {
    contents.runs.add({ file: name, from, to, head: headOfRun(run) });
    return;
  }
  // Of a file that is too short for its index, what there is is read line by line.
  if (text.startsWith('{"index"') && readIndexLine(text)) return;
  const said = readJournalLine(text);
  if (said.kind === 'unreadable') fileRead(contents, name).unreadable += 1;
  else takeLine(contents, said, { file: name, from, to });
}

/** A run is not what its head says: it holds nothing, and its line says nothing. */
export function forgetRun(contents: Contents, run: Placed): void {
  if (contents.runs.delete(run)) fileRead(contents, run.file).unreadable += 1;
}

export function readUpTo(contents: Contents, name: string, upTo: number): void {
  const file = fileRead(contents, name);
  file.upTo = Math.max(file.upTo, upTo);
}

function fileRead({ files }: Contents, name: string): FileRead {
  const file = files.get(name) ?? { upTo: 0, unreadable: 0 };
  files.set(name, file);
  return file;
}

/** The acts that are settled nowhere, as JSON. */
export function unsettledOf({ acts, settled }: Pick<Contents, 'acts' | 'settled'>): readonly string[] {
  return [...acts].flatMap(([act, json]) => (settled.has(act) ? [] : [json]));
}
