/**
 * A sealed backup, format 1: one line of JSON in the clear, then the backup in chunks of 64 kB, each under AES-256-GCM
 * (NIST SP 800-38D) with a random data key. The data key is in the line twice, itself under AES-256-GCM: with a key
 * from the passphrase, and with one from twelve recovery words. DEVELOPERS.md has every step.
 */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import * as v from 'valibot';

export const sealedFormat = 1;
/** Bytes of the backup in each chunk but the last, and the tag that GCM adds to each. */
export const chunkLength = 65_536;
export const tagLength = 16;
/** The line in the clear is no longer than this (bytes). */
export const longestHeader = 4096;

/** OWASP's figure for PBKDF2-HMAC-SHA-256 (Password Storage Cheat Sheet, 2023; from memory). */
export const usualRounds = 600_000;

const hex = (bytes: number) => v.pipe(v.string(), v.regex(new RegExp(`^[0-9a-f]{${2 * bytes}}$`)));
const wrapped = {
  salt: hex(16),
  /** Of the 96 bits that GCM is made for. */
  nonce: hex(12),
  /** The data key of 32 bytes under AES-256-GCM, with its tag. */
  key: hex(32 + tagLength),
};

export const sealedSchema = v.object({
  tallywright: v.literal('sealed'),
  format: v.literal(sealedFormat),
  cipher: v.literal('AES-256-GCM'),
  chunk: v.literal(chunkLength),
  /** First eight bytes of the nonce of each chunk. */
  nonce: hex(8),
  passphrase: v.object({
    kdf: v.literal('PBKDF2-HMAC-SHA-256'),
    /** Fewer protect nothing; more would hold a tablet up for minutes. */
    rounds: v.pipe(v.number(), v.integer(), v.minValue(100_000), v.maxValue(10_000_000)),
    ...wrapped,
  }),
  words: v.object({ kdf: v.literal('HKDF-SHA-256'), ...wrapped }),
  /** See `checkOf`. */
  check: hex(8),
});
export type SealedHeader = v.InferOutput<typeof sealedSchema>;
export type WrappedKey = Pick<SealedHeader['words'], 'salt' | 'nonce' | 'key'>;

/**
 * First eight bytes of the SHA-256 of the header as JSON without `check`: tells a damaged header from a wrong secret.
 * It protects nothing: whoever changes the header only gets a key that opens no chunk.
 */
export function checkOf({
  check,
  ...header
}: SealedHeader | (Omit<SealedHeader, 'check'> & { check?: string })) {
  return bytesToHex(sha256(utf8ToBytes(JSON.stringify(header))).subarray(0, 8));
}

/** The nonce of chunk `number` (from 0): the prefix of the file and the number, 32 bits, big-endian. */
export function chunkNonce(prefix: Uint8Array, number: number): Uint8Array<ArrayBuffer> {
  const nonce = new Uint8Array(12);
  nonce.set(prefix);
  new DataView(nonce.buffer).setUint32(8, number);
  return nonce;
}

/** What is sealed along with chunk `number`: its number, 32 bits, big-endian, and a byte that is 1 for the last one. */
export function chunkData(number: number, last: boolean): Uint8Array<ArrayBuffer> {
  const data = new Uint8Array(5);
  new DataView(data.buffer).setUint32(0, number);
  data[4] = last ? 1 : 0;
  return data;
}
