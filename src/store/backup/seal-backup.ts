import { bytesToHex, concatBytes, utf8ToBytes } from '@noble/hashes/utils.js';
import { openSealed } from './open-sealed.ts';
import {
  checkOf,
  chunkData,
  chunkLength,
  chunkNonce,
  type SealedHeader,
  sealedFormat,
  usualRounds,
  type WrappedKey,
} from './sealed-format.ts';
import { type Bytes, keyOfEntropy, keyOfPassphrase, type Secret, wordsOf } from './sealing-keys.ts';

/** So many bytes from the platform's source of randomness. */
export type RandomBytes = (length: number) => Bytes;

export interface SealedBackup {
  readonly bytes: Bytes;
  /** Twelve words that open the file when the passphrase is forgotten. They are nowhere else: show and print them now. */
  readonly words: readonly string[];
}

/**
 * Seals a backup under a passphrase and under recovery words of its own, and has opened it with both before it resolves.
 * @throws {RangeError} for an empty passphrase
 * @throws {Error} where the platform has no WebCrypto (a page that is not served securely), or what was sealed does not open
 */
export async function sealBackup(
  bytes: Uint8Array,
  { passphrase, random }: { readonly passphrase: string; readonly random: RandomBytes },
): Promise<SealedBackup> {
  if (passphrase.normalize('NFKC') === '') throw new RangeError('the passphrase is empty');
  const entropy = random(16);
  const dataKey = random(32);
  const prefix = random(8);
  const [saltOfPassphrase, saltOfWords] = [random(16), random(16)];
  const keys = {
    passphrase: await keyOfPassphrase(passphrase, { salt: saltOfPassphrase, rounds: usualRounds }),
    words: await keyOfEntropy(entropy, saltOfWords),
  };
  const byPassphrase = await wrap(keys.passphrase, { dataKey, salt: saltOfPassphrase, random });
  const byWords = await wrap(keys.words, { dataKey, salt: saltOfWords, random });
  const header: Omit<SealedHeader, 'check'> = {
    tallywright: 'sealed',
    format: sealedFormat,
    cipher: 'AES-256-GCM',
    chunk: chunkLength,
    nonce: bytesToHex(prefix),
    passphrase: { kdf: 'PBKDF2-HMAC-SHA-256', rounds: usualRounds, ...byPassphrase },
    words: { kdf: 'HKDF-SHA-256', ...byWords },
  };
  const line = utf8ToBytes(`${JSON.stringify({ ...header, check: checkOf(header) })}\n`);
  const sealed = Uint8Array.from(concatBytes(line, ...(await sealChunks(bytes, { dataKey, prefix }))));
  const words = wordsOf(entropy);
  for (const secret of [{ passphrase }, { words }]) await proveThatItOpens(sealed, secret, bytes);
  return { bytes: sealed, words };
}

async function wrap(
  key: CryptoKey,
  { dataKey, salt, random }: { dataKey: Bytes; salt: Bytes; random: RandomBytes },
): Promise<WrappedKey> {
  const nonce = random(12);
  const wrapped = await crypto.subtle.encrypt({ name: 'AES-GCM', iv: nonce }, key, dataKey);
  return { salt: bytesToHex(salt), nonce: bytesToHex(nonce), key: bytesToHex(new Uint8Array(wrapped)) };
}

async function sealChunks(
  bytes: Uint8Array,
  { dataKey, prefix }: { dataKey: Bytes; prefix: Bytes },
): Promise<readonly Uint8Array[]> {
  const key = await crypto.subtle.importKey('raw', dataKey, 'AES-GCM', false, ['encrypt']);
  const count = Math.max(1, Math.ceil(bytes.length / chunkLength));
  const chunks: Uint8Array[] = [];
  for (let number = 0; number < count; number += 1) {
    const plain = bytes.slice(number * chunkLength, (number + 1) * chunkLength);
    const additionalData = chunkData(number, number === count - 1);
    const algorithm = { name: 'AES-GCM', iv: chunkNonce(prefix, number), additionalData };
    chunks.push(new Uint8Array(await crypto.subtle.encrypt(algorithm, key, plain)));
  }
  return chunks;
}

async function proveThatItOpens(sealed: Uint8Array, secret: Secret, wanted: Uint8Array): Promise<void> {
  const opened = await openSealed(sealed, secret);
  const same =
    opened.kind === 'opened' &&
    !opened.cut &&
    opened.bytes.length === wanted.length &&
    opened.bytes.every((byte, at) => byte === wanted[at]);
  if (!same) throw new Error('what was sealed does not open again');
}
