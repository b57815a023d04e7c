import { describe, expect, test } from 'vitest';
import { changes } from '../../../shared/check-values/zone-changes.json' with { type: 'json' };
import { momentAt, wallClockAt } from '../../../src/domain/log/zone.ts';

const minute = 60_000;

/** The clock on the wall by the published offsets. */
function published(wall: number, change: (typeof changes)[number]) {
  const offset = wall < Date.parse(change.at) ? change.before : change.after;
  const text = new Date(wall + offset * minute).toISOString();
  return { day: text.slice(0, 10), time: text.slice(11, 16) };
}

describe.each(changes.map((change) => [`${change.zone} at ${change.at}`, change] as const))(
  'around the change of the clocks in %s',
  (_, change) => {
    const { zone, before, after } = change;
    const at = Date.parse(change.at);
    const around = Array.from({ length: 288 }, (__, place) => at + (place - 144) * 15 * minute);

    test('the clock on the wall shows what is published', () => {
      for (const wall of around) expect(wallClockAt(wall, zone)).toEqual(published(wall, change));
    });

    test('and a clock that is read leads back to its moment, to the earlier one where it is shown twice', () => {
      const twice = Math.max(0, before - after) * minute;
      for (const wall of around) {
        const isSecond = wall >= at && wall < at + twice;
        expect(momentAt(published(wall, change), zone)).toBe(isSecond ? wall - twice : wall);
      }
    });

    test('a time that the clock leaps over is taken after the leap', () => {
      const leap = after - before;
      if (leap <= 0) return;
      const never = new Date(at + before * minute + (leap / 2) * minute).toISOString();
      const read = momentAt({ day: never.slice(0, 10), time: never.slice(11, 16) }, zone);
      expect(read).toBe(at + (leap / 2) * minute);
    });
  },
);

test.each([
  ['2026-02-30', '12:00'],
  ['2026-13-01', '12:00'],
  ['2026-03-01', '24:01'],
  ['', '12:00'],
  ['2026-03-01', ''],
])('%j %j is no day and time', (day, time) => {
  expect(momentAt({ day, time }, 'Europe/London')).toBeNull();
});
