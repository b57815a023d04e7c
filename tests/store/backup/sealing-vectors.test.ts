import { createCipheriv, createHash, hkdfSync, pbkdf2Sync } from 'node:crypto';
import { wordlist } from '@scure/bip39/wordlists/english.js';
import { describe, expect, test } from 'vitest';
import {
  type Bytes,
  decrypted,
  entropyOf,
  keyOfEntropy,
  keyOfPassphrase,
  wordsOf,
} from '../../../src/store/backup/sealing-keys.ts';

const hex = (digits: string): Bytes => Uint8Array.from(Buffer.from(digits, 'hex'));
const aesKey = (raw: Bytes) => crypto.subtle.importKey('raw', raw, 'AES-GCM', false, ['decrypt']);

/** What only the holder of `raw` can have made, by node:crypto. */
function sealedBy(raw: Uint8Array, nonce: Uint8Array): Bytes {
  const cipher = createCipheriv('aes-256-gcm', raw, nonce);
  return Uint8Array.from(Buffer.concat([cipher.update('the same key'), cipher.final(), cipher.getAuthTag()]));
}

async function expectSameKey(key: CryptoKey, raw: Uint8Array): Promise<void> {
  const iv = new Uint8Array(12);
  const opened = await decrypted(key, { iv, bytes: sealedBy(raw, iv) });
  expect(Buffer.from(opened ?? []).toString()).toBe('the same key');
}

/**
 * Test cases 13, 14 and 16 of D. McGrew, J. Viega, "The Galois/Counter Mode of Operation (GCM)" (2004/2005), on which
 * NIST SP 800-38D rests. The values are from memory; node:crypto agrees with them below.
 */
describe('AES-256-GCM opens the published test cases', () => {
  const key16 = 'feffe9928665731c6d6a8f9467308308feffe9928665731c6d6a8f9467308308';
  const plain16 =
    'd9313225f88406e5a55909c5aff5269a86a7a9531534f7da2e4c303d8a318a721c3c0c95956809532fcf0e2449a6b525b16aedf5aa0de657ba637b39';
  const cipher16 =
    '522dc1f099567d07f47f37a32a84427d643a8cdcbfe5c0c97598a2bd2555d1aa8cb08e48590dbb3da7b08b1056828838c5f61e6393ba7a0abcc9f662';
  const data16 = 'feedfacedeadbeeffeedfacedeadbeefabaddad2';

  test.each([
    [13, '0'.repeat(64), '0'.repeat(24), '', '', '', '530f8afbc74536b9a963b4f1c4cb738b'],
    [
      14,
      '0'.repeat(64),
      '0'.repeat(24),
      '',
      '0'.repeat(32),
      'cea7403d4d606b6e074ec5d3baf39d18',
      'd0d1c8a799996bf0265b98b5d48ab919',
    ],
    [16, key16, 'cafebabefacedbaddecaf888', data16, plain16, cipher16, '76fc6ece0f4e1768cddf8853bb2d551b'],
  ])('case %i', async (_case, key, iv, data, plain, cipher, tag) => {
    const bytes = hex(cipher + tag);
    const opened = await decrypted(await aesKey(hex(key)), { iv: hex(iv), bytes, data: hex(data) });
    expect(Buffer.from(opened ?? [1]).toString('hex')).toBe(plain);
    const independent = createCipheriv('aes-256-gcm', hex(key), hex(iv)).setAAD(hex(data));
    const again = Buffer.concat([
      independent.update(hex(plain)),
      independent.final(),
      independent.getAuthTag(),
    ]);
    expect(again.toString('hex')).toBe(cipher + tag);
    bytes[bytes.length - 1] = (bytes.at(-1) ?? 0) ^ 1;
    expect(await decrypted(await aesKey(hex(key)), { iv: hex(iv), bytes, data: hex(data) })).toBeUndefined();
  });
});

