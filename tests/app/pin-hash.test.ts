import { pbkdf2Sync } from 'node:crypto';
import { expect, test } from 'vitest';
import { hashPin, newRecovery, pinMatches } from '../../src/app/pin-hash.ts';

test('a PIN is hashed as OpenSSL does it (PBKDF2, RFC 8018, with HMAC-SHA-256)', async () => {
  const [, kdf, rounds, salt = '', hash] = (await hashPin('0271')).split('$');
  expect([kdf, rounds]).toEqual(['pbkdf2-sha256', 'i=600000']);
  expect(salt).toHaveLength(32);
  expect(hash).toBe(pbkdf2Sync('0271', Buffer.from(salt, 'hex'), 600_000, 32, 'sha256').toString('hex'));
});

test('a hash is as published: the first vector of RFC 7914, section 11, for PBKDF2-HMAC-SHA-256', async () => {
  const salt = new TextEncoder().encode('salt');
  const hash = (await hashPin('passwd', { salt, rounds: 1 })).split('$').at(-1);
  // The RFC gives 64 bytes; a hash here is the first block of them.
  expect(hash).toBe('55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc');
});

test('the same digits match, others do not, and two hashes of one PIN differ by their salt', async () => {
  const hashed = await hashPin('2718', { rounds: 10 });
  expect(await pinMatches('2718', hashed)).toBe(true);
  expect(await pinMatches('2719', hashed)).toBe(false);
  expect(await hashPin('2718', { rounds: 10 })).not.toBe(hashed);
});

test('a recovery number has twelve digits, and is never the same', () => {
  const numbers = Array.from({ length: 200 }, newRecovery);
  for (const number of numbers) expect(number).toMatch(/^[0-9]{12}$/);
  expect(new Set(numbers).size).toBe(200);
  expect(new Set(numbers.join('')).size).toBe(10);
});
