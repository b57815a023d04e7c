import { utf8ToBytes } from '@noble/hashes/utils.js';
import type { Bytes } from '../store/backup/sealing-keys.ts';

/** The 128 bits from which all keys of a shop on a broker come. Whoever has them can read and write everything. */
export type ShopKey = Bytes;
export const shopKeyLength = 16;

/** As many as there are letters for stations; which letter a station has is another matter. */
export const seatLetters = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H', 'I', 'J', 'K', 'L', 'M'] as const;
/** A tablet's right to write to the broker. What is written there keeps the station that it is of. */
export type Seat = (typeof seatLetters)[number];

const hkdf = (info: string) => ({
  name: 'HKDF',
  hash: 'SHA-256',
  salt: new Uint8Array(),
  info: Uint8Array.from(utf8ToBytes(info)),
});

/** The key under which messages are sealed: HKDF-SHA-256 (RFC 5869) without salt. It cannot be read out again. */
export async function eventsKeyOf(key: ShopKey): Promise<CryptoKey> {
  const base = await crypto.subtle.importKey('raw', key, 'HKDF', false, ['deriveKey']);
  const aes = { name: 'AES-GCM', length: 256 } as const;
  return crypto.subtle.deriveKey(hkdf('tallywright events'), base, aes, false, ['encrypt', 'decrypt']);
}

/** The 32 bytes from which the Ed25519 key of a seat (RFC 8032) comes, by HKDF in the same way. */
export async function seatSeedOf(key: ShopKey, seat: Seat): Promise<Bytes> {
  const base = await crypto.subtle.importKey('raw', key, 'HKDF', false, ['deriveBits']);
  return new Uint8Array(await crypto.subtle.deriveBits(hkdf(`tallywright seat ${seat}`), base, 256));
}
