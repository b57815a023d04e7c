import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seededRandom } from '../../../src/domain/chance/seeded-random.ts';
import { minutesPerPiece } from '../../../src/domain/statistics/minutes-per-piece.ts';
import { type Tap, tapGroups } from '../../../src/domain/statistics/tap-groups.ts';
import { type TrueWork, tapsOf } from './tap-makers.ts';

const one = (minutes: number | undefined): Tap => ({ minutes, pieces: 1 });

describe('taps are put together', () => {
  test('a dozen taps in a row after half an hour are a dozen pieces in half an hour', () => {
    const row = [one(30), ...Array.from({ length: 11 }, () => one(0.01))];
    expect(tapGroups([one(3), ...row, one(2)])).toEqual([
      { minutes: 3, pieces: 1 },
      { minutes: expect.closeTo(30.11, 9), pieces: 12 },
      { minutes: 2, pieces: 1 },
    ]);
  });

  test('a tap far quicker than the others belongs to the one before, though a hand could be so slow', () => {
    expect(tapGroups([one(10), one(12), one(0.5), one(11)])).toHaveLength(3);
    expect(tapGroups([one(1), one(1.2), one(0.5), one(1.1)])).toHaveLength(4);
  });

  test('pieces whose stretch has no known beginning are left out, and so is what was tapped with them', () => {
    expect(tapGroups([one(undefined), one(0), one(4)])).toEqual([{ minutes: 4, pieces: 1 }]);
    expect(tapGroups([one(0), one(4)])).toEqual([{ minutes: 4, pieces: 1 }]);
  });

  test('what is tapped as soon as a stage is entered is not added to the spell before', () => {
    expect(tapGroups([one(4), { minutes: 0.01, pieces: 12, begins: true }, one(5)])).toEqual([
      { minutes: 4, pieces: 1 },
      { minutes: 5, pieces: 1 },
    ]);
  });

  test('what is no tap is refused', () => {
    expect(() => tapGroups([{ minutes: -1, pieces: 1 }])).toThrow(RangeError);
    expect(() => tapGroups([{ minutes: 1, pieces: 0 }])).toThrow(RangeError);
    expect(() => tapGroups([{ minutes: Number.NaN, pieces: 1 }])).toThrow(RangeError);
  });
});

describe('edges', () => {
  test('of no tap, and of taps at one instant, nothing is known yet', () => {
    expect(minutesPerPiece([])).toBeUndefined();
    expect(minutesPerPiece([one(0), one(0)])).toBeUndefined();
    expect(minutesPerPiece([one(undefined)])).toBeUndefined();
    expect(() => minutesPerPiece([one(1)], { level: 0 })).toThrow(RangeError);
  });

  test('one stretch has a time but no interval', () => {
    const time = minutesPerPiece([{ minutes: 36, pieces: 12 }]);
    expect(time?.mean).toBeCloseTo(3, 1);
    expect(time?.meanInterval).toBeUndefined();
    expect(time?.breaks).toEqual({ stretches: 0, minutes: 0, pieces: 0 });
  });

  test('a break is told apart, with its minutes', () => {
    const time = minutesPerPiece([...[3, 2, 4, 3, 3, 2, 4].map(one), one(200), one(3)]);
    expect(time?.breaks).toEqual({ stretches: 1, minutes: 200, pieces: 1 });
    expect(time?.mean).toBeGreaterThan(2.7);
    expect(time?.mean).toBeLessThan(3.3);
  });

  test('twice as slow is twice the time, whatever the taps', () => {
    const taps = fc.array(
      fc.record({
        minutes: fc.double({ min: 0.5, max: 200, noNaN: true }),
        pieces: fc.integer({ min: 1, max: 20 }),
      }),
      { minLength: 1, maxLength: 40 },
    );
    fc.assert(
      fc.property(taps, (list) => {
        const time = minutesPerPiece(list);
        const slow = minutesPerPiece(list.map(({ minutes, pieces }) => ({ minutes: 2 * minutes, pieces })));
        // Fewer taps are put together when all are slower, where some come within two seconds; none do here.
        expect((slow?.mean ?? 0) / (time?.mean ?? 1)).toBeCloseTo(2, 6);
        for (const figure of [time?.mean, time?.median, time?.cv, ...(time?.meanInterval ?? [])]) {
          expect(Number.isFinite(figure)).toBe(true);
        }
        expect(time?.median).toBeLessThanOrEqual(time?.mean ?? 0);
      }),
    );
  });
});

describe('with one tap in ten in bulk and three in a hundred after a forgotten pause', () => {
  const works: TrueWork[] = [0.2, 0.4, 0.6].flatMap((cv) =>
    (['one-tap', 'taps-in-a-row'] as const).map((bulk) => ({
      mean: 2.5,
      cv,
      bulk,
      pause: [10, 90] as const,
    })),
  );

  test.each(works)('$cv of scatter, $bulk: mean and median within 5 %% of the truth over shops', (work) => {
    const random = seededRandom(20);
    const shops = 60;
    const sums = { mean: 0, median: 0, cv: 0, held: 0 };
    for (let shop = 0; shop < shops; shop += 1) {
      const time = minutesPerPiece(tapsOf(work, { taps: 250, random }));
      sums.mean += (time?.mean ?? 0) / work.mean / shops;
      sums.median += ((time?.median ?? 0) / work.mean / shops) * Math.sqrt(1 + work.cv ** 2);
      sums.cv += (time?.cv ?? 0) / work.cv / shops;
      const [low, high] = time?.meanInterval ?? [1, 0];
      if (low <= work.mean && work.mean <= high) sums.held += 1 / shops;
    }
    // Of the average over 60 shops: the standard error is 0.5 % at a CV of 0.6.
    expect(Math.abs(sums.mean - 1)).toBeLessThan(0.025);
    expect(Math.abs(sums.median - 1)).toBeLessThan(0.025);
    expect(Math.abs(sums.cv - 1)).toBeLessThan(0.04);
    // Nine in ten are meant; a pause now and then that is no longer than a slow piece costs some.
    expect(sums.held).toBeGreaterThan(0.75);
    expect(sums.held).toBeLessThan(0.99);
  });

  test('a long row of taps comes within 5 % in each shop', () => {
    const random = seededRandom(21);
    for (const work of works) {
      const { mean = 0 } = minutesPerPiece(tapsOf(work, { taps: 1500, random })) ?? {};
      expect(Math.abs(mean / work.mean - 1)).toBeLessThan(0.05);
    }
  });
});
