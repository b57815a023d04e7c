import { readEntry } from '../../domain/log/read-entry.ts';
import { readEvent } from '../../domain/log/read-event.ts';
import { judgeOfRuns } from '../../domain/packed/judge-run.ts';
import { knownForms } from '../../domain/packed/known-forms.ts';
import type { PackedRun } from '../../domain/packed/packed-run.ts';
import { type TextEntry, textEntryOf } from '../../domain/packed/text-entry.ts';
import { entriesOf } from '../../domain/packed/unpack-run.ts';
import type { Limits } from './backup-format.ts';
import { beyondReason, greatestNumbers } from './beyond-reason.ts';
import { quickLine } from './quick-line.ts';
import { entryInRescue, runInRescue } from './rescued.ts';

export type ReadLine =
  /** A record of the rescue page that is no entry. */
  | { readonly kind: 'other' }
  | { readonly kind: 'entry'; readonly entry: TextEntry }
  | { readonly kind: 'run'; readonly entries: readonly TextEntry[] }
  | { readonly kind: 'unreadable'; readonly problems: readonly string[] };

type Nesting = Pick<Limits, 'nesting'>;

const strict = new TextDecoder('utf-8', { fatal: true });

/** Parses a line of a file of unknown origin; undefined when it is no JSON, or nests deeper than `nesting`. */
export function parseLine(bytes: Uint8Array, limits: Nesting): unknown {
  return parsed(decoded(bytes), limits);
}

/**
 * Judges lines of a file as entries of a log. Never throws. What it finds sound it takes note of: lines like it are read
 * more quickly, to the same end.
 */
export function lineReader(limits: Nesting): (bytes: Uint8Array) => ReadLine {
  const judge = (event: unknown) => problemOf(event, limits);
  const forms = knownForms({ judge, greatest: greatestNumbers });
  return (bytes) => {
    const text = decoded(bytes);
    const entry = quickLine({ text, bytes, forms });
    if (entry) return { kind: 'entry', entry };
    const line = readLine(text, limits);
    if (line.kind === 'entry') forms.learn(line.entry.cut);
    return line;
  };
}

function readLine(text: string, limits: Nesting): ReadLine {
  const raw = parsed(text, limits);
  if (raw === undefined) return unreadable('no JSON, or nested too deep');
  const run = runInRescue(raw);
  if (run) return run === 'damaged' ? unreadable('a run is not as it was written') : readRun(run, limits);
  const inner = entryInRescue(raw);
  if (inner === undefined) return { kind: 'other' };
  const read = readEntry(inner);
  if (read.kind === 'damaged') return unreadable(...read.problems);
  const beyond = beyondReason(inner);
  return beyond === null ? { kind: 'entry', entry: textEntryOf(read.entry) } : unreadable(beyond);
}

/** What is wrong with an event; null when nothing is. */
export function problemOf(
  event: unknown,
  { nesting, text = JSON.stringify(event) }: Nesting & { readonly text?: string },
): string | null {
  if (deepest(text) > nesting) return 'nested too deep';
  const read = readEvent(event);
  return read.kind === 'damaged' ? read.problems.join() : beyondReason(event);
}

/** Text that is no UTF-8 comes out as none, which is no JSON either. */
function decoded(bytes: Uint8Array): string {
  try {
    return strict.decode(bytes);
  } catch {
    return '';
  }
}

function parsed(text: string, { nesting }: Nesting): unknown {
  try {
    return deepest(text) > nesting ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** More characters than this (on average) no events of a run have; a few of them may. */
const longestEvents = 8192;

/** The entries of a run, if all of them could be in a log and its chain holds. */
function readRun(run: PackedRun, limits: Nesting): ReadLine {
  const judge = judgeOfRuns((event, text) => problemOf(event, { ...limits, text }), {
    longest: longestEvents,
  });
  const problem = judge(run);
  if (problem !== null) return unreadable(problem);
  try {
    return { kind: 'run', entries: entriesOf(run).map(textEntryOf) };
  } catch (error) {
    return unreadable(String(error));
  }
}

/** A few problems say enough, and none at length: a hostile file has a million lines of them. */
function unreadable(...problems: readonly string[]): ReadLine {
  return { kind: 'unreadable', problems: problems.slice(0, 3).map((problem) => problem.slice(0, 200)) };
}

const [quote, backslash] = [0x22, 0x5c];
const [openBracket, closeBracket, openBrace, closeBrace] = [0x5b, 0x5d, 0x7b, 0x7d];

/** How deep the brackets of a JSON text nest, those in strings aside. */
function deepest(text: string): number {
  let depth = 0;
  let most = 0;
  let inString = false;
  for (let at = 0; at < text.length; at += 1) {
    const sign = text.charCodeAt(at);
    if (inString) {
      if (sign === backslash) at += 1;
      else if (sign === quote) inString = false;
    } else if (sign === quote) inString = true;
    else if (sign === openBrace || sign === openBracket) depth += 1;
    else if (sign === closeBrace || sign === closeBracket) depth -= 1;
    most = Math.max(most, depth);
  }
  return most;
}
