import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, concatBytes, utf8ToBytes } from '@noble/hashes/utils.js';
import { gzipSync } from 'fflate';
import type { Entry } from '../../domain/log/chain.ts';
import { backupFormat, type Manifest } from './backup-format.ts';
import { inBackupOrder, type StationRun } from './order-entries.ts';

/** What a backup says of itself. `wall` is when it is made, ms UTC; `zone` the shop's, `shop` its name. */
export interface AboutBackup {
  readonly version: string;
  readonly wall: number;
  readonly zone: string;
  readonly shop: string | null;
}

/** Characters of lines in one gzip member: what one damaged byte can cost at most. */
const memberLength = 65_536;

/** The backup file of a log. The same entries give the same bytes, in whatever order they come. */
export function writeBackup({
  entries,
  about,
}: {
  readonly entries: readonly Entry[];
  readonly about: AboutBackup;
}): Uint8Array {
  const runs = inBackupOrder(entries);
  const sum = sha256.create();
  const members: Uint8Array[] = [];
  for (const text of texts(runs)) {
    const bytes = utf8ToBytes(text);
    sum.update(bytes);
    members.push(packed(bytes));
  }
  const manifest: Manifest = {
    tallywright: 'log',
    format: backupFormat,
    version: about.version,
    made: { wall: about.wall, zone: about.zone },
    shop: about.shop,
    stations: runs.map(stationOf),
    entries: runs.reduce((all, run) => all + run.entries.length, 0),
    digest: bytesToHex(sum.digest()),
  };
  return concatBytes(packed(utf8ToBytes(`${JSON.stringify(manifest)}\n`)), ...members);
}

/** The lines of all entries, in texts of about one member each. */
function* texts(runs: readonly StationRun[]): Iterable<string> {
  let text = '';
  for (const entry of runs.flatMap((run) => run.entries)) {
    text += `${JSON.stringify(entry)}\n`;
    if (text.length < memberLength) continue;
    yield text;
    text = '';
  }
  if (text !== '') yield text;
}

function stationOf({ station, entries }: StationRun): Manifest['stations'][number] {
  const last = entries.reduce<Entry | undefined>(
    (best, entry) => (best && best.event.seq >= entry.event.seq ? best : entry),
    undefined,
  );
  if (!last) throw new Error(`station ${station} has no entries`);
  return { station, last: last.event.seq, link: last.link, entries: entries.length };
}

/** A gzip member without a date, so that the same log gives the same file. */
function packed(bytes: Uint8Array): Uint8Array {
  return gzipSync(bytes, { mtime: 0 });
}
