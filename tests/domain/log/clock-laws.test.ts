import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/hybrid-logical-clock.json' with { type: 'json' };
import {
  compareStamps,
  nextStamp,
  type Stamp,
  stampZero,
  witnessStamp,
} from '../../../src/domain/log/stamp.ts';

/**
 * Random histories of three stations. Each step, one station's device clock is put to some moment, back or ahead, and
 * it writes an event or takes in one that another station wrote before.
 */
const stations = [0, 1, 2] as const;
const moment = fc.integer({ min: 1_000_000, max: 1_000_000 + 3_600_000 });
const step = fc.record({
  station: fc.constantFrom(...stations),
  /** Which of the events written so far comes in; null writes an own one. */
  takesIn: fc.option(fc.nat(), { freq: 2 }),
  now: moment,
});

interface Happening {
  readonly station: number;
  readonly stamp: Stamp;
  readonly now: number;
  /** Happenings that are known to have come before: the station's last one, and the one that came in. */
  readonly after: readonly Happening[];
}

function historyOf(
  steps: readonly { station: number; takesIn: number | null; now: number }[],
): readonly Happening[] {
  const last = new Map<number, Happening>();
  const all: Happening[] = [];
  for (const { station, takesIn, now } of steps) {
    const before = last.get(station);
    const own = before?.stamp ?? stampZero;
    const others = all.filter((each) => each.station !== station);
    const incoming = takesIn === null ? undefined : others[takesIn % Math.max(1, others.length)];
    const stamp = incoming ? witnessStamp(own, { seen: incoming.stamp, now }) : nextStamp(own, now);
    const after = [before, incoming].filter((each) => each !== undefined);
    const happening = { station, stamp, now, after };
    last.set(station, happening);
    all.push(happening);
  }
  return all;
}

function everyHistory(law: (history: readonly Happening[]) => void): void {
  fc.assert(
    fc.property(fc.array(step, { minLength: 2, maxLength: 60 }), (steps) => law(historyOf(steps))),
    {
      numRuns: 300,
    },
  );
}

describe(`laws of ${cases['hlc-laws'].source}`, () => {
  test('what came before is stamped before, at every station', () => {
    everyHistory((history) => {
      for (const { stamp, after } of history) {
        for (const earlier of after) expect(compareStamps(earlier.stamp, stamp)).toBeLessThan(0);
      }
    });
  });

  test('a stamp is never behind the device clock, and never ahead of the furthest clock that it knows of', () => {
    everyHistory((history) => {
      let furthest = 0;
      for (const { stamp, now } of history) {
        furthest = Math.max(furthest, now);
        expect(stamp.wall).toBeGreaterThanOrEqual(now);
        expect(stamp.wall).toBeLessThanOrEqual(furthest);
      }
    });
  });

  test('two own events never carry the same stamp', () => {
    everyHistory((history) => {
      for (const station of stations) {
        const own = history
          .filter((each) => each.station === station)
          .map(({ stamp }) => `${stamp.wall}/${stamp.tick}`);
        expect(new Set(own).size).toBe(own.length);
      }
    });
  });

  test('a tick starts again from nought whenever the wall moves on by the device clock alone', () => {
    everyHistory((history) => {
      for (const { stamp, now, after } of history) {
        if (after.every((earlier) => earlier.stamp.wall < now)) expect(stamp).toEqual({ wall: now, tick: 0 });
      }
    });
  });
});
