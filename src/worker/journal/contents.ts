import type { Link } from '../../domain/log/chain.ts';
import { emptyHolding, type Holding, withLink } from '../../domain/log/holding.ts';
import { type JournalLine, readJournalLine } from '../../domain/log/journal-line.ts';
import type { Folder } from './folder.ts';
import { type LineAt, wholeLines } from './whole-lines.ts';

/** Where the line of an entry lies, in bytes. */
export interface Place {
  readonly file: string;
  readonly from: number;
  readonly to: number;
}

/** How far a file was read, and how many of its lines said nothing. */
interface FileRead {
  upTo: number;
  unreadable: number;
}

/** What is known of the journal: not its text, but where that lies. */
export interface Contents {
  readonly places: Map<Link, Place>;
  holding: Holding;
  /** Acts as JSON, by their names. */
  readonly acts: Map<string, string>;
  readonly settled: Set<string>;
  readonly files: Map<string, FileRead>;
}

export function emptyContents(): Contents {
  return {
    places: new Map(),
    holding: emptyHolding,
    acts: new Map(),
    settled: new Set(),
    files: new Map(),
  };
}

/** Takes in what a sound line says; whether that was new. */
export function takeLine(contents: Contents, line: JournalLine, place: Place): boolean {
  if (saysNothingNew(contents, line)) return false;
  if (line.kind === 'entry') {
    contents.places.set(line.link, place);
    contents.holding = withLink(contents.holding, line.link);
  } else if (line.kind === 'act') contents.acts.set(line.act, line.json);
  else if (line.kind === 'settled') contents.settled.add(line.act);
  return line.kind !== 'unreadable';
}

export function saysNothingNew({ places, acts, settled }: Contents, line: JournalLine): boolean {
  if (line.kind === 'entry') return places.has(line.link);
  if (line.kind === 'act') return acts.get(line.act) === line.json;
  return line.kind === 'settled' && settled.has(line.act);
}

export interface ReadOn {
  readonly name: string;
  /** The size up to which to read, in bytes. */
  readonly to: number;
  /** Called now and then during long work. */
  readonly alive: () => void;
  /** Called for each line that said something new. */
  readonly taken?: (line: LineAt) => void;
}

/** Reads what a file has beyond what was read of it before. */
export async function readOn(contents: Contents, folder: Folder, { name, to, alive, taken }: ReadOn) {
  const { upTo: from } = fileRead(contents, name);
  for await (const lines of wholeLines(folder, { name, from, to })) {
    for (const line of lines) {
      const said = line.text === '' ? undefined : readJournalLine(line.text);
      if (said?.kind === 'unreadable') fileRead(contents, name).unreadable += 1;
      else if (said && takeLine(contents, said, { file: name, from: line.from, to: line.to })) taken?.(line);
      readUpTo(contents, name, line.to + 1);
    }
    alive();
  }
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
export function unsettledOf({ acts, settled }: Contents): readonly string[] {
  return [...acts].flatMap(([act, json]) => (settled.has(act) ? [] : [json]));
}
