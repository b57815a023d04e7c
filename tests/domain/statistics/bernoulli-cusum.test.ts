import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seededRandom } from '../../../src/domain/chance/seeded-random.ts';
import { bernoulliCusum, flawWeight } from '../../../src/domain/statistics/bernoulli-cusum.ts';
import {
  bernoulliCusumAlarm,
  bernoulliCusumArl,
  bernoulliCusumThreshold,
} from '../../../src/domain/statistics/bernoulli-cusum-run.ts';

const rare = { p0: 0.05, p1: 0.1 };

describe('the sums', () => {
  test('a flawed piece weighs 13 good ones when 10 % must be told from 5 % (ln 2 ÷ ln(0.95 ÷ 0.90) = 12.8)', () => {
    expect(flawWeight(rare)).toBe(13);
  });

  test('a signal says since when: the first piece after the sum was last 0', () => {
    const flawed = [true, ...Array.from({ length: 13 }, () => false), false, true, true];
    const { sums, signal } = bernoulliCusum(flawed, { ...rare, threshold: 26 });
    expect(sums.slice(0, 3)).toEqual([13, 12, 11]);
    expect(sums.slice(-4)).toEqual([0, 0, 13, 26]);
    expect(signal).toEqual({ index: 16, since: 15 });
  });

  test('good pieces alone never signal, and of no pieces nothing is known', () => {
    expect(bernoulliCusum([false, false], { ...rare, threshold: 1 }).signal).toBeUndefined();
    expect(bernoulliCusum([], { ...rare, threshold: 1 })).toEqual({ sums: [], signal: undefined });
  });
});

describe('the run length, exactly', () => {
  test('with a threshold of one flawed piece it is the wait for the first: 1 ÷ p', () => {
    const chain = { ...rare, threshold: 13, flawed: 0.05 };
    expect(bernoulliCusumArl(chain)).toBeCloseTo(20, 10);
    expect(bernoulliCusumAlarm(chain, 10)).toBeCloseTo(1 - 0.95 ** 10, 12);
  });

  test('within two pieces the chance of a signal at the second flawed one is p² (by hand)', () => {
    expect(bernoulliCusumAlarm({ ...rare, threshold: 26, flawed: 0.05 }, 2)).toBeCloseTo(0.0025, 15);
  });

  test('the chances of a first signal at each piece add up to its mean', () => {
    const chain = { ...rare, threshold: 40, flawed: 0.2 };
    let mean = 0;
    // It signals after 23 pieces in the mean: what would still be quiet after 500 is less than is looked at.
    for (let piece = 0; piece < 500; piece += 1) mean += 1 - bernoulliCusumAlarm(chain, piece);
    expect(mean).toBeCloseTo(bernoulliCusumArl(chain), 6);
  });

  test('simulated shops find it so (mean of 20,000 runs within 2 %)', () => {
    const random = seededRandom(1999);
    const chain = { ...rare, threshold: 30, flawed: 0.07 };
    let pieces = 0;
    for (let run = 0; run < 20_000; run += 1) {
      for (let sum = 0; sum < chain.threshold; pieces += 1) {
        sum = Math.max(0, sum + (random() < chain.flawed ? flawWeight(rare) : -1));
      }
    }
    expect(Math.abs(pieces / 20_000 / bernoulliCusumArl(chain) - 1)).toBeLessThan(0.02);
  });

  test('nothing flawed never signals, everything flawed does so at once', () => {
    expect(bernoulliCusumArl({ ...rare, threshold: 26, flawed: 0 })).toBe(Number.POSITIVE_INFINITY);
    expect(bernoulliCusumAlarm({ ...rare, threshold: 26, flawed: 0 }, 1000)).toBe(0);
    expect(bernoulliCusumArl({ ...rare, threshold: 26, flawed: 1 })).toBe(2);
  });
});

describe('a threshold for a stated chance of a false alarm', () => {
  test('keeps to it, and one less would not', () => {
    const shares = fc.tuple(fc.integer({ min: 5, max: 150 }), fc.integer({ min: 15, max: 40 }));
    fc.assert(
      fc.property(shares, fc.integer({ min: 1, max: 300 }), ([usual, times], within) => {
        const p0 = usual / 1000;
        const p1 = Math.min(0.9, (p0 * times) / 10);
        const threshold = bernoulliCusumThreshold({ p0, p1, within, falseAlarm: 0.05 });
        const alarm = (at: number) => bernoulliCusumAlarm({ p0, p1, threshold: at, flawed: p0 }, within);
        expect(alarm(threshold)).toBeLessThanOrEqual(0.05);
        if (threshold > 1) expect(alarm(threshold - 1)).toBeGreaterThan(0.05);
      }),
      { numRuns: 40 },
    );
  });
});

test('shares and thresholds that cannot be are refused', () => {
  expect(() => flawWeight({ p0: 0.1, p1: 0.1 })).toThrow(RangeError);
  expect(() => bernoulliCusumArl({ ...rare, threshold: 0, flawed: 0.1 })).toThrow(RangeError);
  expect(() => bernoulliCusumAlarm({ ...rare, threshold: 5, flawed: 1.1 }, 5)).toThrow(RangeError);
  expect(() => bernoulliCusumThreshold({ ...rare, within: 5, falseAlarm: 0 })).toThrow(RangeError);
});
