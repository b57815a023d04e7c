import { describe, expect, test } from 'vitest';
import { batchThatFits } from '../../../../src/domain/plan/purchase/batch-that-fits.ts';
import { payback } from '../../../../src/domain/plan/purchase/payback.ts';

describe('payback', () => {
  test('a press for some thousands against hours of hammering pins by hand (common practice, no source)', () => {
    // By hand: two pins a piece, a minute each by hammer and a tenth by press, at 30.00 an hour: 0.90 saved a piece, so
    // 2,700.00 take 3,000 pieces; at 250 a month a year.
    const each = { low: 60, likely: 90, high: 120 };
    expect(payback({ price: 270_000, savedEach: each, piecesAMonth: 250 })).toEqual({
      kind: 'after',
      pieces: { soonest: 2250, likely: 3000, latest: 4500 },
      months: { soonest: 9, likely: 12, latest: 18 },
    });
  });

  test('what may save nothing has no latest day, and what saves nothing at best is never paid back', () => {
    expect(payback({ price: 100, savedEach: { low: -1, likely: 1, high: 2 }, piecesAMonth: 10 })).toEqual({
      kind: 'after',
      pieces: { soonest: 50, likely: 100, latest: null },
      months: { soonest: 5, likely: 10, latest: null },
    });
    expect(payback({ price: 100, savedEach: { low: -2, likely: -1, high: 0 }, piecesAMonth: 10 })).toEqual({
      kind: 'never',
    });
  });

  test('without pieces there are no months, and what is free pays at once', () => {
    const savedEach = { low: 1, likely: 1, high: 1 };
    expect(payback({ price: 10, savedEach, piecesAMonth: 0 })).toMatchObject({ months: null });
    expect(payback({ price: 0, savedEach: { low: -1, likely: 0, high: 0 }, piecesAMonth: 1 })).toMatchObject({
      pieces: { soonest: 0, likely: 0, latest: 0 },
    });
  });

  test.each([-1, Number.NaN])('a price of %d is refused', (price) => {
    expect(() => payback({ price, savedEach: { low: 1, likely: 1, high: 1 }, piecesAMonth: 1 })).toThrow(
      RangeError,
    );
  });
});

describe('the batch that fits', () => {
  test('two minutes of turning a piece fill some 33 hours with 1,000 (common practice, no source)', () => {
    const two = { low: 2, likely: 2, high: 2 };
    expect(batchThatFits({ minutesEach: two, hoursAWeek: 33.34, weeks: 1 }).likely).toBe(1000);
  });

  test('the slower the work may be, the smaller the batch', () => {
    const minutesEach = { low: 18, likely: 20, high: 24 };
    expect(batchThatFits({ minutesEach, hoursAWeek: 30, weeks: 4 })).toEqual({
      low: 300,
      likely: 360,
      high: 400,
    });
    expect(batchThatFits({ minutesEach, hoursAWeek: 0, weeks: 4 })).toEqual({ low: 0, likely: 0, high: 0 });
  });

  test('work of no time is refused', () => {
    expect(() =>
      batchThatFits({ minutesEach: { low: 0, likely: 1, high: 1 }, hoursAWeek: 1, weeks: 1 }),
    ).toThrow(RangeError);
  });
});
