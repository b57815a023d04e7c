import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import * as v from 'valibot';
import type { Entry } from '../../domain/log/chain.ts';
import { entryOfText, type TextEntry } from '../../domain/packed/text-entry.ts';
import {
  backupFormat,
  backupMark,
  type Limits,
  type Manifest,
  manifestSchema,
  sealedMark,
  usualLimits,
} from './backup-format.ts';
import { nextMember } from './gzip-members.ts';
import { lineReader, parseLine } from './read-line.ts';
import { rescueMark } from './rescued.ts';
import { type Line, splitLines } from './split-lines.ts';
import { type Unpacked, unpack } from './unpack.ts';

export interface UnreadableLine {
  /** From 1; where a piece of the file is missing, the lines after it count on. */
  readonly line: number;
  readonly problems: readonly string[];
}

export type RefusedBackup =
  | 'not-a-backup'
  | 'too-big'
  | 'unpacks-too-big'
  | 'sealed'
  | 'newer-format'
  | 'empty';

/** What a backup says besides its entries. */
interface BackupFacts {
  /** Null when the first line is damaged; the entries do not need it. */
  readonly manifest: Manifest | null;
  readonly unreadable: readonly UnreadableLine[];
  /** Lines are missing: the file ends early, or a piece of it could not be unpacked. */
  readonly cut: boolean;
  /** All sums in the file fit: the digest of its lines and those of its gzip members. */
  readonly digestFits: boolean;
}

type Refusal = { readonly kind: 'refused'; readonly why: RefusedBackup };

export type BackupReading =
  | Refusal
  | ({ readonly kind: 'read'; readonly entries: readonly Entry[] } & BackupFacts);

/** What there is to say of a backup whose entries were given away one by one. */
export type BackupAccount = Refusal | ({ readonly kind: 'read'; readonly entries: number } & BackupFacts);

/** A file with nothing of ours in so many lines is none of ours. */
const linesOfPatience = 10_000;
/** A plain file is looked at in pieces of so many bytes. */
const plainPiece = 65_536;

const newerManifest = v.object({
  tallywright: v.literal('log'),
  format: v.pipe(v.number(), v.minValue(backupFormat + 1)),
});

/**
 * Reads a backup, whole or damaged, packed or plain, of any origin: what is sound is offered, what is not is counted.
 * Never throws; work and memory are bounded by `limits`.
 */
export function readBackup(bytes: Uint8Array, limits: Limits = usualLimits): BackupReading {
  const entries: Entry[] = [];
  const account = goThroughBackup(bytes, { limits, take: (entry) => entries.push(entryOfText(entry)) });
  return account.kind === 'refused' ? account : { ...account, entries };
}

/** Reads a backup like `readBackup` and gives each entry away at once: a long log is never held as entries. */
export function goThroughBackup(
  bytes: Uint8Array,
  { take, limits = usualLimits }: { readonly take: (entry: TextEntry) => void; readonly limits?: Limits },
): BackupAccount {
  if (bytes.length === 0) return refused('empty');
  if (bytes.length > limits.file) return refused('too-big');
  if (beginsWith(bytes, sealedMark)) return refused('sealed');
  const sheet = newSheet(limits, take);
  const packed = (bytes[0] === 0x1f && bytes[1] === 0x8b) || nextMember(bytes, 0) !== -1;
  const container = packed
    ? unpack(bytes, { limits, give: sheet.push, gap: sheet.gap })
    : plain(bytes, sheet);
  sheet.end();
  return sheet.reading(container);
}

function refused(why: RefusedBackup): Refusal {
  return { kind: 'refused', why };
}

const begin = new TextDecoder();

/** Whether a text begins with `mark`; a byte order mark before it is passed over. */
function beginsWith(bytes: Uint8Array, mark: string): boolean {
  return begin.decode(bytes.subarray(0, mark.length + 3)).startsWith(mark);
}

type Container = Omit<Unpacked, 'work'>;

function plain(bytes: Uint8Array, { push }: { push: (chunk: Uint8Array) => boolean }): Container {
  let goOn = true;
  for (let at = 0; goOn && at < bytes.length; at += plainPiece)
    goOn = push(bytes.subarray(at, at + plainPiece));
  return { kind: goOn ? 'unpacked' : 'stopped', whole: true, sumsFit: true };
}

/** What comes out of a file, line by line. */
function newSheet(limits: Limits, give: (entry: TextEntry) => void) {
  let entries = 0;
  const unreadable: UnreadableLine[] = [];
  const sum = sha256.create();
  const readLine = lineReader(limits);
  let manifest: Manifest | null = null;
  let newer = false;
  let marked = false;
  let rescued = false;
  let lines = 0;
  let tooMany = false;
  let brokenEnd = false;

  const splitter = splitLines({
    longest: (number) => (number === 1 ? limits.manifest : rescued ? limits.run : limits.line),
    take: takeLine,
  });

  function takeLine(line: Line, number: number): boolean {
    lines = number;
    if (number > limits.lines) {
      tooMany = true;
      return false;
    }
    if (number === 1 && line.kind === 'line') {
      rescued = beginsWith(line.bytes, rescueMark);
      marked = rescued || beginsWith(line.bytes, backupMark);
    }
    if (line.kind === 'too-long') unreadable.push({ line: number, problems: ['the line is too long'] });
    else if (line.bytes.length > 0) read(line, number);
    return marked || entries > 0 || number < linesOfPatience;
  }

  function read({ bytes, broken }: Extract<Line, { kind: 'line' }>, number: number): void {
    if (number === 1 && readManifest(bytes)) return;
    const result = readLine(bytes);
    if (result.kind === 'entry') take(result.entry);
    else if (result.kind === 'run') for (const entry of result.entries) take(entry);
    else if (result.kind === 'other') return;
    else if (broken) brokenEnd = true;
    else unreadable.push({ line: number, problems: result.problems });
  }

  function take(entry: TextEntry): void {
    entries += 1;
    give(entry);
  }

  /** Whether the first line is a manifest, of this format or a newer one. */
  function readManifest(bytes: Uint8Array): boolean {
    const raw = parseLine(bytes, limits);
    const result = v.safeParse(manifestSchema, raw);
    if (result.success) manifest = result.output;
    else newer = v.is(newerManifest, raw);
    return result.success || newer;
  }

  return {
    push(chunk: Uint8Array): boolean {
      // What follows the first line is summed up.
      const from = lines > 0 ? 0 : chunk.indexOf(0x0a) + 1;
      if (lines > 0 || from > 0) sum.update(chunk.subarray(from));
      return splitter.push(chunk);
    },
    gap(): void {
      splitter.breakOff();
    },
    end(): void {
      splitter.breakOff();
    },
    reading({ kind, whole, sumsFit }: Container): BackupAccount {
      if (tooMany || kind === 'too-big') return refused('unpacks-too-big');
      if (lines === 0) return refused(whole ? 'empty' : 'not-a-backup');
      // A damaged digit makes a newer format too: then the entries, which check themselves, are worth more.
      if (newer && ((whole && sumsFit) || entries === 0)) return refused('newer-format');
      if (!marked && entries === 0) return refused('not-a-backup');
      const cut = !whole || brokenEnd || (manifest !== null && lines - 1 < manifest.entries);
      // The rescue page sums nothing up: its entries check themselves.
      const digestFits = whole && sumsFit && (rescued || manifest?.digest === bytesToHex(sum.digest()));
      return { kind: 'read', manifest, entries, unreadable, cut, digestFits };
    },
  };
}
