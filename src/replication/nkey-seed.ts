import { utf8ToBytes } from '@noble/hashes/utils.js';
import type { Bytes } from '../store/backup/sealing-keys.ts';

/** The broker's prefixes of a seed, and of a user: five bits each, so that such a seed begins with SU. */
const [seedPrefix, userPrefix] = [18 << 3, 20 << 3];
const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ234567';

/**
 * The seed of an Ed25519 key as the broker's client reads it (nkeys): both prefixes, the 32 bytes, and their CRC-16, all in
 * base 32 (RFC 4648, section 6) without padding.
 */
export function nkeySeed(raw: Uint8Array): Bytes {
  const bytes = new Uint8Array(raw.length + 4);
  bytes[0] = seedPrefix | (userPrefix >> 5);
  bytes[1] = (userPrefix & 31) << 3;
  bytes.set(raw, 2);
  new DataView(bytes.buffer).setUint16(raw.length + 2, crc16(bytes.subarray(0, -2)), true);
  return Uint8Array.from(utf8ToBytes(base32(bytes)));
}

/** CRC-16/XMODEM: polynomial 0x1021, beginning with 0. */
function crc16(bytes: Uint8Array): number {
  let sum = 0;
  for (const byte of bytes) {
    sum ^= byte << 8;
    for (let bit = 0; bit < 8; bit += 1) sum = (sum & 0x8000 ? (sum << 1) ^ 0x1021 : sum << 1) & 0xffff;
  }
  return sum;
}

function base32(bytes: Uint8Array): string {
  let text = '';
  let [bits, held] = [0, 0];
  for (const byte of bytes) {
    held = (held << 8) | byte;
    for (bits += 8; bits >= 5; bits -= 5) text += alphabet[(held >> (bits - 5)) & 31];
    held &= (1 << bits) - 1;
  }
  return bits === 0 ? text : text + alphabet[(held << (5 - bits)) & 31];
}
