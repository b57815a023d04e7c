import { utf8ToBytes } from '@noble/hashes/utils.js';
import { entropyToMnemonic, mnemonicToEntropy } from '@scure/bip39';
import { wordlist } from '@scure/bip39/wordlists/english.js';
import { fromHex } from './from-hex.ts';
import type { SealedHeader, WrappedKey } from './sealed-format.ts';

/** Bytes as WebCrypto takes them: in memory that no other thread shares. */
export type Bytes = Uint8Array<ArrayBuffer>;

/** What opens a sealed backup: the passphrase, or the recovery words. */
export type Secret = { readonly passphrase: string } | { readonly words: readonly string[] };

const aes = { name: 'AES-GCM', length: 256 } as const;
const uses: KeyUsage[] = ['encrypt', 'decrypt'];

/** The key that wraps the data key, from a passphrase: PBKDF2-HMAC-SHA-256 (RFC 8018) of its NFKC form in UTF-8. */
export async function keyOfPassphrase(passphrase: string, { salt, rounds }: { salt: Bytes; rounds: number }) {
  const secret = Uint8Array.from(utf8ToBytes(passphrase.normalize('NFKC')));
  const base = await crypto.subtle.importKey('raw', secret, 'PBKDF2', false, ['deriveKey']);
  const kdf = { name: 'PBKDF2', hash: 'SHA-256', salt, iterations: rounds };
  return crypto.subtle.deriveKey(kdf, base, aes, false, uses);
}

const info = Uint8Array.from(utf8ToBytes('tallywright recovery words'));

/**
 * The key that wraps the data key, from the 128 bits of the recovery words: HKDF-SHA-256 (RFC 5869). Nobody chose those
 * bits, so they need none of the stretching that BIP-39 does to a sentence on its way to a seed.
 */
export async function keyOfEntropy(entropy: Bytes, salt: Bytes) {
  const base = await crypto.subtle.importKey('raw', entropy, 'HKDF', false, ['deriveKey']);
  return crypto.subtle.deriveKey({ name: 'HKDF', hash: 'SHA-256', salt, info }, base, aes, false, uses);
}

/** Twelve words of BIP-39's English list: 128 bits and their check sum. */
export function wordsOf(entropy: Bytes): readonly string[] {
  return entropyToMnemonic(entropy, wordlist).split(' ');
}

/** The bits that twelve words stand for, as a person may have typed them; undefined when the words or their check sum are wrong. */
export function entropyOf(words: readonly string[]): Bytes | undefined {
  const typed = words.join(' ').normalize('NFKD').toLowerCase().trim().split(/\s+/);
  try {
    return typed.length === 12 ? Uint8Array.from(mnemonicToEntropy(typed.join(' '), wordlist)) : undefined;
  } catch {
    return undefined;
  }
}

/** The data key as it lies in a header, opened with `secret`; undefined when the secret is not the right one. */
export async function dataKeyOf(header: SealedHeader, secret: Secret): Promise<CryptoKey | undefined> {
  const by = 'words' in secret ? header.words : header.passphrase;
  const key = await wrappingKey(header, secret);
  const raw = key && (await unwrapped(key, by));
  return raw && crypto.subtle.importKey('raw', raw, aes, false, ['decrypt']);
}

async function wrappingKey({ passphrase, words }: SealedHeader, secret: Secret) {
  if ('passphrase' in secret) {
    const { salt, rounds } = passphrase;
    return keyOfPassphrase(secret.passphrase, { salt: fromHex(salt), rounds });
  }
  const entropy = entropyOf(secret.words);
  return entropy && keyOfEntropy(entropy, fromHex(words.salt));
}

async function unwrapped(key: CryptoKey, { nonce, key: wrapped }: WrappedKey) {
  return decrypted(key, { iv: fromHex(nonce), bytes: fromHex(wrapped) });
}

/** The plain bytes; undefined when the tag does not fit. */
export async function decrypted(
  key: CryptoKey,
  { iv, bytes, data }: { iv: Bytes; bytes: Bytes; data?: Bytes },
): Promise<Bytes | undefined> {
  try {
    const algorithm = { name: 'AES-GCM', iv, ...(data && { additionalData: data }) };
    return new Uint8Array(await crypto.subtle.decrypt(algorithm, key, bytes));
  } catch {
    return undefined;
  }
}