/** RFC 7914, section 11 (values from memory; node:crypto agrees): the first 32 of the 64 bytes given there. */
describe('PBKDF2-HMAC-SHA-256 gives the keys of RFC 7914', () => {
  test.each([
    ['passwd', 'salt', 1, '55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc'],
    ['Password', 'NaCl', 80_000, '4ddcd8f60b98be21830cee5ef22701f9641a4418d04c0414aeff08876b34ab56'],
  ])('%s, %s, %i rounds', async (password, salt, rounds, key) => {
    expect(pbkdf2Sync(password, salt, rounds, 32, 'sha256').toString('hex')).toBe(key);
    await expectSameKey(
      await keyOfPassphrase(password, { salt: Uint8Array.from(Buffer.from(salt)), rounds }),
      hex(key),
    );
  });
});

/** RFC 5869, appendix A.1 (from memory) shows that node:crypto does HKDF; our key is held to node's. */
test('the key of the words is the HKDF-SHA-256 of RFC 5869 of their bits', async () => {
  const info = hex('f0f1f2f3f4f5f6f7f8f9');
  const published = hkdfSync('sha256', hex('0b'.repeat(22)), hex('000102030405060708090a0b0c'), info, 42);
  expect(Buffer.from(published).toString('hex')).toBe(
    '3cb25f25faacd57a90434f64d0362f2a2d2d0a90cf1a5a4c5db02d56ecc4c5bf34007208d5b887185865',
  );
  const [entropy, salt] = [hex('7f'.repeat(16)), hex('21'.repeat(16))];
  const raw = hkdfSync('sha256', entropy, salt, 'tallywright recovery words', 32);
  await expectSameKey(await keyOfEntropy(entropy, salt), new Uint8Array(raw));
});

/** The English test vectors that BIP-39 names as its own (Trezor's python-mnemonic, vectors.json); from memory. */
describe('the recovery words are those of BIP-39', () => {
  test.each([
    ['00'.repeat(16), `${'abandon '.repeat(11)}about`],
    ['7f'.repeat(16), 'legal winner thank year wave sausage worth useful legal winner thank yellow'],
    ['80'.repeat(16), 'letter advice cage absurd amount doctor acoustic avoid letter advice cage above'],
    ['ff'.repeat(16), `${'zoo '.repeat(11)}wrong`],
    [
      '9e885d952ad362caeb4efe34a8e91bd2',
      'ozone drill grab fiber curtain grace pudding thank cruise elder eight picnic',
    ],
    [
      'c0ba5a8e914111210f2bd131f3d5e08d',
      'scheme spot photo card baby mountain device kick cradle pact join borrow',
    ],
    [
      '23db8160a31d3e0dca3688ed941adbf3',
      'cat swing flag economy stadium alone churn speed unique patch report train',
    ],
    [
      'f30f8c1da665478f49b001d94c5fc452',
      'vessel ladder alter error federal sibling chat ability sun glass valve picture',
    ],
  ])('%s', (entropy, sentence) => {
    const words = sentence.split(' ');
    expect(wordsOf(hex(entropy))).toEqual(words);
    expect(entropyOf(words)).toEqual(hex(entropy));
    // By the standard's own rule: the last four of the 132 bits are the first four of SHA-256 of the entropy.
    const bits = words.map((word) => wordlist.indexOf(word).toString(2).padStart(11, '0')).join('');
    const sum = createHash('sha256').update(hex(entropy)).digest()[0] ?? 0;
    expect(bits.slice(128)).toBe((sum >> 4).toString(2).padStart(4, '0'));
    expect(BigInt(`0b${bits.slice(0, 128)}`)).toBe(BigInt(`0x${entropy}`));
  });

  test('and no others: a wrong word, a word too few, a word exchanged', () => {
    const words = 'legal winner thank year wave sausage worth useful legal winner thank yellow'.split(' ');
    for (const wrong of [
      words.with(3, 'yeer'),
      words.slice(1),
      [...words, 'ash'],
      words.with(11, 'zoo'),
      [],
      ['', ''],
    ])
      expect(entropyOf(wrong)).toBeUndefined();
  });
});
