import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { shopDayText } from '../../../src/domain/log/ids.ts';
import { dayAfter, shopDay, zoneAt } from '../../../src/domain/log/zone.ts';

/** A moment in UTC: '2026-10-25 00:30'. */
const utc = (text: string) => Date.parse(`${text.replace(' ', 'T')}Z`);
const day = (text: string) => v.parse(shopDayText, text);
const london = { zone: 'Europe/London', startHour: 4 };
const hour = 3_600_000;

/** Changes of the clocks in London in 2026: 29 March 01:00 UTC forward, 25 October 01:00 UTC back (IANA zone data). */
describe('the shop day begins at four in the morning by the shop clock', () => {
  test.each([
    ['2026-03-02 09:00', '2026-03-02', 'a morning in winter'],
    ['2026-03-02 03:59', '2026-03-01', 'just before four the evening before goes on'],
    ['2026-03-02 04:00', '2026-03-02', 'at four the new day begins'],
    ['2026-03-29 00:30', '2026-03-28', 'half past midnight, before the clocks go forward'],
    ['2026-03-29 01:30', '2026-03-28', 'half past two by the shop clock: the hour from one to two never was'],
    ['2026-03-29 02:59', '2026-03-28', 'one minute to four, summer time'],
    ['2026-03-29 03:00', '2026-03-29', 'four o’clock summer time'],
    ['2026-10-25 00:30', '2026-10-24', 'the first half past one of the night when the clocks go back'],
    ['2026-10-25 01:30', '2026-10-24', 'the second half past one of the same night'],
    ['2026-10-25 03:59', '2026-10-24', 'one minute to four, winter time'],
    ['2026-10-25 04:00', '2026-10-25', 'four o’clock winter time'],
    ['2026-10-25 23:30', '2026-10-25', 'the evening of the day of 25 hours'],
    ['2026-12-31 23:59', '2026-12-31', 'the last minute of the year'],
    ['2027-01-01 03:00', '2026-12-31', 'work past midnight counts to the old year'],
    ['2028-02-29 12:00', '2028-02-29', 'a leap day'],
  ])('%s UTC is of %s: %s', (moment, expected) => {
    expect(shopDay(utc(moment), london)).toBe(expected);
  });

  test('a shop that begins its day at midnight has the calendar day', () => {
    const midnight = { zone: 'Europe/London', startHour: 0 };
    expect(shopDay(utc('2026-07-01 23:30'), midnight)).toBe('2026-07-02');
    expect(shopDay(utc('2026-01-01 23:30'), midnight)).toBe('2026-01-01');
  });

  test.each([
    ['Pacific/Kiritimati', '2026-06-01 15:00', '2026-06-02'],
    ['Pacific/Pago_Pago', '2026-06-01 14:00', '2026-05-31'],
    ['Asia/Kathmandu', '2026-06-01 22:14', '2026-06-01'],
    ['Asia/Kathmandu', '2026-06-01 22:15', '2026-06-02'],
    ['America/New_York', '2026-11-01 06:30', '2026-10-31'],
  ])('a shop in %s at %s UTC writes %s', (zone, moment, expected) => {
    expect(shopDay(utc(moment), { zone, startHour: 4 })).toBe(expected);
  });
});

describe('the zone at a moment', () => {
  test.each([
    ['Europe/London', '2026-03-29 00:59', 0],
    ['Europe/London', '2026-03-29 01:00', 60],
    ['Europe/London', '2026-10-25 00:59', 60],
    ['Europe/London', '2026-10-25 01:00', 0],
    ['Asia/Kathmandu', '2026-06-01 00:00', 345],
    ['America/St_Johns', '2026-01-15 00:00', -210],
    ['Pacific/Kiritimati', '2026-01-15 00:00', 840],
    ['UTC', '2026-01-15 00:00', 0],
  ])('%s at %s UTC is %i minutes ahead', (name, moment, offset) => {
    expect(zoneAt(utc(moment), name)).toEqual({ name, offset });
  });

  test('fractions of a second change nothing', () => {
    expect(zoneAt(utc('2026-03-29 01:00') - 1, 'Europe/London').offset).toBe(0);
    expect(zoneAt(utc('2026-03-29 01:00') + 999, 'Europe/London').offset).toBe(60);
  });

  test('a zone that nobody knows throws', () => {
    expect(() => zoneAt(0, 'Europe/Erewhon')).toThrow(RangeError);
  });
});

describe('days in a row', () => {
  test.each([
    ['2026-02-28', 1, '2026-03-01'],
    ['2028-02-28', 1, '2028-02-29'],
    ['2026-03-29', 1, '2026-03-30'],
    ['2026-10-25', 1, '2026-10-26'],
    ['2026-01-01', -1, '2025-12-31'],
    ['2026-03-02', 0, '2026-03-02'],
    ['2026-03-02', 365, '2027-03-02'],
  ])('%s and %i more is %s', (from, days, to) => {
    expect(dayAfter(day(from), days)).toBe(to);
  });

  test('a day that is none, as an address may name it, is followed by none', () => {
    expect(dayAfter(day('2026-99-99'), 1)).toBe('2026-99-99');
  });

  test('24 hours, and an hour more for a night of 25, always bring the next shop day or the one after it', () => {
    const moments = fc.integer({ min: utc('2020-01-01 00:00'), max: utc('2040-01-01 00:00') });
    fc.assert(
      fc.property(moments, (moment) => {
        const today = shopDay(moment, london);
        expect([dayAfter(today, 1), dayAfter(today, 2)]).toContain(shopDay(moment + 25 * hour, london));
        expect([today, dayAfter(today, 1)]).toContain(shopDay(moment + 23 * hour, london));
      }),
      { numRuns: 300 },
    );
  });

  test('the shop day never runs back while time runs on', () => {
    const moments = fc.integer({ min: utc('2026-03-27 00:00'), max: utc('2026-10-27 00:00') });
    fc.assert(
      fc.property(moments, fc.integer({ min: 0, max: 3 * hour }), (moment, later) => {
        expect(shopDay(moment + later, london) >= shopDay(moment, london)).toBe(true);
      }),
      { numRuns: 300 },
    );
  });
});
