import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { bytesOfBlob, gathering } from './gathering.ts';
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
  readonly content: Blob;
  /** Twelve words that open the file when the passphrase is forgotten. They are nowhere else: show and print them now. */
  readonly words: readonly string[];
}

interface Sealing {
  readonly passphrase: string;
  readonly random: RandomBytes;
  /** What the words stand for: the same for all files of one copy, whose keys are their own. */
  readonly entropy?: Bytes;
}

/** So many chunks are read at once. */
const chunksAtOnce = 64;

/**
 * Seals a backup under a passphrase and under recovery words of its own, and has opened it with both before it resolves. A
 * few chunks at a time are in memory.
 * @throws {RangeError} for an empty passphrase
 * @throws {Error} where the platform has no WebCrypto (a page that is not served securely), or what was sealed does not open
 */
export async function sealBackup(
  content: Blob,
  { passphrase, random, entropy = random(16) }: Sealing,
): Promise<SealedBackup> {
  if (passphrase.normalize('NFKC') === '') throw new RangeError('the passphrase is empty');
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
  const file = gathering();
  file.push(utf8ToBytes(`${JSON.stringify({ ...header, check: checkOf(header) })}\n`));
  for await (const chunk of sealedChunks(content, { dataKey, prefix })) file.push(chunk);
  const sealed = file.blob();
  const words = wordsOf(entropy);
  for (const secret of [{ passphrase }, { words }]) await proveThatItOpens(sealed, secret, content);
  return { content: sealed, words };
}

async function wrap(
  key: CryptoKey,
  { dataKey, salt, random }: { dataKey: Bytes; salt: Bytes; random: RandomBytes },
): Promise<WrappedKey> {
  const nonce = random(12);
  const wrapped = await crypto.subtle.encrypt({ name: 'AES-GCM', iv: nonce }, key, dataKey);
  return { salt: bytesToHex(salt), nonce: bytesToHex(nonce), key: bytesToHex(new Uint8Array(wrapped)) };
}

async function* sealedChunks(
  content: Blob,
  { dataKey, prefix }: { dataKey: Bytes; prefix: Bytes },
): AsyncGenerator<Uint8Array, void> {
  const key = await crypto.subtle.importKey('raw', dataKey, 'AES-GCM', false, ['encrypt']);
  const count = Math.max(1, Math.ceil(content.size / chunkLength));
  for (let from = 0; from < count; from += chunksAtOnce) {
    const read = await bytesOfBlob(content.slice(from * chunkLength, (from + chunksAtOnce) * chunkLength));
    for (let at = 0; at < chunksAtOnce && from + at < count; at += 1) {
      const number = from + at;
      const plain = read.slice(at * chunkLength, (at + 1) * chunkLength);
      const additionalData = chunkData(number, number === count - 1);
      const algorithm = { name: 'AES-GCM', iv: chunkNonce(prefix, number), additionalData };
      yield new Uint8Array(await crypto.subtle.encrypt(algorithm, key, plain));
    }
  }
}

async function proveThatItOpens(sealed: Blob, secret: Secret, wanted: Blob): Promise<void> {
  const opened = await openSealed(sealed, secret);
  const same = opened.kind === 'opened' && !opened.cut && (await isSame(opened.content, wanted));
  if (!same) throw new Error('what was sealed does not open again');
}

async function isSame(one: Blob, other: Blob): Promise<boolean> {
  if (one.size !== other.size) return false;
  for (let at = 0; at < one.size; at += chunksAtOnce * chunkLength) {
    const [a, b] = await Promise.all(
      [one, other].map((blob) => bytesOfBlob(blob.slice(at, at + chunksAtOnce * chunkLength))),
    );
    if (!a?.every((byte, index) => byte === b?.[index])) return false;
  }
  return true;
}
