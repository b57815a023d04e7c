import { expect, test } from 'vitest';
import { type AgeTone, toneOfOutside } from '../../src/app/outside-age.ts';

const day = 24 * 3_600_000;
const now = Date.UTC(2026, 2, 20, 12);

test.each<readonly [rule: string, age: number, entries: number, tone: AgeTone]>([
  ['a copy of today is in order', 0, 5, 'calm'],
  ['a copy of two days with new entries wants a look', 2 * day, 1, 'amber'],
  ['a moment earlier it does not', 2 * day - 1, 1, 'calm'],
  ['after seven days with new entries it is high time', 7 * day, 1, 'red'],
  ['a moment earlier it is not yet', 7 * day - 1, 1, 'amber'],
  ['with nothing new an old copy is as good as a fresh one', 400 * day, 0, 'calm'],
  ['a copy from the future was made under another clock', -2 * day, 1, 'amber'],
])('%s', (_rule, age, fresh, tone) => {
  const outside = { at: now - age, log: 100 };
  expect(toneOfOutside({ outside, now, log: 100 + fresh, firstDay: '2020-01-01' })).toBe(tone);
});

test('without any copy the age counts from the first day of work', () => {
  const never = (firstDay: string | undefined) => toneOfOutside({ outside: null, now, log: 60, firstDay });
  expect(never(undefined)).toBe('calm');
  expect(never('2026-03-20')).toBe('calm');
  expect(never('2026-03-18')).toBe('amber');
  expect(never('2026-03-13')).toBe('red');
});
