import { expect, test } from 'vitest';
import { fuzzBackups } from '../../support/fuzz-backups.ts';
import { fuzzPhotoCopies } from '../../support/fuzz-photo-copies.ts';

const runs = 500;
const seed = Number(process.env.SEED);

test(`${runs} spoilt backups: none throws, none is worked on without end, none changes the shop`, {
  timeout: 120_000,
}, () => {
  const { read, refused, offered, unharmed, ...rest } = fuzzBackups(runs, seed);
  expect(rest).toEqual({ runs, threw: 0, overworked: 0, invented: 0, unnamed: 0, changed: 0 });
  // The ways of spoiling are worth something: many files are read in part, many refused, few left whole.
  expect(read + refused).toBe(runs);
  expect(read).toBeGreaterThan(runs / 4);
  expect(refused).toBeGreaterThan(runs / 50);
  expect(offered).toBeGreaterThan(0);
  expect(unharmed).toBeLessThan(runs / 3);
});

test('the same seed spoils the same files', () => {
  expect(fuzzBackups(20, 4)).toEqual(fuzzBackups(20, 4));
});

test(`${runs} spoilt copies with photos: no photo and no entry is invented, and no damage goes unsaid`, {
  timeout: 120_000,
}, async () => {
  const { read, refused, offered, unharmed, ...rest } = await fuzzPhotoCopies(runs, seed);
  expect(rest).toEqual({ runs, threw: 0, invented: 0, unnamed: 0 });
  expect(read + refused).toBe(runs);
  expect(Math.min(read - unharmed, refused, unharmed)).toBeGreaterThan(0);
  expect(offered).toBeGreaterThan(runs);
});
