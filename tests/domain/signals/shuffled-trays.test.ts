import { describe, expect, test } from 'vitest';
import { seededRandom } from '../../../src/domain/chance/seeded-random.ts';
import { changeScan } from '../../../src/domain/signals/change-scan.ts';
import { chanceOfShuffled } from '../../../src/domain/signals/shuffled-trays.ts';
import { newestRun } from '../../../src/domain/signals/tally.ts';

function bothChances(
  counts: readonly number[],
  { seed, most }: { seed: number; most: number },
): { pieces: number; trays: number } {
  const run = newestRun({ counts, sizes: counts.map(() => 12) }, 3000);
  const { p: pieces, tail } = changeScan(run) ?? { p: 1, tail: 1 };
  return { pieces, trays: chanceOfShuffled(run, { tail, random: seededRandom(seed), most }) };
}

describe('what trays in random order would show', () => {
  test('two strange trays at the end of ten are a strange order of pieces, but one of 45 orders of trays, or two', () => {
    const counts = [0, 0, 0, 0, 0, 0, 0, 0, 9, 9];
    expect(bothChances(counts, { seed: 1, most: 1 }).pieces).toBeLessThan(1e-9);
    const seeds = Array.from({ length: 40 }, (_, at) => at + 1);
    const chances = seeds.map((seed) => bothChances(counts, { seed, most: 40_000 }).trays);
    // Both at the end or both at the start: 2 of 45. An answer that ends early is a twentieth too large on average.
    const mean = chances.reduce((sum, each) => sum + each, 0) / seeds.length;
    expect(mean / (2 / 45)).toBeGreaterThan(0.9);
    expect(mean / (2 / 45)).toBeLessThan(1.25);
  });

  test('trays of one piece say what pieces say', () => {
    const counts = Array.from({ length: 60 }, (_, at) => (at > 45 && at % 3 === 0 ? 1 : at === 20 ? 1 : 0));
    const run = newestRun({ counts, sizes: counts.map(() => 1) }, 3000);
    const { p = 1, tail = 1 } = changeScan(run) ?? {};
    // Only the first twenty that are as strange are waited for, so the chance is known within a fifth or so.
    const trays = chanceOfShuffled(run, { tail, random: seededRandom(8), most: 100_000 });
    expect(Math.abs(Math.log(trays / p))).toBeLessThan(0.7);
  });

  test('a change over many trays stays one, and is never said to be impossible', () => {
    const counts = Array.from({ length: 40 }, (_, at) => (at < 25 ? at % 2 : 3 + (at % 2)));
    expect(bothChances(counts, { seed: 5, most: 999 }).trays).toBe(1 / 1000);
  });
});
