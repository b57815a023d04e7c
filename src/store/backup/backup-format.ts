/**
 * The backup file, format 1: gzip (RFC 1952) of JSON Lines in UTF-8. The first line is the manifest, every other one an
 * entry of the log, `JSON.stringify(entry)`, station by station and in the order of their numbers; each line ends
 * with a line feed. The manifest and every 64 kB or so of lines are a gzip member of their own, so that damage to
 * one costs no other. An entry checks itself (its link) and names the one before it (`prev`). DEVELOPERS.md tells more.
 */
import * as v from 'valibot';
import { linkText } from '../../domain/log/chain.ts';
import { stationId } from '../../domain/log/ids.ts';
import { deepestVoid } from '../../domain/log/read-event.ts';

/** The format that is written. Every earlier one is read for ever: see shared/old-backups. */
export const backupFormat = 1;

/** A moment past this (1 January 2200, UTC, ms) was set by no clock of a tablet. */
export const latestWall = Date.UTC(2200, 0, 1);

const count = v.pipe(v.number(), v.safeInteger(), v.minValue(0));
const wallSchema = v.pipe(count, v.maxValue(latestWall));

const stationSchema = v.object({
  station: stationId,
  /** Its highest number in the file, and the link of that entry. */
  last: count,
  link: linkText,
  entries: count,
});

export const manifestSchema = v.object({
  tallywright: v.literal('log'),
  format: v.literal(backupFormat),
  /** Version of the app that wrote the file. */
  version: v.pipe(v.string(), v.maxLength(64)),
  made: v.object({ wall: wallSchema, zone: v.pipe(v.string(), v.maxLength(64)) }),
  shop: v.nullable(v.pipe(v.string(), v.maxLength(500))),
  stations: v.array(stationSchema),
  entries: count,
  /** SHA-256 (FIPS 180-4) of all bytes after the first line, before compression, in hex. */
  digest: v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/)),
  /** What the packed part is like (`packed-part.ts`), where there is one; its reader judges that. */
  packed: v.exactOptional(v.unknown()),
  /** What photos are in the file, and in those that go with it (`photos-said.ts`), where there are any; older readers pass over them. */
  photos: v.exactOptional(v.unknown()),
});
export type Manifest = v.InferOutput<typeof manifestSchema>;

/** How the first line of a backup begins, and that of a sealed one. */
export const backupMark = '{"tallywright":"log"';
export const sealedMark = '{"tallywright":"sealed"';

/** What a file may ask of the tablet that reads it; the log of a shop with more than two million taps still may. */
export interface Limits {
  /** Bytes of the file, and of what it unpacks to. */
  readonly file: number;
  readonly unpacked: number;
  /** Bytes unpacked for each byte of the file, beyond the first megabyte. */
  readonly ratio: number;
  /** Gzip members; each costs a buffer. */
  readonly members: number;
  /** Bytes of the manifest, and of any other line. */
  readonly manifest: number;
  readonly line: number;
  /** Bytes of a line of the rescue page: it may hold a whole run. */
  readonly run: number;
  readonly lines: number;
  /** How deep brackets may nest in a line. */
  readonly nesting: number;
}

export const usualLimits: Limits = {
  file: 150_000_000,
  unpacked: 1_500_000_000,
  ratio: 100,
  members: 30_000,
  manifest: 1_000_000,
  line: 65_536,
  run: 4_000_000,
  lines: 2_500_000,
  // What the log can hold a backup can carry: the deepest void, and what its innermost event nests.
  nesting: deepestVoid + 16,
};
