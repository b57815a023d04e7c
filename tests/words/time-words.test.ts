import { describe, expect, test } from 'vitest';
import { clockTime, dayWords, momentWords } from '../../src/words/date-words.ts';

const utc = (text: string) => Date.parse(`${text.replace(' ', 'T')}Z`);
const now = utc('2026-03-02 12:00');
const at = (text: string, zone = 'Europe/London') => clockTime(utc(text), { zone, now });

describe('a time is told by the clock of the shop, wherever the tablet thinks it is', () => {
  test.each([
    ['Europe/London', '2026-03-02 09:30', '09:30'],
    ['Asia/Kathmandu', '2026-03-02 09:30', '15:15'],
    ['Pacific/Kiritimati', '2026-03-02 09:30', /^Mon.* 2 Mar.* 23:30$/],
    ['America/New_York', '2026-03-02 04:30', /^Sun.* 1 Mar.* 23:30$/],
  ])('in %s at %s UTC', (zone, moment, told) => {
    if (typeof told === 'string') expect(at(moment, zone)).toBe(told);
    else expect(at(moment, zone)).toMatch(told);
  });

  test('with the year when it is half a year off: a clock may have been years behind', () => {
    expect(at('2020-03-02 09:30')).toMatch(/^Mon.* 2 Mar 2020.* 09:30$/);
  });
});

describe('what cannot be told as it is', () => {
  test.each(['Europe/Erewhon', '', 'not a zone'])(
    'the zone %j, which no browser knows, is told in UTC',
    (zone) => {
      expect(at('2026-03-02 09:30', zone)).toBe('09:30 UTC');
    },
  );

  test('a moment past all calendars is told at their end', () => {
    expect(clockTime(Number.MAX_SAFE_INTEGER, { zone: 'UTC', now })).toContain('275760');
  });

  test('a day that is none is told as it is written', () => {
    expect(dayWords('2026-13-45')).toBe('2026-13-45');
    expect(dayWords('2026-03-02')).toMatch(/^Mon.* 2 Mar 2026$/);
  });
});

test('a moment in full names its weekday, day, year and time', () => {
  expect(momentWords(utc('2026-07-01 23:30'), 'Europe/London')).toMatch(/^Thu.* 2 Jul 2026.* 00:30$/);
});
