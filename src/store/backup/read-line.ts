import { readEntry } from '../../domain/log/read-entry.ts';
import { readEvent } from '../../domain/log/read-event.ts';
import { judgeOfRuns } from '../../domain/packed/judge-run.ts';
import type { PackedRun } from '../../domain/packed/packed-run.ts';
import { type TextEntry, textEntryOf } from '../../domain/packed/text-entry.ts';
import { entriesOf } from '../../domain/packed/unpack-run.ts';
import { type Limits, latestWall } from './backup-format.ts';
import { entryInRescue, runInRescue } from './rescued.ts';

export type ReadLine =
  /** A record of the rescue page that is no entry. */
  | { readonly kind: 'other' }
  | { readonly kind: 'entry'; readonly entry: TextEntry }
  | { readonly kind: 'run'; readonly entries: readonly TextEntry[] }
  | { readonly kind: 'unreadable'; readonly problems: readonly string[] };

const strict = new TextDecoder('utf-8', { fatal: true });

/** Parses a line of a file of unknown origin; undefined when it is no JSON, or nests deeper than `nesting`. */
export function parseLine(bytes: Uint8Array, { nesting }: Pick<Limits, 'nesting'>): unknown {
  try {
    const text = strict.decode(bytes);
    return deepest(text) > nesting ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** Judges a line as an entry of the log. Never throws. */
export function readLine(bytes: Uint8Array, limits: Pick<Limits, 'nesting'>): ReadLine {
  const raw = parseLine(bytes, limits);
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

/** More characters than this (on average) no events of a run have; a few of them may. */
const longestEvents = 8192;

/** The entries of a run, if all of them could be in a log and its chain holds. */
function readRun(run: PackedRun, { nesting }: Pick<Limits, 'nesting'>): ReadLine {
  const judge = judgeOfRuns(
    (event, text) => {
      if (deepest(text) > nesting) return 'nested too deep';
      const read = readEvent(event);
      return read.kind === 'damaged' ? read.problems.join() : beyondReason(event);
    },
    { longest: longestEvents },
  );
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

/** How deep the brackets of a JSON text nest, those in strings aside. */
function deepest(text: string): number {
  let depth = 0;
  let most = 0;
  let inString = false;
  for (let at = 0; at < text.length; at += 1) {
    const sign = text[at];
    if (inString) {
      if (sign === '\\') at += 1;
      else if (sign === '"') inString = false;
    } else if (sign === '"') inString = true;
    else if (sign === '{' || sign === '[') depth += 1;
    else if (sign === '}' || sign === ']') depth -= 1;
    most = Math.max(most, depth);
  }
  return most;
}

/** Names that reach the prototype of an object where code is careless. */
const forbidden: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

/** A year, ms. */
const longestElapsed = 366 * 24 * 60 * 60 * 1000;
/** Numbers beyond what a shop can have done, wherever they stand in an event. */
const most: ReadonlyMap<string, number> = new Map([
  ['wall', latestWall],
  ['since', latestWall],
  ['ready', latestWall],
  // One tap a millisecond for eleven days; past it, sums of numbers would come near to losing their units.
  ['seq', 1_000_000_000],
  ['tick', 1_000_000_000],
  ['pieces', 10_000_000],
  ['again', 10_000_000],
  ['elapsed', longestElapsed],
]);

/** What no station of ours ever wrote, though its link fits: a forger can sum up too. Null when there is nothing. */
function beyondReason(value: unknown): string | null {
  if (typeof value !== 'object' || value === null) return null;
  for (const [key, part] of Object.entries(value)) {
    if (forbidden.has(key)) return `a field is named ${key}`;
    if (typeof part === 'number' && Math.abs(part) > (most.get(key) ?? Number.POSITIVE_INFINITY))
      return `${key} is beyond reason: ${part}`;
    if ((key === 'day' || key === 'due') && typeof part === 'string' && !isDay(part))
      return `${key} is no day: ${part}`;
    const inner = beyondReason(part);
    if (inner !== null) return inner;
  }
  return null;
}

/** A day of the calendar from 1970 to 2199. */
function isDay(text: string): boolean {
  const ms = Date.parse(`${text}T00:00:00Z`);
  return ms >= 0 && ms < latestWall && new Date(ms).toISOString().startsWith(text);
}
