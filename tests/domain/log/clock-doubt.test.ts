import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { type ClockLook, clockAtTap, doubtOfClock } from '../../../src/domain/log/clock-doubt.ts';
import { shopDayText } from '../../../src/domain/log/ids.ts';
import { shopDay, zoneAt } from '../../../src/domain/log/zone.ts';

const minute = 60_000;
const hour = 60 * minute;
const day = 24 * hour;
const year = 365 * day;
const monday = Date.UTC(2026, 2, 2, 9);

/** A clock that is right: the app built a month ago, the last tap an hour ago, the last look a minute ago. */
const right: ClockLook = {
  now: monday,
  built: monday - 30 * day,
  lastTap: monday - hour,
  since: { wall: minute, mono: minute },
};
const doubt = (change: Partial<ClockLook>) => doubtOfClock({ ...right, ...change });

describe('a clock is believed', () => {
  test.each([
    ['in a shop without a tap, at the first look', { lastTap: null, since: null }],
    ['ten minutes before the last tap', { lastTap: monday + 10 * minute }],
    ['ten minutes before the build: that machine has a clock too', { built: monday + 10 * minute }],
    ['years after the last tap: the tablet lay in a drawer', { lastTap: monday - 6 * year, since: null }],
    ['set back by ten minutes', { since: { wall: -9 * minute, mono: minute } }],
    [
      'after a night in which the monotonic clock slept too',
      { since: { wall: 14 * hour, mono: 20 * minute } },
    ],
    ['after a night through which it ran on', { since: { wall: 14 * hour, mono: 14 * hour } }],
    ['after a holiday of three weeks asleep', { since: { wall: 21 * day, mono: hour } }],
    ['after sixty days asleep', { since: { wall: 60 * day, mono: 0 } }],
  ] as const)('%s', (_, change) => {
    expect(doubt(change)).toBeNull();
  });
});

describe('a clock is in doubt', () => {
  test.each([
    ['more than ten minutes before the build', { built: monday + 10 * minute + 1 }, 'before-build'],
    ['in 1970, on a tablet whose battery was empty', { now: 5 * minute, since: null }, 'before-build'],
    ['more than ten minutes before the last tap', { lastTap: monday + 10 * minute + 1 }, 'behind'],
    ['set back by more than ten minutes', { since: { wall: -9 * minute - 1, mono: minute } }, 'jumped'],
    ['standing still for twenty minutes', { since: { wall: 0, mono: 20 * minute } }, 'jumped'],
    ['further ahead than any tablet sleeps', { since: { wall: 60 * day + 1, mono: 0 } }, 'jumped'],
    [
      'six years ahead',
      { now: monday + 6 * year, since: { wall: 6 * year + minute, mono: minute } },
      'jumped',
    ],
  ] as const)('%s', (_, change, why) => {
    expect(doubt(change)).toBe(why);
  });
});

describe('what the clock said at a tap', () => {
  const zone = 'Europe/London';
  const tapAt = (wall: number, { stamp = wall, startHour = 4 } = {}) => ({
    stamp: { wall: stamp, tick: 0 },
    zone: zoneAt(wall, zone),
    day: shopDay(wall, { zone, startHour }),
  });

  test('is its stamp, at every hour of the year and whenever the shop begins its day', () => {
    for (let wall = Date.UTC(2026, 0, 1); wall < Date.UTC(2027, 0, 1); wall += 30 * minute) {
      for (const startHour of [0, 4, 12]) expect(clockAtTap(tapAt(wall, { startHour }))).toBe(wall);
    }
  });

  test('is the beginning of its day when the stamp had been drawn years ahead', () => {
    expect(clockAtTap(tapAt(monday, { stamp: monday + 6 * year }))).toBe(Date.UTC(2026, 2, 2));
  });

  test('is the beginning of its day when the clock was years behind the stamp', () => {
    const summer = Date.UTC(2020, 6, 2, 9);
    expect(clockAtTap(tapAt(summer, { stamp: monday }))).toBe(Date.UTC(2020, 6, 1, 23));
  });
});

test('whatever a clock says, the day can be written', () => {
  const days = [-year * 3000, 0, Date.UTC(2099, 11, 31, 12), 8.64e15 - day].map((wall) =>
    shopDay(wall, { zone: 'Europe/London', startHour: 4 }),
  );
  for (const each of days) expect(v.is(shopDayText, each)).toBe(true);
  expect(days.slice(1)).toEqual(['1969-12-31', '2099-12-31', '9999-12-31']);
});
