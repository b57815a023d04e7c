import { expect, test } from 'vitest';
import type { ShopDay } from '../../../src/domain/log/ids.ts';
import { shiftsOfPeople } from '../../../src/domain/plan/shifts-of-people.ts';
import type { Hours } from '../../../src/domain/plan/working-hours.ts';

const hours = (from: number, to: number): Hours => {
  const day = { from: from * 60, to: to * 60, breakMinutes: 30 };
  return { week: [day, day, day, day, day, null, null] };
};
const friday = { from: '2026-03-06' as ShopDay, days: 4, zone: 'UTC' };
const told = (people: readonly Hours[], range = friday) =>
  shiftsOfPeople(people, range)?.map((shift) =>
    [shift.from, shift.to].map((at) => new Date(at).toISOString().slice(8, 16)).join(' to '),
  );

test('shifts of several people are joined where they meet, and days off are none', () => {
  expect(told([hours(8, 12), hours(12, 17)])).toEqual(['06T08:00 to 06T17:00', '09T08:00 to 09T17:00']);
  expect(told([hours(8, 12), hours(14, 17)], { ...friday, days: 1 })).toEqual([
    '06T08:00 to 06T12:00',
    '06T14:00 to 06T17:00',
  ]);
});

test('who has not said their hours adds none, and nobody’s hours are not known', () => {
  expect(told([hours(8, 12), {}], { ...friday, days: 1 })).toEqual(['06T08:00 to 06T12:00']);
  expect(shiftsOfPeople([{}], friday)).toBeUndefined();
  expect(shiftsOfPeople([], friday)).toBeUndefined();
});

test('a shift is that of the clock on the wall when it is put forward (Europe/London, 29 March 2026)', () => {
  const everyDay = { from: 480, to: 1020, breakMinutes: 0 };
  const week = [everyDay, everyDay, everyDay, everyDay, everyDay, everyDay, everyDay];
  const range = { from: '2026-03-28' as ShopDay, days: 2, zone: 'Europe/London' };
  expect(told([{ week }], range)).toEqual(['28T08:00 to 28T17:00', '29T07:00 to 29T16:00']);
});
