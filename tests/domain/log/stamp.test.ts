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

const stampOf = ([wall = 0, tick = 0]: readonly number[]): Stamp => ({ wall, tick });
const hour = 3_600_000;
const day = 24 * hour;
const morning = Date.UTC(2026, 2, 2, 9);

describe('the published cases of the hybrid logical clock', () => {
  const { 'hlc-send': send, 'hlc-cases': receive } = cases;

  test.each(send.inputs.cases.map(({ old, pt }, index) => ({ old, pt, next: send.expected.new[index] })))(
    'an own event after $old at $pt is stamped $next',
    ({ old, pt, next }) => {
      expect(nextStamp(stampOf(old), pt)).toEqual(stampOf(next ?? []));
    },
  );

  test.each(receive.inputs.cases.map((each, index) => ({ ...each, next: receive.expected.new[index] })))(
    'an event stamped $msg that comes in after $old at $pt takes the clock to $next',
    ({ old, msg, pt, next }) => {
      expect(witnessStamp(stampOf(old), { seen: stampOf(msg), now: pt })).toEqual(stampOf(next ?? []));
    },
  );
});

describe('a device clock that is wrong', () => {
  test('jumps back six years: stamps go on in order, tick by tick, until it is right again', () => {
    const sixYearsAgo = Date.UTC(2020, 2, 2, 9);
    const first = nextStamp(stampZero, morning);
    const second = nextStamp(first, sixYearsAgo);
    const third = nextStamp(second, sixYearsAgo + hour);
    const after = nextStamp(third, morning + hour);
    expect([first, second, third, after]).toEqual([
      { wall: morning, tick: 0 },
      { wall: morning, tick: 1 },
      { wall: morning, tick: 2 },
      { wall: morning + hour, tick: 0 },
    ]);
  });

  test('a tablet whose clock is behind stamps after what it has seen of the others', () => {
    const behind = morning - 3 * hour;
    const seen = { wall: morning, tick: 4 };
    const last = witnessStamp({ wall: behind, tick: 0 }, { seen, now: behind });
    expect(compareStamps(nextStamp(last, behind), seen)).toBeGreaterThan(0);
  });

  test('a tablet that is up to a day ahead takes the others along', () => {
    const last = { wall: morning, tick: 0 };
    const seen = { wall: morning + day, tick: 0 };
    expect(witnessStamp(last, { seen, now: morning })).toEqual({ wall: morning + day, tick: 1 });
  });

  test.each([
    ['a day and a millisecond', day + 1],
    ['four years', 4 * 365 * day],
    ['seventy years', 70 * 365 * day],
  ])('a tablet that is %s ahead poisons no other clock', (_, ahead) => {
    const last = { wall: morning, tick: 2 };
    expect(witnessStamp(last, { seen: { wall: morning + ahead, tick: 0 }, now: morning })).toEqual(last);
  });

  test('a tablet whose own clock lies years behind is still taken along by a right one that it follows', () => {
    // Its own last stamp, not the device, is the measure once it has followed the others.
    const last = { wall: morning, tick: 0 };
    const seen = { wall: morning + hour, tick: 0 };
    expect(witnessStamp(last, { seen, now: Date.UTC(1970, 0, 2) })).toEqual({
      wall: morning + hour,
      tick: 1,
    });
  });
});

describe('the order of stamps', () => {
  const { inputs, expected } = cases['crdt-order-key'];

  test('is by wall, then by tick as a number (9 before 100), then by station and never by arrival', () => {
    const named = inputs.stamps.map(([wall, tick, station]) => ({
      stamp: stampOf([Number(wall), Number(tick)]),
      station: `${station}`,
    }));
    const inOrder = named.toSorted(
      (a, b) => compareStamps(a.stamp, b.stamp) || (a.station < b.station ? -1 : 1),
    );
    expect(inOrder.map(({ stamp: { wall, tick }, station }) => [wall, tick, station])).toEqual(
      expected.sorted,
    );
  });

  const stamp = fc.record({ wall: fc.nat({ max: 5 }), tick: fc.nat({ max: 120 }) });

  test('is a total order: equal only to itself, the same both ways round, and holds along a chain', () => {
    fc.assert(
      fc.property(stamp, stamp, stamp, (a, b, c) => {
        expect(Math.sign(compareStamps(a, b)) + Math.sign(compareStamps(b, a))).toBe(0);
        expect(compareStamps(a, b) === 0).toBe(a.wall === b.wall && a.tick === b.tick);
        if (compareStamps(a, b) <= 0 && compareStamps(b, c) <= 0)
          expect(compareStamps(a, c)).toBeLessThanOrEqual(0);
      }),
    );
  });
});
