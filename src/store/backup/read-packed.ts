import { concatBytes, utf8ToBytes } from '@noble/hashes/utils.js';
import * as v from 'valibot';
import type { Entry } from '../../domain/log/chain.ts';
import type { StationId } from '../../domain/log/ids.ts';
import { shortestRun } from '../../domain/packed/pack-long.ts';
import { mostInRun } from '../../domain/packed/pack-run.ts';
import type { Parcel } from '../../domain/packed/parcel.ts';
import { soundRuns } from '../../domain/packed/sound-runs.ts';
import { entryOfText } from '../../domain/packed/text-entry.ts';
import type { ReadParcel } from '../log-store.ts';
import { type Limits, type Manifest, manifestSchema, usualLimits } from './backup-format.ts';
import { greatestNumbers } from './beyond-reason.ts';
import { openPart } from './packed-part.ts';
import { isPlain } from './plain-log.ts';
import { lineReader, parseLine, problemOf } from './read-line.ts';
import { unpack } from './unpack.ts';

/** A backup as its packed part has it. */
export interface PackedReading {
  readonly manifest: Manifest;
  readonly parcel: ReadParcel;
  /** The latest wall time in the stamps of each station, ms UTC. */
  readonly newest: ReadonlyMap<StationId, number>;
}

/**
 * Reads a backup by its packed part, and not a line of it but the first. Undefined where there is any doubt: then the lines
 * tell, and to the same end. Every event is found sound, as a line would be, and every chain goes from end to end; that
 * each link within a run is the one that its station wrote is taken from the digest. Never throws.
 */
export async function readPacked(
  bytes: Uint8Array,
  limits: Limits = usualLimits,
): Promise<PackedReading | undefined> {
  if (bytes.length > limits.file) return undefined;
  const manifest = manifestOf(bytes, limits);
  if (!manifest?.packed || manifest.entries > limits.lines) return undefined;
  const part = await openPart(bytes, { said: manifest.packed, limits });
  const entries = part && soundEntries(part.entries, limits);
  if (!entries || !isPlain({ runs: part.runs, entries }, manifest.stations)) return undefined;
  const newest = newestOf({ runs: part.runs, entries }, limits);
  return newest && { manifest, newest, parcel: { ...part, entries } };
}

/** The latest wall time of each station; undefined when a run is not sound. */
function newestOf({ runs, entries }: Parcel, limits: Limits): ReadonlyMap<StationId, number> | undefined {
  const judge = soundRuns({ judge: (event) => problemOf(event, limits), greatest: greatestNumbers });
  const newest = new Map<StationId, number>();
  const see = (station: StationId, wall: number) =>
    newest.set(station, Math.max(wall, newest.get(station) ?? 0));
  for (const run of runs) {
    const sound = run.entries >= shortestRun && run.entries <= mostInRun ? judge(run) : undefined;
    if (!sound) return undefined;
    see(run.station, sound.newest);
  }
  for (const { event } of entries) see(event.station, 'stamp' in event ? event.stamp.wall : 0);
  return newest;
}

const lineFeed = 0x0a;

/** The manifest, if it is whole: it has a gzip member of its own, whose sum has to fit. */
function manifestOf(bytes: Uint8Array, limits: Limits): Manifest | undefined {
  const pieces: Uint8Array[] = [];
  const { sumsFit } = unpack(bytes, {
    limits,
    gap: () => {},
    give(chunk) {
      if (pieces.at(-1)?.at(-1) === lineFeed) return false;
      pieces.push(chunk);
      return true;
    },
  });
  const read = v.safeParse(manifestSchema, parseLine(concatBytes(...pieces), limits));
  return read.success && sumsFit ? read.output : undefined;
}

function soundEntries(raw: readonly unknown[], limits: Limits): readonly Entry[] | undefined {
  const read = lineReader(limits);
  const entries: Entry[] = [];
  for (const each of raw) {
    const line = read(utf8ToBytes(JSON.stringify(each)));
    if (line.kind !== 'entry') return undefined;
    entries.push(entryOfText(line.entry));
  }
  return entries;
}
