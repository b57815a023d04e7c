import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, concatBytes, utf8ToBytes } from '@noble/hashes/utils.js';
import * as v from 'valibot';
import type { PhotoHash } from '../../domain/log/photo-facts.ts';
import { fromHex } from './from-hex.ts';

/** More photos no copy has: at the largest they would be some eighty gigabytes. */
const mostPhotos = 20_000;
const mostVolumes = 999;

const count = (most: number) => v.pipe(v.number(), v.safeInteger(), v.minValue(0), v.maxValue(most));
const hex = (digits: number) => v.pipe(v.string(), v.regex(new RegExp(`^[0-9a-f]{${digits}}$`)));

/** What a file says of the photos in it, in its first line. */
const saidSchema = v.object({
  form: v.literal(1),
  /** Names the files of one copy: photos that do not fit into the first go into others. */
  set: hex(16),
  /** Which of them this is, from 1, and how many there are. */
  volume: v.pipe(count(mostVolumes), v.minValue(1)),
  volumes: v.pipe(count(mostVolumes), v.minValue(1)),
  photos: count(mostPhotos),
  bytes: count(Number.MAX_SAFE_INTEGER),
  /** SHA-256 over the hashes of its photos, 32 bytes each, in their order. */
  digest: hex(64),
  /** How many photos the whole set has. */
  all: count(mostPhotos),
});
export type SaidOfPhotos = Readonly<v.InferOutput<typeof saidSchema>>;

export function readSaid(raw: unknown): SaidOfPhotos | undefined {
  const read = v.safeParse(saidSchema, raw);
  return read.success && read.output.volume <= read.output.volumes ? read.output : undefined;
}

export const digestOfHashes = (photos: readonly PhotoHash[]): string =>
  bytesToHex(sha256(concatBytes(...photos.map(fromHex))));

export const setOf = (digests: readonly string[]): string =>
  bytesToHex(sha256(utf8ToBytes(digests.join()))).slice(0, 16);

/** The first line of a file that has nothing but photos. An older reader finds no log in it and says so. */
export const volumeFormat = 1;
export const volumeMark = '{"tallywright":"photos"';

const volumeSchema = v.object({
  tallywright: v.literal('photos'),
  format: v.literal(volumeFormat),
  photos: v.unknown(),
});
const newerVolume = v.object({
  tallywright: v.literal('photos'),
  format: v.pipe(v.number(), v.minValue(volumeFormat + 1)),
});

export function readVolumeLine(raw: unknown): SaidOfPhotos | 'newer-format' | undefined {
  if (v.is(newerVolume, raw)) return 'newer-format';
  const read = v.safeParse(volumeSchema, raw);
  return read.success ? readSaid(read.output.photos) : undefined;
}
