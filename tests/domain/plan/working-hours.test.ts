import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { changes } from '../../../shared/check-values/zone-changes.json' with { type: 'json' };
import { type ShopDay, shopDayText } from '../../../src/domain/log/ids.ts';
import { dayAfter } from '../../../src/domain/log/zone.ts';
import {
  daysBetween,
  hourCostOf,
  mostDaysAhead,
  shiftOn,
  workingMinutes,
  workingMinutesBetween,
} from '../../../src/domain/plan/working-hours.ts';

const day = (text: string): ShopDay => v.parse(shopDayText, text);
const usual = { from: 8 * 60, to: 17 * 60, breakMinutes: 45 };
const week = [usual, usual, usual, usual, { ...usual, to: 12 * 60, breakMinutes: 0 }, null, null];

describe('working minutes of a person', () => {
  // 2 March 2026 is a Monday.
  test.each([
    ['2026-03-02', 495],
    ['2026-03-06', 240],
    ['2026-03-07', 0],
    ['2026-03-08', 0],
    ['2026-03-09', 495],
  ])('on %s are %i', (on, minutes) => {
    expect(workingMinutes({ week }, day(on), 'Europe/London')).toBe(minutes);
  });

  test('are not known where nobody has said the hours', () => {
    const range = { from: day('2026-03-02'), to: day('2026-03-08') };
    expect(workingMinutes({}, range.from, 'UTC')).toBeUndefined();
    expect(workingMinutesBetween({ daysOff: [] }, range, 'UTC')).toBeUndefined();
  });

  test('are none on days off, the first and the last of them counted', () => {
    const person = { week, daysOff: [{ from: day('2026-03-03'), to: day('2026-03-04') }] };
    const on = (text: string) => workingMinutes(person, day(text), 'UTC');
    expect(['2026-03-02', '2026-03-03', '2026-03-04', '2026-03-05'].map(on)).toEqual([495, 0, 0, 495]);
    const range = { from: day('2026-03-02'), to: day('2026-03-08') };
    expect(workingMinutesBetween(person, range, 'UTC')).toBe(2 * 495 + 240);
  });

  test('are none where the breaks are longer than the day, and none where a range is empty', () => {
    const odd = { ...usual, to: 8 * 60 + 10, breakMinutes: 30 };
    expect(workingMinutes({ week: [odd, ...week.slice(1)] }, day('2026-03-02'), 'UTC')).toBe(0);
    const back = { from: day('2026-03-08'), to: day('2026-03-02') };
    expect(workingMinutesBetween({ week }, back, 'UTC')).toBe(0);
  });

  test('stay within ten years', () => {
    const from = day('2026-01-01');
    const to = dayAfter(from, mostDaysAhead + 1);
    expect(() => workingMinutesBetween({ week }, { from, to }, 'UTC')).toThrow(RangeError);
  });
});

const every = <Value>(value: Value): Value[] => Array.from({ length: 7 }, () => value);
const wholeDay = { from: 0, to: 1440, breakMinutes: 0 };

describe('over a change of the clocks', () => {
  test.each(changes.map((change) => [`${change.zone} at ${change.at}`, change] as const))(
    'a day from midnight to midnight is as much shorter or longer as the clocks are put: %s',
    (_, { zone, at, before, after }) => {
      const changed = new Date(Date.parse(at) + after * 60_000).toISOString().slice(0, 10);
      const person = { week: every(wholeDay) };
      expect(workingMinutes(person, day(changed), zone)).toBe(1440 - (after - before));
      expect(workingMinutes(person, dayAfter(day(changed), 7), zone)).toBe(1440);
    },
  );

  test('hours of the day stay hours by the wall', () => {
    const sunday = day('2026-03-29');
    const shift = shiftOn({ week: every(usual) }, sunday, 'Europe/London');
    expect(shift).toEqual({
      from: Date.parse('2026-03-29T07:00:00Z'),
      to: Date.parse('2026-03-29T16:00:00Z'),
      breakMinutes: 45,
    });
    expect(workingMinutes({ week: every(usual) }, sunday, 'Europe/London')).toBe(495);
  });

  test('work past midnight counts to the day that it began on', () => {
    const night = { from: 22 * 60, to: 30 * 60, breakMinutes: 0 };
    const on = (text: string) => workingMinutes({ week: every(night) }, day(text), 'Europe/London');
    // The clocks are put forward in the night to 29 March, back in the night to 25 October.
    expect(['2026-03-28', '2026-03-29', '2026-10-24'].map(on)).toEqual([420, 480, 540]);
  });
});

test('days from one shop day to another', () => {
  expect(daysBetween(day('2026-03-28'), day('2026-03-30'))).toBe(2);
  expect(daysBetween(day('2026-03-30'), day('2026-03-28'))).toBe(-2);
});

test('an hour costs what the person or else the shop says', () => {
  expect(hourCostOf({ hourCost: 0 }, { hourCost: 3000 })).toBe(0);
  expect(hourCostOf({ hourCost: null }, { hourCost: 3000 })).toBe(3000);
  expect(hourCostOf({}, {})).toBeNull();
  expect(hourCostOf(undefined, undefined)).toBeNull();
});
