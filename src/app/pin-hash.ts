import { fromHex } from '../store/backup/from-hex.ts';
import { recoveryLength } from './bench-lock.ts';

/** OWASP's figure for PBKDF2-HMAC-SHA-256 (Password Storage Cheat Sheet, 2023; from memory). */
const usualRounds = 600_000;

/** Whether this browser can hash at all: it does so only on pages that came over a safe way. */
export const canHash = (): boolean => globalThis.crypto?.subtle !== undefined;

/** PBKDF2-HMAC-SHA-256 (RFC 8018) of the digits, under a salt of 16 random bytes unless one is given; a text as `keptLock` takes it. */
export async function hashPin(
  digits: string,
  { salt = crypto.getRandomValues(new Uint8Array(16)), rounds = usualRounds } = {},
): Promise<string> {
  const secret = new TextEncoder().encode(digits);
  const base = await crypto.subtle.importKey('raw', secret, 'PBKDF2', false, ['deriveBits']);
  const kdf = { name: 'PBKDF2', hash: 'SHA-256', salt, iterations: rounds };
  const hash = new Uint8Array(await crypto.subtle.deriveBits(kdf, base, 256));
  return `$pbkdf2-sha256$i=${rounds}$${toHex(salt)}$${toHex(hash)}`;
}

export async function pinMatches(typed: string, hashed: string): Promise<boolean> {
  const [, , rounds = '', salt = ''] = hashed.split('$');
  return (
    (await hashPin(typed, { salt: fromHex(salt), rounds: Number(rounds.slice('i='.length)) })) === hashed
  );
}

/** A recovery number: decimal digits, each as likely as the others. */
export function newRecovery(): string {
  let digits = '';
  while (digits.length < recoveryLength) {
    const [byte = 0] = crypto.getRandomValues(new Uint8Array(1));
    // 250 is the largest multiple of ten in a byte: what lies beyond would favour the low digits.
    if (byte < 250) digits += byte % 10;
  }
  return digits;
}

const toHex = (bytes: Uint8Array) => [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
