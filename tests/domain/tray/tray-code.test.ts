import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hasValidCheck } from '../../../src/domain/tray/check-character.ts';
import { codeAlphabet, codeDigits, codeLetters } from '../../../src/domain/tray/code-alphabet.ts';
import {
  longestCode,
  numberOfCode,
  parseTrayCode,
  type TrayCode,
  tidyCode,
  trayCode,
  traySystem,
} from '../../../src/domain/tray/tray-code.ts';

const isCode = (text: string) => parseTrayCode(text) === text;

/** Every text that differs from `code` in one character. */
function* wrongAtOnePlace(code: string): Generator<string> {
  for (let place = 0; place < code.length; place += 1) {
    for (const sign of codeAlphabet) {
      if (sign !== code[place]) yield code.slice(0, place) + sign + code.slice(place + 1);
    }
  }
}

/** Every text that differs from `code` in the order of two neighbours. */
function* swapped(code: string): Generator<string> {
  for (let place = 0; place + 1 < code.length; place += 1) {
    const [left = '', right = ''] = [code[place], code[place + 1]];
    if (left !== right) yield code.slice(0, place) + right + left + code.slice(place + 2);
  }
}

function slipsThatPass(codes: Iterable<TrayCode>): string[] {
  const passed: string[] = [];
  for (const code of codes) {
    for (const slips of [wrongAtOnePlace(code), swapped(code)]) {
      for (const slip of slips) if (isCode(slip)) passed.push(`${code} typed as ${slip}`);
    }
  }
  return passed;
}

function* numbers(letter: string, { from, to }: { from: number; to: number }): Generator<TrayCode> {
  for (let n = from; n <= to; n += 1) yield trayCode(letter, n);
}

test('thirteen letters are left when all that look like a digit or like another letter are taken out', () => {
  // B 8, D 0, I 1, O 0, Q 0, S 5, Z 2 look like digits; G C, L I, N M, U V, V U, Y V like letters.
  const lookAlikes = 'BDGILNOQSUVYZ';
  expect([...codeLetters, ...lookAlikes].sort().join('')).toBe('ABCDEFGHIJKLMNOPQRSTUVWXYZ');
  expect(codeLetters).toHaveLength(13);
  expect(codeAlphabet).toHaveLength(23);
  for (const letter of lookAlikes) expect(isCode(`${letter}17R`), letter).toBe(false);
});

describe('one slip of the finger is never another tray', () => {
  test.each([...codeLetters])(
    'no wrong character and no swap of neighbours in trays 1 to 2000 of station %s',
    (letter) => {
      expect(slipsThatPass(numbers(letter, { from: 1, to: 2000 }))).toEqual([]);
    },
    60_000,
  );

  test('nor in any tray up to 99,999', () => {
    const anyCode = fc.tuple(fc.constantFrom(...codeLetters), fc.integer({ min: 2001, max: 99_999 }));
    fc.assert(
      fc.property(anyCode, ([letter, n]) => {
        expect(slipsThatPass([trayCode(letter, n)])).toEqual([]);
      }),
      { numRuns: 2000 },
    );
  });

  test('a code ends in the letter that a hand reckons: A17 in R', () => {
    // A is 0, digits are themselves: ((0 × 2 + 1) × 2 + 7) × 2 = 18, which is 5 modulo 13; 14 − 5 = 9; R is number 9.
    expect([...codeLetters].filter((check) => isCode(`A17${check}`))).toEqual(['R']);
  });
});

describe('a tray code', () => {
  test.each([
    ['A', 1],
    ['A', 17],
    ['X', 9],
    ['T', 100],
    ['C', 2000],
    ['M', 99_999],
  ])('of station %s, tray %i, reads back', (letter, n) => {
    const code = trayCode(letter, n);
    expect(code.startsWith(`${letter}${n}`)).toBe(true);
    expect(code.length).toBeLessThanOrEqual(longestCode);
    expect(numberOfCode(code)).toBe(n);
    expect(hasValidCheck(code, traySystem)).toBe(true);
  });

  test('of a tray is never that of another', () => {
    const codes = [...codeLetters].flatMap((letter) => [...numbers(letter, { from: 1, to: 300 })]);
    expect(new Set(codes).size).toBe(13 * 300);
  });

  test.each([['a17r'], [' A17R '], ['A 17 R'], ['A-17-R'], ['A.17.R'], ['A–17–R'], ['a\t17\nr']])(
    'is read however it was typed: %j',
    (typed) => {
      expect(tidyCode(typed)).toBe('A17R');
      expect(parseTrayCode(typed)).toBe('A17R');
    },
  );

  test.each([
    ['nothing', ''],
    ['a letter alone', 'A'],
    ['no number', 'AK'],
    ['no check letter', 'A17'],
    ['a number that begins with nought', 'A017R'],
    ['the number nought', 'A0A'],
    ['six digits', 'A123456A'],
    ['a digit as check', 'A178'],
    ['two letters in front', 'AA17R'],
    ['letters of another script', 'А17R'],
    ['full-width digits', 'A１７R'],
    ['a line of its own after it', 'A17R\nA17R'],
  ])('is not %s', (_, typed) => {
    expect(parseTrayCode(typed)).toBeUndefined();
  });

  test.each([
    ['A', 0],
    ['A', -1],
    ['A', 1.5],
    ['A', 100_000],
    ['A', Number.NaN],
    ['B', 1],
    ['', 1],
    ['AA', 1],
    ['a', 1],
    ['7', 1],
  ])('cannot be made for letter %j and number %d', (letter, n) => {
    expect(() => trayCode(letter, n)).toThrow(RangeError);
  });

  test('holds only characters that the pad shows', () => {
    expect(codeDigits).toBe('0123456789');
    for (const code of numbers('P', { from: 1, to: 500 })) {
      expect([...code].filter((sign) => !codeAlphabet.includes(sign))).toEqual([]);
    }
  });
});
