import { concatBytes } from '@noble/hashes/utils.js';
import type { PhotoHash } from '../../domain/log/photo-facts.ts';
import { type Limits, usualLimits } from './backup-format.ts';
import { bytesOfBlob } from './gathering.ts';
import { digestOfHashes, readSaid, readVolumeLine, type SaidOfPhotos, volumeMark } from './photos-said.ts';
import { parseLine } from './read-line.ts';
import { type PlacedPhoto, photoIn, siftPhotos } from './sift-photos.ts';
import { unpack } from './unpack.ts';

/** A photo in one of the files of a copy. */
interface FoundPhoto extends PlacedPhoto {
  /** Which of the files has it, from 0. */
  readonly file: number;
}

/** What photos there are in the files of a copy. */
export interface PhotosFound {
  /** Sound, each once, and not held yet. */
  readonly fresh: readonly FoundPhoto[];
  /** Sound, and held already. */
  readonly here: readonly PhotoHash[];
  /** How many the files should have besides. */
  readonly damaged: number;
  /** How many are in files of the copy that were not chosen, and the numbers of these. */
  readonly elsewhere: number;
  readonly missing: readonly number[];
  readonly volumes: number;
  /** Sound ones are in a file that does not speak of them. */
  readonly changed: boolean;
}

/** What the first line of a volume without a log says; undefined where the file is no such volume. */
type VolumeLine = SaidOfPhotos | 'newer-format' | undefined;

/** A file of a copy, its photos put aside. */
export interface OpenedVolume {
  /** The file as it is without its photos. */
  readonly rest: Blob;
  readonly photos: readonly PlacedPhoto[];
  readonly broken: number;
  readonly line: VolumeLine;
}

export async function openVolume(file: Blob, limits: Limits = usualLimits): Promise<OpenedVolume> {
  const sifted = await siftPhotos(file);
  return { ...sifted, line: await volumeLineOf(sifted.rest, limits) };
}

/** No more of the rest is unpacked to see whether it is a volume of photos. */
const longestLine = 4096;

async function volumeLineOf(rest: Blob, limits: Limits): Promise<VolumeLine> {
  const pieces: Uint8Array[] = [];
  unpack(await bytesOfBlob(rest.slice(0, longestLine)), {
    limits,
    gap: () => {},
    give(chunk) {
      pieces.push(chunk);
      return !chunk.includes(0x0a);
    },
  });
  const bytes = concatBytes(...pieces);
  const line = bytes.subarray(0, bytes.indexOf(0x0a));
  if (!new TextDecoder().decode(line).startsWith(volumeMark)) return undefined;
  return readVolumeLine(parseLine(line, limits));
}

/** A volume, and what a first line with a log says of its photos. */
export interface VolumeToWeigh extends OpenedVolume {
  readonly file: Blob;
  readonly said: unknown;
}

/**
 * Reads the photos of the files of a copy, one at a time, and holds them against those that a tablet has; undefined when there
 * are none and no file speaks of any.
 */
export async function weighPhotos(
  volumes: readonly VolumeToWeigh[],
  held: ReadonlySet<PhotoHash>,
): Promise<PhotosFound | undefined> {
  const fresh = new Map<PhotoHash, FoundPhoto>();
  const here = new Set<PhotoHash>();
  const saids: SaidOfPhotos[] = [];
  let damaged = 0;
  let changed = false;
  for (const [index, { file, photos, broken, said: raw }] of volumes.entries()) {
    const sound: PhotoHash[] = [];
    for (const photo of photos) {
      if (!(await photoIn(file, photo))) continue;
      sound.push(photo.hash);
      if (held.has(photo.hash)) here.add(photo.hash);
      else if (!fresh.has(photo.hash)) fresh.set(photo.hash, { ...photo, file: index });
    }
    const said = readSaid(raw);
    if (said) saids.push(said);
    const lost = said ? Math.max(0, said.photos - sound.length) : broken + photos.length - sound.length;
    damaged += lost;
    changed ||= lost === 0 && (said ? digestOfHashes(sound) !== said.digest : sound.length > 0);
  }
  if (fresh.size + here.size + damaged + saids.length === 0) return undefined;
  const found = { fresh: [...fresh.values()], here: [...here], damaged, changed };
  return { ...found, ...whatIsMissing(saids) };
}

/** Files of other copies have files that are missing too. */
function whatIsMissing(saids: readonly SaidOfPhotos[]) {
  const missing = new Set<number>();
  let elsewhere = 0;
  for (const set of new Set(saids.map((said) => said.set))) {
    const its = new Map(saids.filter((said) => said.set === set).map((said) => [said.volume, said]));
    const [{ volumes, all } = { volumes: 0, all: 0 }] = its.values();
    for (let volume = 1; volume <= volumes; volume += 1) if (!its.has(volume)) missing.add(volume);
    elsewhere += Math.max(0, all - [...its.values()].reduce((sum, { photos }) => sum + photos, 0));
  }
  return {
    elsewhere,
    missing: [...missing].sort((a, b) => a - b),
    volumes: Math.max(0, ...saids.map(({ volumes }) => volumes)),
  };
}
