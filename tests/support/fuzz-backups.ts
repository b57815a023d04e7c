import { createHash } from 'node:crypto';
import { gunzipSync, gzipSync } from 'node:zlib';
import { type Random, seededRandom } from '../../src/domain/chance/seeded-random.ts';
import { chained, type Entry } from '../../src/domain/log/chain.ts';
import type { ShopEvent } from '../../src/domain/log/event.ts';
import { readEvent } from '../../src/domain/log/read-event.ts';
import { shopOf } from '../../src/domain/shop/shop.ts';
import { type Limits, usualLimits } from '../../src/store/backup/backup-format.ts';
import { type BackupReading, readBackup } from '../../src/store/backup/read-backup.ts';
import { unpack } from '../../src/store/backup/unpack.ts';
import { writeBackup } from '../../src/store/backup/write-backup.ts';
import { byteSpoils, gzipBombs, oneOf, whole } from './byte-spoils.ts';
import { foreignLog } from './drafts.ts';
import { hostileLines, plausibleForgeries } from './hostile-lines.ts';
import { previewOf } from './preview-of.ts';

/** What came of reading spoilt backups; every figure but the first five must be 0. */
export interface FuzzFigures {
  readonly runs: number;
  readonly read: number;
  readonly refused: number;
  /** Sound entries that were offered in all, and files that were read whole in spite of all. */
  readonly offered: number;
  readonly unharmed: number;
  readonly threw: number;
  /** Went through the unpacker, or out of it, or into lines, beyond the bound. */
  readonly overworked: number;
  /** Entries offered that neither the log had nor a forger could have summed up. */
  readonly invented: number;
  /** Damage to the lines that the reading did not name. */
  readonly unnamed: number;
  /** Merging what was offered changed the figures of a shop that held the log, or left other counts than foretold. */
  readonly changed: number;
}

/** Small ones, so that thousands of bombs go off quickly. */
const limits: Limits = { ...usualLimits, file: 400_000, unpacked: 2_000_000, lines: 4000, members: 100 };
/** The unpacker's own promise: see `passes` in unpack.ts, and the finer goes at the last damage. */
const mostPasses = 12;
/** One piece of a packed file can unpack to so much before the limit is looked at. */
const onePiece = 4096 * 1032;

const about = { version: '0.1.0', wall: Date.UTC(2026, 2, 2, 17), zone: 'Europe/London', shop: 'Fuzz' };
const log = chained([...foreignLog('bench'), ...foreignLog('office')]);
const packed = writeBackup({ entries: log, about });
const plain = Uint8Array.from(gunzipSync(packed));
const held: ReadonlyMap<string, Entry> = new Map(log.map((entry) => [entry.link, entry]));
const forgeries: ReadonlySet<string> = new Set(plausibleForgeries.map(({ link }) => link));
const digestOfLog = digestOf(log);
const bombs = gzipBombs();

/** Reads `runs` backups that were spoilt in ways drawn from `seed`, and merges what they offer. */
export function fuzzBackups(runs: number, seed: number): FuzzFigures {
  const random = seededRandom(seed);
  const figures = { read: 0, refused: 0, offered: 0, unharmed: 0 };
  const faults = { threw: 0, overworked: 0, invented: 0, unnamed: 0, changed: 0 };
  for (let run = 0; run < runs; run += 1) {
    const bytes = spoilt(random);
    const reading = tryToRead(bytes);
    if (reading === undefined) {
      faults.threw += 1;
      continue;
    }
    figures[reading.kind] += 1;
    if (isOverworked(bytes, reading)) faults.overworked += 1;
    const offered = reading.kind === 'read' ? reading.entries : [];
    figures.offered += offered.length;
    faults.invented += offered.filter(({ link }) => !held.has(link) && !forgeries.has(link)).length;
    if (reading.kind === 'read' && isUnharmed(reading)) figures.unharmed += 1;
    if (reading.kind === 'read' && isUnnamed(reading)) faults.unnamed += 1;
    if (isChanged(reading, offered)) faults.changed += 1;
  }
  return { runs, ...figures, ...faults };
}

function tryToRead(bytes: Uint8Array): BackupReading | undefined {
  try {
    const before = createHash('sha256').update(bytes).digest('hex');
    const reading = readBackup(bytes, limits);
    const untouched = createHash('sha256').update(bytes).digest('hex') === before;
    return untouched ? reading : undefined;
  } catch {
    return undefined;
  }
}

