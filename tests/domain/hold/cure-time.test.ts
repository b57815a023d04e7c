import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { curesFrom, cureTime, timesAsLong } from '../../../src/domain/hold/cure-time.ts';
import { leastOf } from '../../../src/domain/log/place.ts';

const sheet = { cureMinutes: 720, leastMinutes: 240, ratedAt: 200 };

describe('the rule of thumb for warmth', () => {
  // Common practice, no source: half the time for each 10 °C more.
  test.each([
    [200, 200, 1],
    [200, 100, 2],
    [200, 300, 0.5],
    [230, 130, 2],
    [200, 0, 4],
    [200, 150, Math.SQRT2],
  ])('times given for %i/10 °C, in a shop of %i/10 °C, are %f times as long', (ratedAt, celsius, times) => {
    expect(timesAsLong({ ratedAt, celsius })).toBeCloseTo(times, 12);
  });

  test('says no more than eight times as long, however cold it is, and no less than an eighth', () => {
    expect(timesAsLong({ ratedAt: 200, celsius: -400 })).toBe(8);
    expect(timesAsLong({ ratedAt: 200, celsius: 1500 })).toBe(1 / 8);
  });
});

describe('the time of a cure', () => {
  test('is that of the data sheet where no temperature is said', () => {
    const asSheet = { recommended: 720, least: 240, celsius: null };
    expect(cureTime(sheet, null)).toEqual(asSheet);
    expect(cureTime({ ...sheet, ratedAt: null }, 50)).toEqual(asSheet);
    expect(cureTime(sheet, 200)).toEqual(asSheet);
  });

  test('is longer in the cold, the least time too', () => {
    expect(cureTime(sheet, 100)).toEqual({ recommended: 1440, least: 480, celsius: 100 });
    // 720 × 2^0.2 = 827.07, 240 × 2^0.2 = 275.69: rounded up.
    expect(cureTime(sheet, 180)).toEqual({ recommended: 828, least: 276, celsius: 180 });
  });

  test('is never shorter than the data sheet has it, unless the maker has confirmed that it may be', () => {
    expect(cureTime(sheet, 300)).toEqual({ recommended: 720, least: 240, celsius: null });
    expect(cureTime({ ...sheet, quickerWarm: true }, 300)).toEqual({
      ...{ recommended: 360, least: 120, celsius: 300 },
    });
    fc.assert(
      fc.property(fc.integer({ min: -500, max: 1500 }), fc.integer({ min: 0, max: 500 }), (at, ratedAt) => {
        const { recommended, least } = cureTime({ ...sheet, ratedAt }, at);
        expect(recommended).toBeGreaterThanOrEqual(720);
        expect(least).toBeGreaterThanOrEqual(240);
        expect(least).toBeLessThanOrEqual(recommended);
      }),
    );
  });

  test('without a least time is the recommended one from first to last', () => {
    expect(cureTime({ cureMinutes: 30 }, null)).toEqual({ recommended: 30, least: 30, celsius: null });
    expect(curesFrom(1000, cureTime({ cureMinutes: 30 }, null))).toEqual({ ready: 1000 + 30 * 60_000 });
  });

  test('stands in the place of the pieces as the moment they are ready, and what may be spared before', () => {
    const place = curesFrom(5000, cureTime(sheet, null));
    expect(place).toEqual({ ready: 5000 + 720 * 60_000, spare: 480 });
    expect(leastOf(place)).toBe(5000 + 240 * 60_000);
  });

  test('with a least time beyond the recommended one asks for no longer than that', () => {
    expect(cureTime({ cureMinutes: 60, leastMinutes: 90 }, null).least).toBe(60);
  });
});
