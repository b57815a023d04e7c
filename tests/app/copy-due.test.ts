import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { type CopyReason, copyIsDue } from '../../src/app/copy-due.ts';
import { shopDayText } from '../../src/domain/log/ids.ts';

const day = (text: string) => v.parse(shopDayText, text);
const hour = 3_600_000;
const noon = Date.UTC(2026, 2, 2, 12);
const lastCopy = { at: noon, day: day('2026-03-02'), log: 1000 };

describe('a copy of the log', () => {
  test.each<readonly [rule: string, now: number, today: string, entries: number, due: CopyReason | null]>([
    ['is not due while nothing is new', noon + hour, '2026-03-02', 1000, null],
    [
      'is not due while nothing is new, however old the last one is',
      noon + 900 * hour,
      '2026-04-08',
      1000,
      null,
    ],
    ['is not due for a few taps of the same day', noon + hour, '2026-03-02', 1199, null],
    ['is due after 200 new entries', noon + hour, '2026-03-02', 1200, 'many-entries'],
    ['is due at the turn of the shop day', noon + 17 * hour, '2026-03-03', 1001, 'new-day'],
    ['is due after 24 hours with a new entry', noon + 24 * hour, '2026-03-02', 1001, 'long-ago'],
    ['is not due a moment before that', noon + 24 * hour - 1, '2026-03-02', 1001, null],
    ['is due when the clock was set back a day', noon - 24 * hour, '2026-03-02', 1001, 'long-ago'],
    ['is asked for when the log lacks what the last copy has', noon + hour, '2026-03-02', 0, 'many-entries'],
  ])('%s', (_rule, now, today, entries, due) => {
    expect(copyIsDue({ lastCopy, now, day: day(today), entries })).toBe(due);
  });

  test('is due at once when there is none yet, but not of an empty log', () => {
    const question = { lastCopy: null, now: noon, day: day('2026-03-02') };
    expect(copyIsDue({ ...question, entries: 1 })).toBe('first');
    expect(copyIsDue({ ...question, entries: 0 })).toBeNull();
  });
});
