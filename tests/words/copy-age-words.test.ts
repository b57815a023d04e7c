import { expect, test } from 'vitest';
import { sinceWhen } from '../../src/words/copy-age-words.ts';

const zone = 'Europe/London';
/** Tuesday 31 March 2026, 01:30 by London's clock, two days after it was put forward. */
const now = Date.UTC(2026, 2, 31, 0, 30);

test.each<readonly [at: number, said: string]>([
  [Date.UTC(2026, 2, 30, 23, 5), 'today 00:05'],
  [Date.UTC(2026, 2, 30, 22, 59), 'yesterday 23:59'],
  [Date.UTC(2026, 2, 29, 23, 0), 'yesterday 00:00'],
  [Date.UTC(2026, 2, 29, 22, 59), '2 days ago'],
  [Date.UTC(2026, 2, 28, 12), '3 days ago'],
  [Date.UTC(2025, 2, 31, 12), '365 days ago'],
  [Date.UTC(2026, 3, 2, 12), '2 Apr 2026, 13:00'],
])('a past moment is told by the calendar of the shop: %s', (at, said) => {
  expect(sinceWhen({ at, now, zone })).toBe(said);
});
