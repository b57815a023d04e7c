import jsQR from 'jsqr';
import { encode } from 'uqr';
import { describe, expect, test } from 'vitest';
import { qrSymbol, symbolPath } from '../../../src/domain/label/qr-symbol.ts';
import { shopSign } from '../../../src/domain/label/shop-sign.ts';
import { symbolText } from '../../../src/domain/label/symbol-text.ts';
import { codeLetters } from '../../../src/domain/tray/code-alphabet.ts';
import { parseTrayCode, trayCode } from '../../../src/domain/tray/tray-code.ts';

type Modules = readonly (readonly boolean[])[];

/** The symbol as pixels, with the blank margin that the standard wants. */
function pixelsOf(modules: Modules, scale = 4): { data: Uint8ClampedArray; side: number } {
  const side = (modules.length + 8) * scale;
  const data = new Uint8ClampedArray(side * side * 4).fill(255);
  for (let y = 0; y < side; y += 1)
    for (let x = 0; x < side; x += 1)
      if (modules[Math.floor(y / scale) - 4]?.[Math.floor(x / scale) - 4])
        data.fill(0, 4 * (y * side + x), 4 * (y * side + x) + 3);
  return { data, side };
}

function decoded(modules: Modules): string | undefined {
  const { data, side } = pixelsOf(modules);
  return jsQR(data, side, side)?.data;
}

/** Codewords of a symbol of version 1 under mask 010 (every third column), read as ISO/IEC 18004 places them. */
function codewordsOf(modules: Modules): number[] {
  const isFunction = (x: number, y: number) =>
    (x < 9 && y < 9) || (x > 12 && y < 9) || (x < 9 && y > 12) || x === 6 || y === 6;
  const bits: number[] = [];
  let upwards = true;
  for (let right = 20; right > 0; right -= 2) {
    if (right === 6) right -= 1;
    for (let step = 0; step < 21; step += 1) {
      const y = upwards ? 20 - step : step;
      for (const x of [right, right - 1])
        if (!isFunction(x, y)) bits.push(Number(modules[y]?.[x] !== (x % 3 === 0)));
    }
    upwards = !upwards;
  }
  return Array.from({ length: 26 }, (_, word) =>
    bits.slice(8 * word, 8 * word + 8).reduce((sum, bit) => 2 * sum + bit, 0),
  );
}

const hex = (text: string) => text.split(' ').map((byte) => Number.parseInt(byte, 16));

describe('the encoder', () => {
  test('gives the codewords of the worked example of ISO/IEC 18004, Annex I: “01234567” as 1-M', () => {
    const symbol = encode('01234567', { ecc: 'M', maskPattern: 2, border: 0 });
    expect(symbol.version).toBe(1);
    expect(codewordsOf(symbol.data)).toEqual(
      hex('10 20 0C 56 61 80 EC 11 EC 11 EC 11 EC 11 EC 11 A5 24 D4 C1 ED 36 C7 87 2C 55'),
    );
    expect(decoded(symbol.data)).toBe('01234567');
  });
});

describe('the symbol of a label', () => {
  const code = parseTrayCode(trayCode('A', 99_999));
  if (!code) throw new Error('no code');
  const longest = symbolText({ code, sign: shopSign([1, 2, 3, 4]) });

  test('is of version 1 at level Q, even of the longest code', () => {
    const modules = qrSymbol(longest);
    expect(modules.length).toBe(21);
    // Format information, ISO/IEC 18004 table C.1: level Q is 11, under the mask 10101 of its first five bits.
    const level = [modules[8]?.[0], modules[8]?.[1]].map((bit, index) => Number(bit) ^ (index === 0 ? 1 : 0));
    expect(level).toEqual([1, 1]);
    expect(decoded(modules)).toBe(longest);
  });

  test('is still read with a smear over seven of its modules', () => {
    const smeared = qrSymbol(longest).map((row, y) =>
      row.map((dark, x) => (y === 12 && x > 13 ? false : dark)),
    );
    expect(decoded(smeared)).toBe(longest);
  });

  test.each([...codeLetters].slice(0, 4))('is read back, of station %s', (letter) => {
    for (const number of [1, 17, 340, 12_345]) {
      const made = parseTrayCode(trayCode(letter, number));
      if (!made) throw new Error('no code');
      const text = symbolText({ code: made, sign: shopSign([number, 7, 11, number + 3]) });
      expect(decoded(qrSymbol(text))).toBe(text);
    }
  });

  test('is drawn as one path that covers each dark module once', () => {
    const modules = qrSymbol(longest);
    const drawn = modules.map((row) => row.map(() => 0));
    for (const [, x, y, length] of symbolPath(modules).matchAll(/M(\d+) (\d+)h(\d+)v1h-\3z/g))
      for (let step = 0; step < Number(length); step += 1) {
        const row = drawn[Number(y)] ?? [];
        row[Number(x) + step] = (row[Number(x) + step] ?? 0) + 1;
      }
    expect(drawn).toEqual(modules.map((row) => row.map(Number)));
    expect(symbolPath(modules).replaceAll(/M\d+ \d+h(\d+)v1h-\1z/g, '')).toBe('');
  });
});
