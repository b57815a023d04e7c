import { expect, test } from 'vitest';
import { seedFrom } from './seed.ts';

test('a run repeats the seed that it is given', () => {
  expect(seedFrom({ SEED: '42', CI: 'true' }, 7)).toBe(42);
  expect(seedFrom({ SEED: '0' }, 7)).toBe(0);
});

test('a run by hand draws its own seed', () => {
  expect(seedFrom({}, 7)).toBe(7);
  expect(seedFrom({ SEED: '' }, 7)).toBe(7);
});

test('a run by a machine is refused without a seed', () => {
  expect(() => seedFrom({ CI: 'true' }, 7)).toThrow('SEED=20260301');
});

test.each(['ten', '1.5', '-1', '2147483648'])('%s is no seed', (SEED) => {
  expect(() => seedFrom({ SEED }, 7)).toThrow('no whole number');
});