function isOverworked(bytes: Uint8Array, reading: BackupReading): boolean {
  let given = 0;
  const give = (chunk: Uint8Array) => {
    given += chunk.length;
    return true;
  };
  const { work } = unpack(bytes, { limits, give, gap: () => undefined });
  const lines = reading.kind === 'read' ? reading.entries.length + reading.unreadable.length : 0;
  return (
    work > mostPasses * (bytes.length + 10) || given > limits.unpacked + onePiece || lines > limits.lines
  );
}

type Read = Extract<BackupReading, { kind: 'read' }>;

const saysSound = ({ manifest, cut, digestFits, unreadable }: Read) =>
  manifest !== null && !cut && digestFits && unreadable.length === 0;

/** Everything is there, and said to be. */
function isUnharmed(reading: Read): boolean {
  return saysSound(reading) && reading.entries.length === log.length;
}

/** A reading that calls itself sound has exactly the entries of the log. */
function isUnnamed(reading: Read): boolean {
  const links = new Set(reading.entries.map(({ link }) => link));
  return saysSound(reading) && !(links.size === held.size && log.every(({ link }) => links.has(link)));
}

/** Merges what was offered into a shop that holds the log already: only forgeries of the rules may add to it. */
function isChanged(reading: BackupReading, offered: readonly Entry[]): boolean {
  const own = offered.filter(({ link }) => held.has(link));
  const merged = new Map<string, Entry>([...held, ...own.map((entry) => [entry.link, entry] as const)]);
  if (digestOf([...merged.values()]) !== digestOfLog) return true;
  if (reading.kind === 'refused') return false;
  const preview = previewOf(reading, new Set(log.map(({ link }) => link)));
  const foreign = new Set(offered.map(({ link }) => link).filter((link) => !held.has(link)));
  return preview.adds !== foreign.size || preview.here !== new Set(own.map(({ link }) => link)).size;
}

/** SHA-256 of the shop that a log amounts to, every sum of it. */
function digestOf(entries: readonly Entry[]): string {
  const events = entries.flatMap(({ event }): ShopEvent[] => {
    const read = readEvent(event);
    return read.kind === 'known' ? [read.event] : [];
  });
  const text = JSON.stringify(shopOf(events), (_key, value) =>
    value instanceof Map ? [...value].sort() : value instanceof Set ? [...value].sort() : value,
  );
  return createHash('sha256').update(text).digest('hex');
}

const spoils = byteSpoils({ others: [packed, plain], bombs });

/** The lines of the backup with other lines among them, out of order, doubled, or under another manifest. */
function spoiltLines(random: Random): Uint8Array {
  const [manifest = '', ...lines] = Buffer.from(plain).toString('utf8').trimEnd().split('\n');
  const head = random() < 0.3 ? spoiltManifest(manifest, random) : manifest;
  for (let times = 1 + whole(random, 3); times > 0; times -= 1) {
    const at = whole(random, lines.length + 1);
    const kind = whole(random, 5);
    if (kind === 0) lines.splice(at, 0, oneOf(random, hostileLines)[1]);
    else if (kind === 1) lines.splice(at, 0, JSON.stringify(oneOf(random, plausibleForgeries)));
    else if (kind === 2) lines.splice(at, 1);
    else if (kind === 3) lines.splice(at, 0, oneOf(random, lines));
    else lines.push(...lines.splice(0, at));
  }
  const end = oneOf(random, ['\n', '\r\n', '\n\n', '\n\u0000']);
  return Buffer.from(`${random() < 0.1 ? '\ufeff' : ''}${[head, ...lines].join(end)}${end}`);
}

function spoiltManifest(manifest: string, random: Random): string {
  const value = oneOf(random, [
    '-1',
    '1e308',
    'null',
    '"x"',
    '[]',
    '{"__proto__":1}',
    '2',
    `"${'9'.repeat(70_000)}"`,
  ]);
  const field = oneOf(random, ['format', 'entries', 'shop', 'digest', 'stations', 'made', 'tallywright']);
  return JSON.stringify({ ...JSON.parse(manifest), [field]: 0 }).replace(
    `"${field}":0`,
    `"${field}":${value}`,
  );
}

function spoilt(random: Random): Uint8Array {
  const lines = random() < 0.4;
  let bytes: Uint8Array = lines ? spoiltLines(random) : oneOf(random, [packed, plain]);
  if (lines && random() < 0.5) bytes = gzipSync(bytes);
  for (let times = lines ? whole(random, 2) : 1 + whole(random, 3); times > 0 && bytes.length > 0; times -= 1)
    bytes = oneOf(random, spoils)(bytes, random);
  return bytes;
}
