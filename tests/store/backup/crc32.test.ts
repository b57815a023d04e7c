import { crc32 as zlibSum } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { crc32 } from '../../../src/store/backup/crc32.ts';

const ascii = (text: string) => new TextEncoder().encode(text);

describe('the sum of bytes', () => {
  test('is the published check value of CRC-32 for the digits 1 to 9', () => {
    // Catalogue of parametrised CRC algorithms (G. Cook), CRC-32/ISO-HDLC: check 0xcbf43926.
    expect(crc32(0, ascii('123456789'))).toBe(0xcbf4_3926);
    expect(crc32(0, ascii(''))).toBe(0);
  });

  test('is the same in one piece and in any two, wherever they lie in a buffer', () => {
    const bytes = Uint8Array.from({ length: 41 }, (_, at) => (at * 167 + 13) & 0xff);
    for (let from = 0; from < 9; from += 1)
      for (let cut = from; cut <= bytes.length; cut += 1) {
        const whole = crc32(0, bytes.subarray(from));
        expect(crc32(crc32(0, bytes.subarray(from, cut)), bytes.subarray(cut))).toBe(whole);
      }
  });

  test('is the one that others come to', () => {
    const bytes = Uint8Array.from({ length: 1000 }, (_, at) => (at * at * 31) & 0xff);
    for (let length = 0; length < bytes.length; length += 37)
      expect(crc32(0, bytes.subarray(0, length))).toBe(zlibSum(bytes.subarray(0, length)));
  });
});
