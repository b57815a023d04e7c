import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, concatBytes, utf8ToBytes } from '@noble/hashes/utils.js';
import { gzipSync } from 'fflate';
import type { Link } from '../../domain/log/chain.ts';
import type { Parcel } from '../../domain/packed/parcel.ts';
import { backupFormat, type Manifest } from './backup-format.ts';
import { linesOf, type Section } from './log-section.ts';
import { inBackupOrder, type StationSections } from './order-log.ts';
import { writePart } from './packed-part.ts';
import { inRuns, isPlain } from './plain-log.ts';

/** What a backup says of itself. `wall` is when it is made, ms UTC; `zone` the shop's, `shop` its name. */
export interface AboutBackup {
  readonly version: string;
  readonly wall: number;
  readonly zone: string;
  readonly shop: string | null;
}

/** Characters of lines in one gzip member: what one damaged byte can cost at most. */
const memberLength = 65_536;

/** A log that is to be written: entries one by one, and those that are packed. */
export type LogToWrite = Pick<Parcel, 'entries'> & Partial<Pick<Parcel, 'runs'>>;

export interface BackupToWrite extends LogToWrite {
  readonly about: AboutBackup;
  /** Is given the link of every entry that is written. */
  readonly onLink?: (link: Link) => void;
}

/** A backup file before it is put together. */
export interface BackupPieces {
  readonly manifest: Manifest;
  readonly lines: readonly Uint8Array[];
  readonly part: Uint8Array;
}

/**
 * The backup file of a log. The same entries give the same lines, in whatever order they come and whether packed or not; its
 * packed part follows the runs. Of what is packed but one entry is unpacked at a time. Throws when a run is not whole.
 */
export function writeBackup(backup: BackupToWrite): Uint8Array {
  const { manifest, lines, part } = piecesOfBackup(backup);
  return concatBytes(firstLine(manifest), ...lines, part);
}

/** The same in pieces, for a file that has more in it. */
export function piecesOfBackup({ about, onLink = () => {}, ...log }: BackupToWrite): BackupPieces {
  const stations = inBackupOrder(log);
  const sum = sha256.create();
  const lines: Uint8Array[] = [];
  for (const text of texts(stations, onLink)) {
    const bytes = utf8ToBytes(text);
    sum.update(bytes);
    lines.push(packed(bytes));
  }
  const plain: Manifest = {
    tallywright: 'log',
    format: backupFormat,
    version: about.version,
    made: { wall: about.wall, zone: about.zone },
    shop: about.shop,
    stations: stations.map(stationOf),
    entries: stations.reduce((all, { sections }) => all + countIn(sections), 0),
    digest: bytesToHex(sum.digest()),
  };
  return { ...withPart(plain, stations), lines };
}

/** A line of JSON in a gzip member of its own, with which a file begins. */
export const firstLine = (manifest: object): Uint8Array =>
  packed(utf8ToBytes(`${JSON.stringify(manifest)}\n`));

/** A log that is short, or has branches, has no packed part. */
function withPart(manifest: Manifest, stations: readonly StationSections[]) {
  const log = inRuns(stations);
  if (!log || log.runs.length === 0 || !isPlain(log, manifest.stations))
    return { manifest, part: new Uint8Array() };
  const { said, part } = writePart(log);
  return { manifest: { ...manifest, packed: said }, part };
}

/** The lines of all entries, in texts of about one member each. */
function* texts(stations: readonly StationSections[], onLink: (link: Link) => void): Iterable<string> {
  let member = '';
  for (const { sections } of stations)
    for (const section of sections)
      for (const { link, text } of linesOf(section)) {
        onLink(link);
        member += `${text}\n`;
        if (member.length < memberLength) continue;
        yield member;
        member = '';
      }
  if (member !== '') yield member;
}

const countIn = (sections: readonly Section[]) => sections.reduce((sum, { entries }) => sum + entries, 0);
const lastIn = ({ first, entries }: Section) => first + entries - 1;

function stationOf({ station, sections }: StationSections): Manifest['stations'][number] {
  const last = sections.reduce<Section | undefined>(
    (best, section) => (best && lastIn(best) >= lastIn(section) ? best : section),
    undefined,
  );
  if (!last) throw new Error(`station ${station} has no entries`);
  return { station, last: lastIn(last), link: last.link, entries: countIn(sections) };
}

/** A gzip member without a date, so that the same log gives the same file. */
function packed(bytes: Uint8Array): Uint8Array {
  return gzipSync(bytes, { mtime: 0 });
}
