import { describe, expect, test } from 'vitest';
import { changes } from '../../../shared/check-values/zone-changes.json' with { type: 'json' };
import type { ShopDay } from '../../../src/domain/log/ids.ts';
import { shopDay, zoneAt } from '../../../src/domain/log/zone.ts';

const minute = 60_000;
const hour = 60 * minute;
const day = 24 * hour;
const startHours = Array.from({ length: 13 }, (_, at) => at);

type Change = (typeof changes)[number];
const named = changes.map((change) => [`${change.zone} at ${change.at}`, change] as const);
const momentOf = ({ at }: Change) => Date.parse(at);
const offsetAt = (wall: number, change: Change) => (wall < momentOf(change) ? change.before : change.after);

/** The date that the published offsets give, with the hours before the beginning of the day taken off. */
function published(wall: number, { change, startHour }: { change: Change; startHour: number }): string {
  return new Date(wall + offsetAt(wall, change) * minute - startHour * hour).toISOString().slice(0, 10);
}

/** Every ten minutes from two days before a change to two days after it. */
function momentsAround(change: Change): readonly number[] {
  const at = momentOf(change);
  return Array.from({ length: (4 * day) / (10 * minute) }, (_, index) => at - 2 * day + index * 10 * minute);
}

/** How long (ms) each whole shop day around a change lasts. */
function lengths(change: Change, startHour: number): readonly number[] {
  const { zone } = change;
  const begun = new Map<ShopDay, number>();
  for (const wall of momentsAround(change)) {
    const its = shopDay(wall, { zone, startHour });
    if (!begun.has(its)) begun.set(its, wall);
  }
  const [, ...starts] = [...begun.values()];
  return starts.slice(1).map((start, index) => start - (starts[index] ?? 0));
}

describe.each(named)('around the change of the clocks in %s', (_, change) => {
  const { zone, before, after } = change;

  test('the offset of every tap is the published one', () => {
    for (const wall of [...momentsAround(change), momentOf(change) - 1]) {
      expect(zoneAt(wall, zone)).toEqual({ name: zone, offset: offsetAt(wall, change) });
    }
  });

  test.each(startHours)(
    'a day that begins at %i holds the taps of its date, and never runs back',
    (startHour) => {
      let last = '';
      for (const wall of momentsAround(change)) {
        const its = shopDay(wall, { zone, startHour });
        expect(its).toBe(published(wall, { change, startHour }));
        expect(its >= last).toBe(true);
        last = its;
      }
    },
  );

  test('one day is as much longer or shorter as the clocks were changed, whenever the days begin', () => {
    for (const startHour of startHours) {
      const odd = lengths(change, startHour).filter((length) => length !== day);
      expect(odd).toEqual([day - (after - before) * minute]);
    }
  });
});

/** The taps of one night in a shop whose day begins at `startHour`, UTC in, shop days out. */
const nightIn = (zone: string, startHour: number) => (utc: readonly string[]) =>
  utc.map((moment) => shopDay(Date.parse(moment), { zone, startHour }));

describe('a day that begins in the hour that is missing or doubled', () => {
  test('begins with the first minute after a missing hour', () => {
    const night = nightIn('Europe/London', 1);
    expect(night(['2026-03-29T00:59:59Z', '2026-03-29T01:00:00Z'])).toEqual(['2026-03-28', '2026-03-29']);
  });

  test('begins with the first of two like hours and does not begin again with the second', () => {
    const night = nightIn('Europe/London', 1);
    expect(
      night(['2026-10-24T23:59:59Z', '2026-10-25T00:00:00Z', '2026-10-25T00:59:59Z', '2026-10-25T01:00:00Z']),
    ).toEqual(['2026-10-24', '2026-10-25', '2026-10-25', '2026-10-25']);
  });

  test('begins after both where the clocks go back to before its hour', () => {
    const night = nightIn('Europe/London', 2);
    expect(night(['2026-10-25T00:59:59Z', '2026-10-25T01:30:00Z', '2026-10-25T02:00:00Z'])).toEqual([
      '2026-10-24',
      '2026-10-24',
      '2026-10-25',
    ]);
  });

  test('begins at one in a zone whose midnight is missing', () => {
    const night = nightIn('Asia/Beirut', 0);
    expect(night(['2026-03-28T21:59:59Z', '2026-03-28T22:00:00Z'])).toEqual(['2026-03-28', '2026-03-29']);
  });
});

test.each([
  // British Standard Time: an hour ahead all the year until 31 October 1971 (tz database, file europe).
  ['1970-01-01T00:00:00Z', 'Europe/London', { day: '1969-12-31', offset: 60 }],
  ['1970-01-01T03:00:00Z', 'Europe/London', { day: '1970-01-01', offset: 60 }],
  ['1970-06-01T09:00:00Z', 'America/New_York', { day: '1970-06-01', offset: -240 }],
  ['2099-07-01T02:59:00Z', 'Europe/London', { day: '2099-06-30', offset: 60 }],
  ['2099-12-31T23:59:59Z', 'Europe/London', { day: '2099-12-31', offset: 0 }],
])('a tablet years off, at %s in %s, still writes a day and an offset', (moment, zone, expected) => {
  const wall = Date.parse(moment);
  expect({ day: shopDay(wall, { zone, startHour: 4 }), offset: zoneAt(wall, zone).offset }).toEqual(expected);
});
