/**
 * Keys of users of a broker, as nats-server reads them: prefix, 32 bytes and CRC-16 in base32. Held to the client's own
 * package by a test; that package cannot make a key of a seed that was worked out elsewhere.
 */
import { createPrivateKey, createPublicKey } from 'node:crypto';

const base32 = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ234567';
const userPrefix = 20 << 3;
const seedPrefix = 18 << 3;
/** DER of an Ed25519 private key (RFC 8410, section 7) up to its 32 bytes. */
const pkcs8Head = Buffer.from('302e020100300506032b657004220420', 'hex');

/** @typedef {{ seed: string, public: string }} Nkey `seed` ("SU…") is secret, `public` ("U…") is not */

/** The key of a user whose Ed25519 seed is `raw`. @param {Uint8Array} raw 32 bytes @returns {Nkey} */
export function userKey(raw) {
  if (raw.length !== 32) throw new RangeError(`A seed has 32 bytes, and not ${raw.length}.`);
  const secret = createPrivateKey({ key: Buffer.concat([pkcs8Head, raw]), format: 'der', type: 'pkcs8' });
  // The last 32 bytes of an Ed25519 public key in DER are the key itself (RFC 8410, section 4).
  const open = createPublicKey(secret).export({ format: 'der', type: 'spki' }).subarray(-32);
  // The kind of user stands in the second prefix, shifted by the five bits that fit into the first.
  const prefix = [seedPrefix | (userPrefix >> 5), (userPrefix & 31) << 3];
  return { seed: encoded(prefix, raw), public: encoded([userPrefix], open) };
}

/** @param {readonly number[]} prefix @param {Uint8Array} bytes */
function encoded(prefix, bytes) {
  const plain = Buffer.concat([Buffer.from(prefix), bytes]);
  const check = crc16(plain);
  return inBase32(Buffer.concat([plain, Buffer.from([check & 255, check >> 8])]));
}

/** CRC-16/XMODEM: polynomial 0x1021, from 0. @param {Uint8Array} bytes */
export function crc16(bytes) {
  let crc = 0;
  for (const byte of bytes) {
    crc ^= byte << 8;
    for (let bit = 0; bit < 8; bit++) crc = ((crc << 1) ^ (crc & 0x8000 ? 0x1021 : 0)) & 0xffff;
  }
  return crc;
}

/** RFC 4648, section 6, without padding. @param {Uint8Array} bytes */
function inBase32(bytes) {
  let text = '';
  let bits = 0;
  let held = 0;
  for (const byte of bytes) {
    held = (held << 8) | byte;
    bits += 8;
    for (; bits >= 5; bits -= 5) text += base32[(held >> (bits - 5)) & 31];
    held &= (1 << bits) - 1;
  }
  return bits === 0 ? text : text + base32[(held << (5 - bits)) & 31];
}
