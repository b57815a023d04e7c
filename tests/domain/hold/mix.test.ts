import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Adhesive,
  adhesiveFor,
  finishFor,
  isTooLittle,
  mixesInTime,
} from '../../../src/domain/hold/mix.ts';
import { holdRounds } from '../../../src/domain/hold/rounds.ts';

const glue: Adhesive = {
  ...{ kind: 'adhesive', gramsEach: 150, resin: 10_000, hardener: 5000, by: 'weight', densities: null },
  ...{ wastePercent: 0, potMinutes: 30, secondsEach: null },
};
const byVolume: Adhesive = { ...glue, by: 'volume', resin: 100, hardener: 100 };
const densities = { resin: 115, hardener: 100 };

describe('adhesive for a round', () => {
  test('is pieces times grams, parted by the ratio', () => {
    // By hand: 24 × 1.5 g = 36 g; 100 : 50 makes 24 g and 12 g.
    expect(adhesiveFor(24, glue)).toEqual({
      ...{ mixed: 36, weighed: { resin: 24, hardener: 12 }, measured: null },
    });
  });

  test('is so much more that what stays in the cup is the stated share of what is mixed', () => {
    // By hand: 36 g ÷ 0.9 = 40 g.
    const { mixed, weighed } = adhesiveFor(24, { ...glue, wastePercent: 10 });
    expect(mixed).toBeCloseTo(40, 12);
    expect(weighed?.resin).toBeCloseTo(26.6667, 4);
    expect(weighed?.hardener).toBeCloseTo(13.3333, 4);
  });

  test('by volume is weighed by the densities, and measured as well', () => {
    // By hand: 1 : 1 by volume at 1.15 and 1.00 g/ml is 115 : 100 by weight; 43 g is 23 g and 20 g, 20 ml of each.
    const { weighed, measured } = adhesiveFor(43, { ...byVolume, gramsEach: 100, densities });
    expect(weighed?.resin).toBeCloseTo(23, 12);
    expect(weighed?.hardener).toBeCloseTo(20, 12);
    expect(measured?.resin).toBeCloseTo(20, 12);
    expect(measured?.hardener).toBeCloseTo(20, 12);
  });

  test('by volume without densities cannot be weighed, and says so', () => {
    expect(adhesiveFor(24, byVolume)).toEqual({ mixed: 36, weighed: null, measured: null });
  });

  test('adds up to what is mixed, in the stated ratio, whatever that is', () => {
    const hundredths = fc.integer({ min: 1, max: 1_000_000 });
    fc.assert(
      fc.property(
        fc.record({ resin: hundredths, hardener: hundredths, gramsEach: hundredths }),
        fc.option(fc.record({ resin: hundredths, hardener: hundredths })),
        fc.integer({ min: 0, max: 90 }),
        fc.integer({ min: 1, max: 9999 }),
        (parts, dense, wastePercent, pieces) => {
          const by = dense ? 'volume' : 'weight';
          const mix = { ...glue, ...parts, by, densities: dense, wastePercent } as const;
          const { mixed, weighed, measured } = adhesiveFor(pieces, mix);
          if (!weighed) throw new Error('it can be weighed');
          const close = (a: number, b: number) => Math.abs(a - b) <= 1e-9 * Math.abs(b);
          expect(close(weighed.resin + weighed.hardener, mixed)).toBe(true);
          expect(close(mixed * (1 - wastePercent / 100), (pieces * parts.gramsEach) / 100)).toBe(true);
          const told = measured ?? weighed;
          expect(close(told.resin * parts.hardener, told.hardener * parts.resin)).toBe(true);
        },
      ),
    );
  });

  test('is too little for a scale of tenths where one of them is more than 5 % of the lesser part', () => {
    const of = (grams: number) => isTooLittle({ ...adhesiveFor(1, { ...glue, gramsEach: grams * 100 }) });
    // A third of it is hardener: 2 g of that are 20 tenths.
    expect([of(5.9), of(6.1)]).toEqual([true, false]);
    expect(isTooLittle(adhesiveFor(1, byVolume))).toBe(false);
  });
});

describe('rounds', () => {
  test('are as many as are counted by filling one after the other', () => {
    for (let capacity = 1; capacity <= 30; capacity += 1) {
      for (let pieces = 0; pieces <= 100; pieces += 1) {
        const filled: number[] = [];
        for (let left = pieces; left > 0; left -= capacity) filled.push(Math.min(left, capacity));
        expect(holdRounds(pieces, capacity)).toEqual({
          ...{ rounds: filled.length, each: filled[0] ?? 0, last: filled.at(-1) ?? 0 },
        });
      }
    }
  });

  test('without a limit are one, or none for no pieces', () => {
    expect(holdRounds(500, null)).toEqual({ rounds: 1, each: 500, last: 500 });
    expect(holdRounds(0, null)).toEqual({ rounds: 0, each: 0, last: 0 });
  });

  test.each([
    [1.5, 2],
    [-1, 2],
    [2, 0],
    [2, 1.5],
    [Number.NaN, 2],
  ])('of %f pieces in %f places are refused', (pieces, capacity) => {
    expect(() => holdRounds(pieces, capacity)).toThrow(RangeError);
  });
});

describe('mixes', () => {
  test('take no more pieces than are spread within the pot life', () => {
    // By hand: 30 min at 90 s are 20 pieces; 24 pieces are two mixes, of 12 each.
    expect(mixesInTime(24, { potMinutes: 30, secondsEach: 90 })).toEqual([{ mixes: 2, pieces: 12 }]);
    expect(mixesInTime(20, { potMinutes: 30, secondsEach: 90 })).toEqual([{ mixes: 1, pieces: 20 }]);
    // 91 s: the twentieth piece would be late.
    expect(mixesInTime(20, { potMinutes: 30, secondsEach: 91 })).toEqual([{ mixes: 2, pieces: 10 }]);
    // By hand: five of 9 and two of 8 are 61; six could be 54 at most.
    expect(mixesInTime(61, { potMinutes: 30, secondsEach: 200 })).toEqual([
      { mixes: 5, pieces: 9 },
      { mixes: 2, pieces: 8 },
    ]);
  });

  test('are as few as the pot life allows, for all the pieces, and no two differ by more than one', () => {
    const whole = fc.integer({ min: 1, max: 2000 });
    fc.assert(
      fc.property(whole, fc.integer({ min: 1, max: 60 }), (pieces, most) => {
        const parts = mixesInTime(pieces, { potMinutes: most, secondsEach: 60 }) ?? [];
        const sizes = parts.flatMap((part) => Array<number>(part.mixes).fill(part.pieces));
        expect(sizes.reduce((sum, n) => sum + n, 0)).toBe(pieces);
        expect(Math.max(...sizes)).toBeLessThanOrEqual(most);
        expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
        expect((sizes.length - 1) * most).toBeLessThan(pieces);
      }),
    );
  });

  test('are none where a piece takes longer than the pot life', () => {
    expect(mixesInTime(24, { potMinutes: 1, secondsEach: 61 })).toBeNull();
  });
});

test('a coat is pieces times millilitres, with what stays in the brush', () => {
  // By hand: 40 × 1.2 ml ÷ 0.8 = 60 ml.
  const coat = { kind: 'finish', mlEach: 120, recoatFrom: null, recoatUntil: null } as const;
  expect(finishFor(40, { ...coat, wastePercent: 20 })).toBeCloseTo(60, 12);
});
