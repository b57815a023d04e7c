import { fromPublic, fromSeed } from '@nats-io/nkeys';
import { expect, test } from 'vitest';
import { crc16, userKey } from '../../.ci/hub/nkey.mjs';
import { joiningLink, newShopKeys, openPart, seatKey, seats } from '../../.ci/hub/shop-keys.mjs';
import { codeLetters } from '../../src/domain/tray/code-alphabet.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const counting = (length: number) => Uint8Array.from({ length }, (_, index) => index);

/** Bytes of a fixed sequence: any would do, these come again. */
function countingRandom() {
  let next = 0;
  return (length: number) => Uint8Array.from({ length }, () => (next = (next * 73 + 41) % 256));
}

test('the check of a key is CRC-16/XMODEM', () => {
  // Catalogue of parametrised CRC algorithms (reveng.sourceforge.io), CRC-16/XMODEM: check 0x31c3 of "123456789".
  expect(crc16(bytes('123456789'))).toBe(0x31c3);
});

test('a key is read by the client’s own package, and signs as it does', () => {
  for (const raw of [counting(32), new Uint8Array(32), new Uint8Array(32).fill(255)]) {
    const key = userKey(raw);
    const theirs = fromSeed(bytes(key.seed));
    expect(theirs.getPublicKey()).toBe(key.public);
    const nonce = bytes('a nonce');
    expect(fromPublic(key.public).verify(nonce, theirs.sign(nonce))).toBe(true);
  }
});

test('the key of RFC 8032, section 7.1, test 1 has the public part that stands there', () => {
  const raw = Buffer.from('9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60', 'hex');
  const open = 'd75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a';
  // Base32 of prefix, 32 bytes and check: the bytes from the second on.
  const read = fromBase32(userKey(raw).public);
  expect(read.subarray(1, 33).toString('hex')).toBe(open);
});

function fromBase32(text: string): Buffer {
  const bits = [...text].map((sign) =>
    'ABCDEFGHIJKLMNOPQRSTUVWXYZ234567'.indexOf(sign).toString(2).padStart(5, '0'),
  );
  return Buffer.from((bits.join('').match(/.{8}/g) ?? []).map((byte) => Number.parseInt(byte, 2)));
}

test('a seed of another length is refused', () => {
  expect(() => userKey(new Uint8Array(31))).toThrow(RangeError);
});

test('the seat of a tablet is worked out from the shop’s key as a browser does it', async () => {
  const key = counting(16);
  const secret = await crypto.subtle.importKey('raw', key, 'HKDF', false, ['deriveBits']);
  for (const seat of seats) {
    const info = bytes(`tallywright seat ${seat}`);
    const how = { name: 'HKDF', hash: 'SHA-256', salt: new Uint8Array(), info };
    const raw = new Uint8Array(await crypto.subtle.deriveBits(how, secret, 256));
    expect(seatKey(key, seat)).toEqual(userKey(raw));
  }
});

test('there is a seat for each letter that a station can have', () => {
  expect(new Set(seats).size).toBe(codeLetters.length);
});

test('a new shop has a name that is a word of the broker, and keys that differ', () => {
  const { shop, key, admin, watch } = newShopKeys(countingRandom());
  expect(shop).toMatch(/^[a-z2-9]{10}$/);
  expect([key.length, admin.length, watch.length]).toEqual([16, 32, 32]);
  expect(admin).not.toEqual(watch);
});

test('the signs of a name are drawn alike: a byte past the last whole round is drawn anew', () => {
  const drawn = [255, 250, ...Array.from({ length: 10 }, () => 0)];
  const random = (length: number) =>
    length === 1 ? Uint8Array.of(drawn.shift() ?? 0) : new Uint8Array(length);
  expect(newShopKeys(random).shop).toBe('aaaaaaaaaa');
  expect(drawn).toEqual([]);
});

test('what the broker is told holds no secret', () => {
  const keys = newShopKeys(countingRandom());
  const told = JSON.stringify(openPart(keys));
  const secrets = [keys.key, keys.admin, keys.watch].flatMap((secret) => [
    Buffer.from(secret).toString('hex'),
    Buffer.from(secret).toString('base64url'),
  ]);
  for (const secret of [...secrets, ...seats.map((seat) => seatKey(keys.key, seat).seed)]) {
    expect(told).not.toContain(secret);
  }
});

test('the joining link says address, shop and key behind the #, which goes to no server', () => {
  const keys = newShopKeys(countingRandom());
  const link = joiningLink(keys, { origin: 'https://tally.lan:8443', address: 'wss://tally.lan:8443/sync' });
  const { pathname, hash } = new URL(link);
  expect(pathname).toBe('/');
  const [, , said = ''] = hash.split('/');
  expect(JSON.parse(Buffer.from(said, 'base64url').toString())).toEqual({
    v: 1,
    a: 'wss://tally.lan:8443/sync',
    s: keys.shop,
    k: Buffer.from(keys.key).toString('base64url'),
  });
});
