import * as v from 'valibot';
import { sealedMark } from './backup-format.ts';
import { fromHex } from './from-hex.ts';
import { bytesOfBlob, gathering } from './gathering.ts';
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
      readonly content: Blob;
      /** Chunks are missing: the file ends early, or some are damaged and were left out. */
      readonly cut: boolean;
    }
  | { readonly kind: 'refused'; readonly why: 'wrong-secret' | 'not-sealed' | 'damaged' | 'newer-format' };

const newerHeader = v.object({
  tallywright: v.literal('sealed'),
  format: v.pipe(v.number(), v.minValue(sealedFormat + 1)),
});

/**
 * Opens a sealed backup with its passphrase or its recovery words, a few chunks at a time. What is left of a cut or damaged
 * one is given, for `readBackup` to judge. Rejects only where the platform has no WebCrypto, or the file cannot be read.
 */
export async function openSealed(file: Blob, secret: Secret): Promise<OpenedBackup> {
  const head = await bytesOfBlob(file.slice(0, longestHeader));
  if (!isSealed(head)) return { kind: 'refused', why: 'not-sealed' };
  const end = head.indexOf(0x0a);
  const raw = end === -1 ? undefined : parseLine(head.subarray(0, end), { nesting: 4 });
  const read = v.safeParse(sealedSchema, raw);
  if (!read.success) return { kind: 'refused', why: v.is(newerHeader, raw) ? 'newer-format' : 'damaged' };
  const header = read.output;
  const key = await dataKeyOf(header, secret);
  if (!key) return { kind: 'refused', why: checkOf(header) === header.check ? 'wrong-secret' : 'damaged' };
  const { content, chunks, cut } = await openChunks(file.slice(end + 1), { key, header });
  return chunks === 0 ? { kind: 'refused', why: 'damaged' } : { kind: 'opened', content, cut };
}

/** Whether a file that begins so is sealed. */
export function isSealed(head: Uint8Array): boolean {
  return new TextDecoder().decode(head.subarray(0, sealedMark.length)).startsWith(sealedMark);
}

/** So many chunks are read at once. */
const chunksAtOnce = 64;

async function openChunks(sealed: Blob, { key, header }: { key: CryptoKey; header: SealedHeader }) {
  const prefix = fromHex(header.nonce);
  const plain = gathering();
  const opened = (cut: boolean) => ({ content: plain.blob(), chunks, cut });
  let chunks = 0;
  let damaged = false;
  const size = chunkLength + tagLength;
  for (let from = 0; from < sealed.size; from += chunksAtOnce * size) {
    const read = await bytesOfBlob(sealed.slice(from, from + chunksAtOnce * size));
    for (let at = 0; at < read.length; at += size) {
      const chunk = await openChunk(read.slice(at, at + size), { key, prefix, number: (from + at) / size });
      damaged ||= !chunk;
      if (!chunk) continue;
      plain.push(chunk.plain);
      chunks += 1;
      // What follows the last chunk is not of this file.
      if (chunk.last) return opened(damaged);
    }
  }
  return opened(true);
}

async function openChunk(
  bytes: Uint8Array<ArrayBuffer>,
  { key, prefix, number }: { key: CryptoKey; prefix: Uint8Array; number: number },
) {
  const chunk = { iv: chunkNonce(prefix, number), bytes };
  for (const last of [false, true]) {
    const plain = await decrypted(key, { ...chunk, data: chunkData(number, last) });
    if (plain) return { plain, last };
  }
  return undefined;
}
