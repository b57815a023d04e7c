import { type Random, seededRandom } from '../../src/domain/chance/seeded-random.ts';
import { chained } from '../../src/domain/log/chain.ts';
import type { PhotoHash } from '../../src/domain/log/photo-facts.ts';
import { linksIn } from '../../src/domain/packed/parcel.ts';
import { bytesOfBlob } from '../../src/store/backup/gathering.ts';
import { photoIn } from '../../src/store/backup/sift-photos.ts';
import { writeBackup } from '../../src/store/backup/write-backup.ts';
import { writeVolumes } from '../../src/store/backup/write-volumes.ts';
import { type FilesReading, readFiles } from '../../src/store/read-files.ts';
import { photoOf, photosOfStore } from '../store/backup/photo-makers.ts';
import { byteSpoils, gzipBombs, oneOf, whole } from './byte-spoils.ts';
import { foreignLog } from './drafts.ts';

/** What came of reading spoilt copies with photos; every figure but the first five must be 0. */
export interface PhotoFuzzFigures {
  readonly runs: number;
  readonly read: number;
  readonly refused: number;
  /** Sound photos that were offered in all, and copies that were read whole in spite of all. */
  readonly offered: number;
  readonly unharmed: number;
  readonly threw: number;
  /** Photos or entries offered that were never put in, or whose bytes are not those of their hash. */
  readonly invented: number;
  /** Copies that called themselves sound and were not. */
  readonly unnamed: number;
}

const about = { version: '0.1.0', wall: Date.UTC(2026, 2, 2, 17), zone: 'Europe/London', shop: 'Fuzz' };
const log = chained([...foreignLog('bench'), ...foreignLog('office')]);
const links: ReadonlySet<string> = new Set(log.map(({ link }) => link));
const photos = [200, 70_000, 5000, 1, 66_000, 800].map((length, number) => photoOf(number, length));
const hashes: ReadonlySet<PhotoHash> = new Set(photos.map(({ hash }) => hash));
const nothing = { kind: 'lines', lines: [] } as const;

/** In one file, and in several. */
async function copiesToSpoil(): Promise<readonly (readonly Uint8Array[])[]> {
  const copies = [1_000_000, 90_000].map(async (most) => {
    const { volumes } = await writeVolumes({
      ...{ entries: log, about, photos: photosOfStore(photos).source, most },
    });
    return Promise.all(volumes.map(({ content }) => bytesOfBlob(content)));
  });
  return Promise.all(copies);
}

/** Reads `runs` copies of which files were spoilt in ways drawn from `seed`. */
export async function fuzzPhotoCopies(runs: number, seed: number): Promise<PhotoFuzzFigures> {
  const random = seededRandom(seed);
  const copies = await copiesToSpoil();
  const spoils = byteSpoils({
    others: [...copies.flat(), writeBackup({ entries: log, about })],
    bombs: gzipBombs(),
  });
  const figures = { read: 0, refused: 0, offered: 0, unharmed: 0 };
  const faults = { threw: 0, invented: 0, unnamed: 0 };
  for (let run = 0; run < runs; run += 1) {
    const files = oneOf(random, copies).map(
      (file) => new Blob([Uint8Array.from(maybeSpoilt(file, { random, spoils }))]),
    );
    const reading = await readFiles({ files, log: nothing, photos: null }).catch(() => undefined);
    if (!reading) {
      faults.threw += 1;
      continue;
    }
    figures[reading.kind] += 1;
    if (reading.kind === 'refused') continue;
    figures.offered += reading.photos?.fresh.length ?? 0;
    faults.invented += await inventedIn(reading, files);
    if (!saysSound(reading)) continue;
    if (isWhole(reading)) figures.unharmed += 1;
    else faults.unnamed += 1;
  }
  return { runs, ...figures, ...faults };
}

function maybeSpoilt(
  file: Uint8Array,
  { random, spoils }: { random: Random; spoils: ReturnType<typeof byteSpoils> },
): Uint8Array {
  let bytes = file;
  for (let times = whole(random, 3); times > 0 && bytes.length > 0; times -= 1)
    bytes = oneOf(random, spoils)(bytes, random);
  return bytes;
}

type Read = Exclude<FilesReading, { readonly kind: 'refused' }>;

const saysSound = ({ cut, digestFits, unreadable, manifest, photos: found }: Read) =>
  !cut && digestFits && unreadable.length === 0 && manifest !== null && isSoundOf(found);

function isSoundOf(found: Read['photos']): boolean {
  return found === null || (found.damaged === 0 && found.missing.length === 0 && !found.changed);
}

/** A log that speaks of no photos is whole without any: another file has taken the place of this one. */
function isWhole({ entries, manifest, photos: found }: Read): boolean {
  const wanted = manifest?.photos === undefined ? 0 : photos.length;
  return entries === log.length && (found?.fresh.length ?? 0) === wanted;
}

async function inventedIn({ parcel, photos: found }: Read, files: readonly Blob[]): Promise<number> {
  let invented = [...linksIn(parcel)].filter((link) => !links.has(link)).length;
  for (const { file, ...photo } of found?.fresh ?? []) {
    const bytes = await photoIn(files[file] ?? new Blob(), photo);
    if (!bytes || !hashes.has(photo.hash)) invented += 1;
  }
  return invented;
}
