import { describe, expect, test } from 'vitest';
import { judgeWholeNumber, readWholeNumber } from '../../../src/domain/command/whole-number.ts';

const bounds = { least: 1, most: 50 };

describe('a count as a person types it', () => {
  test.each([
    ['7', 7],
    [' 12 ', 12],
    ['007', 7],
    ['+3', 3],
    ['5.0', 5],
    ['5,', 5],
    ['1e1', 10],
    ['1', 1],
    ['50', 50],
  ])('%j is read as %d', (typed, value) => {
    expect(readWholeNumber(typed, bounds)).toEqual({ ok: true, value });
  });

  test.each([
    ['', { kind: 'missing' }],
    ['   ', { kind: 'missing' }],
    ['0', { kind: 'too-small', least: 1 }],
    ['-3', { kind: 'too-small', least: 1 }],
    ['51', { kind: 'too-large', most: 50 }],
    ['1e9', { kind: 'too-large', most: 50 }],
    ['9'.repeat(400), { kind: 'too-large', most: 50 }],
    ['2.5', { kind: 'not-whole' }],
    ['2,5', { kind: 'not-whole' }],
    ['1,000', { kind: 'grouped' }],
    ['1.000', { kind: 'grouped' }],
    ['-2.500.000', { kind: 'grouped' }],
    ['ten', { kind: 'not-a-number' }],
    ['1 000', { kind: 'not-a-number' }],
    ['1.000,5', { kind: 'not-a-number' }],
    ['0x10', { kind: 'not-a-number' }],
    ['Infinity', { kind: 'not-a-number' }],
    ['NaN', { kind: 'not-a-number' }],
    ['--1', { kind: 'not-a-number' }],
    ['.', { kind: 'not-a-number' }],
    ['\u0665', { kind: 'not-a-number' }],
  ])('%j is refused: nothing is rounded or guessed', (typed, problem) => {
    expect(readWholeNumber(typed, bounds)).toEqual({ ok: false, problem });
  });
});

describe('a count as a number', () => {
  test.each([
    [Number.NaN, { kind: 'not-a-number' }],
    [Number.POSITIVE_INFINITY, { kind: 'too-large', most: 50 }],
    [Number.NEGATIVE_INFINITY, { kind: 'too-small', least: 1 }],
    [0.5, { kind: 'too-small', least: 1 }],
    [1.5, { kind: 'not-whole' }],
  ])('%d is refused', (value, problem) => {
    expect(judgeWholeNumber(value, bounds)).toEqual({ ok: false, problem });
  });

  test('both bounds are within', () => {
    expect([judgeWholeNumber(1, bounds).ok, judgeWholeNumber(50, bounds).ok]).toEqual([true, true]);
  });
});
