import { describe, expect, test } from 'vitest';
import {
  type NumberEntry,
  type NumberLimits,
  readNumber,
  stepped,
  withoutLast,
  withSign,
  writeNumber,
} from '../../../src/ui/entry/number-entry.ts';

const inTray: NumberLimits = { least: 0, most: 24 };

describe('reading what was typed', () => {
  test.each<[string, NumberLimits, NumberEntry]>([
    ['', inTray, { kind: 'nothing' }],
    ['   ', inTray, { kind: 'nothing' }],
    ['0', inTray, { kind: 'number', value: 0 }],
    ['24', inTray, { kind: 'number', value: 24 }],
    ['007', inTray, { kind: 'number', value: 7 }],
    ['25', inTray, { kind: 'refused', why: 'above', most: 24 }],
    ['-1', inTray, { kind: 'refused', why: 'below', least: 0 }],
    ['−1', inTray, { kind: 'refused', why: 'below', least: 0 }],
    ['2.5', inTray, { kind: 'refused', why: 'too-fine', decimals: 0 }],
    ['2.5', { decimals: 1 }, { kind: 'number', value: 2.5 }],
    ['2,5', { decimals: 1 }, { kind: 'number', value: 2.5 }],
    ['6,15', { decimals: 1 }, { kind: 'refused', why: 'too-fine', decimals: 1 }],
    ['1,204', inTray, { kind: 'refused', why: 'too-fine', decimals: 0 }],
    ['12x', inTray, { kind: 'refused', why: 'not-a-number' }],
    ['1e3', {}, { kind: 'refused', why: 'not-a-number' }],
    ['0x10', {}, { kind: 'refused', why: 'not-a-number' }],
    ['.', { decimals: 1 }, { kind: 'refused', why: 'not-a-number' }],
    ['5.', { decimals: 1 }, { kind: 'refused', why: 'not-a-number' }],
    ['Infinity', {}, { kind: 'refused', why: 'not-a-number' }],
    ['-3', {}, { kind: 'number', value: -3 }],
  ])('"%s" within %o is %o', (typed, limits, entry) => {
    expect(readNumber(typed, limits)).toEqual(entry);
  });

  test('unknown is not zero', () => {
    expect(readNumber('', inTray)).not.toEqual(readNumber('0', inTray));
  });
});

describe('stepping', () => {
  test.each([
    ['', 1, '1'],
    ['', -1, '-1'],
    ['5', 1, '6'],
    ['0', -1, '-1'],
    ['24', 1, '25'],
    ['12x', 1, '12x'],
  ])('"%s" by %i is "%s": a step too far stays to be seen and refused', (typed, by, expected) => {
    expect(stepped(typed, by)).toBe(expected);
  });

  test('by a tenth adds no crumbs', () => {
    expect(stepped('0.2', 0.1, 1)).toBe('0.3');
  });

  test('from a comma goes on', () => {
    expect(stepped('6,1', 0.1, 1)).toBe('6.2');
  });
});

describe('typing on the pad', () => {
  test.each([
    ['', '7', '7'],
    ['0', '7', '7'],
    ['0', '0', '0'],
    ['10', '0', '100'],
    ['', '.', '0.'],
    ['3', ',', '3,'],
    ['3,1', ',', '3,1'],
    ['3.1', ',', '3.1'],
    ['0', '.', '0.'],
  ])('"%s" and then "%s" is "%s"', (typed, sign, expected) => {
    expect(withSign(typed, sign)).toBe(expected);
  });

  test.each([
    ['', ''],
    ['12', '1'],
    ['1', ''],
  ])('"%s" erased is "%s"', (typed, expected) => {
    expect(withoutLast(typed)).toBe(expected);
  });
});

test.each([
  [3, 0, '3'],
  [2.50001, 2, '2.5'],
  [-0.04, 1, '0'],
])('%d with %i decimals is written "%s"', (value, decimals, expected) => {
  expect(writeNumber(value, decimals)).toBe(expected);
});
