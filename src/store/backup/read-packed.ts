import { concatBytes, utf8ToBytes } from '@noble/hashes/utils.js';
import * as v from 'valibot';
import type { Entry } from '../../domain/log/chain.ts';
import { mostInRun } from '../../domain/packed/pack-run.ts';
import type { Parcel } from '../../domain/packed/parcel.ts';
import { plainRuns } from '../../domain/packed/plain-runs.ts';
import { entryOfText } from '../../domain/packed/text-entry.ts';
import { type Limits, type Manifest, manifestSchema, usualLimits } from './backup-format.ts';
import { greatestNumbers } from './beyond-reason.ts';
import { openPart } from './packed-part.ts';
import { isPlain } from './plain-log.ts';
import { lineReader, parseLine, problemOf } from './read-line.ts';
import { unpack } from './unpack.ts';

/** A backup as its packed part has it. */
export interface PackedReading {
  readonly manifest: Manifest;
  readonly parcel: Parcel;
}

/**
 * Reads a backup by its packed part, and not a line of it but the first. Undefined where there is any doubt: then the lines
 * tell, and to the same end. Every event is found sound, as a line would be, and every chain goes from end to end; that
 * each link within a run is the one that its station wrote is taken from the digest. Never throws.
 */
export function readPacked(bytes: Uint8Array, limits: Limits = usualLimits): PackedReading | undefined {
  if (bytes.length > limits.file) return undefined;
  const manifest = manifestOf(bytes, limits);
  const part = manifest && openPart(bytes, { said: manifest.packed, limits });
  if (!part || manifest.entries > limits.lines) return undefined;
  const entries = soundEntries(part.entries, limits);
  const parcel = entries && { runs: part.runs, entries };
  if (!parcel || !isPlain(parcel, manifest.stations)) return undefined;
  const judge = plainRuns({ judge: (event) => problemOf(event, limits), greatest: greatestNumbers });
  const areSound = part.runs.every((run) => run.entries <= mostInRun && judge(run));
  return areSound ? { manifest, parcel } : undefined;
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
