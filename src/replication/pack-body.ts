import { concatBytes, utf8ToBytes } from '@noble/hashes/utils.js';
import type { Entry } from '../domain/log/chain.ts';
import { holdingOf } from '../domain/log/holding.ts';
import { readEntry } from '../domain/log/read-entry.ts';
import { mostInRun } from '../domain/packed/pack-run.ts';
import { isSameHead, type PackedRun, type RunHead } from '../domain/packed/packed-run.ts';
import { soundRuns } from '../domain/packed/sound-runs.ts';
import { headOfRun } from '../domain/packed/stretch.ts';
import { entriesOf } from '../domain/packed/unpack-run.ts';
import { usualLimits } from '../store/backup/backup-format.ts';
import { greatestNumbers } from '../store/backup/beyond-reason.ts';
import { parseLine, problemOf } from '../store/backup/read-line.ts';
import type { Bytes } from '../store/backup/sealing-keys.ts';
import { type Pack, packOf, readPack } from '../store/pack.ts';
import { unlikeHead } from './log-body.ts';

/** A run: a line of JSON with all of its pack (`store/pack.ts`) but the bytes, and the bytes. */
export function packBody(run: PackedRun): Uint8Array {
  const { bytes, ...head } = packOf(run);
  return concatBytes(utf8ToBytes(`${JSON.stringify(head)}\n`), new Uint8Array(bytes));
}

/** What is in a body: a run that a store can take as it is, or its entries, where the run as such is in doubt. */
type ReadPackBody = { readonly run: PackedRun; readonly pack: Pack } | { readonly entries: readonly Entry[] };

const lineFeed = 0x0a;

/** Judges runs as those of a backup are judged, and holds them against the head. Throws when one is not sound. */
export function packBodyReader(): (content: Bytes, head: RunHead) => ReadPackBody {
  const judge = (event: unknown) => problemOf(event, usualLimits);
  const isSound = soundRuns({ judge, greatest: greatestNumbers });
  return (content, head) => {
    const end = content.indexOf(lineFeed);
    const said = parseLine(content.subarray(0, Math.max(0, end)), usualLimits);
    const bytes = content.slice(end + 1).buffer;
    const read = readPack(typeof said === 'object' ? { ...said, bytes } : undefined);
    if (!read) throw new Error('a run is not as it was written');
    if (read.run.entries > mostInRun || !isSameHead(headOfRun(read.run), head)) throw new Error(unlikeHead);
    return isSound(read.run) ? read : { entries: judged(read.run, judge) };
  };
}

/** One by one, as the lines of a backup are where its packed part is in doubt. */
function judged(run: PackedRun, judge: (event: unknown) => string | null): readonly Entry[] {
  const entries = entriesOf(run);
  for (const entry of entries) {
    const problem = readEntry(entry).kind === 'damaged' ? 'an entry is damaged' : judge(entry.event);
    if (problem !== null) throw new Error(problem);
  }
  if (holdingOf(entries.map(({ link }) => link)).sum !== run.sum) throw new Error(unlikeHead);
  return entries;
}
