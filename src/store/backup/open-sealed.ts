import { concatBytes } from '@noble/hashes/utils.js';
import * as v from 'valibot';
import { sealedMark } from './backup-format.ts';
import { fromHex } from './from-hex.ts';
import { parseLine } from './read-line.ts';
import {
  checkOf,
  chunkData,
  chunkLength,
  chunkNonce,
  longestHeader,
  type SealedHeader,
  sealedFormat,
  sealedSchema,
  tagLength,
} from './sealed-format.ts';
import { dataKeyOf, decrypted, type Secret } from './sealing-keys.ts';

export type OpenedBackup =
  | {
      readonly kind: 'opened';
      readonly bytes: Uint8Array;
      /** Chunks are missing: the file ends early, or some are damaged and were left out. */
      readonly cut: boolean;
    }
  | { readonly kind: 'refused'; readonly why: 'wrong-secret' | 'not-sealed' | 'damaged' | 'newer-format' };

const newerHeader = v.object({
  tallywright: v.literal('sealed'),
  format: v.pipe(v.number(), v.minValue(sealedFormat + 1)),
});

/**
 * Opens a sealed backup with its passphrase or its recovery words. What is left of a cut or damaged one is given, for
 * `readBackup` to judge. Rejects only where the platform has no WebCrypto.
 */
export async function openSealed(bytes: Uint8Array, secret: Secret): Promise<OpenedBackup> {
  if (!new TextDecoder().decode(bytes.subarray(0, sealedMark.length)).startsWith(sealedMark))
    return { kind: 'refused', why: 'not-sealed' };
  const end = bytes.subarray(0, longestHeader).indexOf(0x0a);
  const raw = end === -1 ? undefined : parseLine(bytes.subarray(0, end), { nesting: 4 });
  const read = v.safeParse(sealedSchema, raw);
  if (!read.success) return { kind: 'refused', why: v.is(newerHeader, raw) ? 'newer-format' : 'damaged' };
  const header = read.output;
  const key = await dataKeyOf(header, secret);
  if (!key) return { kind: 'refused', why: checkOf(header) === header.check ? 'wrong-secret' : 'damaged' };
  const { chunks, cut } = await openChunks(bytes.subarray(end + 1), { key, header });
  return chunks.length === 0
    ? { kind: 'refused', why: 'damaged' }
    : { kind: 'opened', bytes: concatBytes(...chunks), cut };
}

async function openChunks(sealed: Uint8Array, { key, header }: { key: CryptoKey; header: SealedHeader }) {
  const prefix = fromHex(header.nonce);
  const chunks: Uint8Array[] = [];
  let damaged = false;
  const size = chunkLength + tagLength;
  for (let number = 0; number * size < sealed.length; number += 1) {
    const chunk = { iv: chunkNonce(prefix, number), bytes: sealed.slice(number * size, (number + 1) * size) };
    for (const last of [false, true]) {
      const plain = await decrypted(key, { ...chunk, data: chunkData(number, last) });
      if (plain) chunks.push(plain);
      // What follows the last chunk is not of this file.
      if (plain && last) return { chunks, cut: damaged };
      if (plain) break;
      damaged ||= last;
    }
  }
  return { chunks, cut: true };
}
