import { describe, expect, test } from 'vitest';
import { clockWatch } from '../../src/app/clock-watch.ts';
import { aShop, type TestShop } from '../support/a-shop.ts';
import { handClock } from '../support/hand-clock.ts';
import { stage } from '../support/workshop.ts';

const minute = 60_000;
const hour = 60 * minute;
const day = 24 * hour;
const monday = Date.UTC(2026, 2, 2, 9);

/** A watch on a tablet that made its last tap at `tapped` and is opened now. */
function opened({ tapped, now = monday }: { tapped?: number; now?: number } = {}) {
  const hands = handClock(now);
  const watch = clockWatch({ clock: hands.clock, built: Date.UTC(2026, 0, 1) });
  if (tapped !== undefined) watch.saw(tapsOf(aShop({ now: tapped })));
  watch.look();
  return { watch, hands, state: () => [watch.doubt.value, watch.unsaid.value] };
}

function tapsOf(shop: TestShop) {
  return shop.act({ kind: 'begin-spell', stage: stage.bore });
}

describe('a doubt is said', () => {
  test('once: when it is put away it stays away, whatever is tapped', () => {
    const { watch, hands, state } = opened({ tapped: monday });
    hands.setWall(monday - 300 * day);
    watch.look();
    expect(state()).toEqual(['before-build', true]);
    watch.putAway();
    hands.pass(minute);
    watch.look();
    expect(state()).toEqual(['before-build', false]);
    hands.setWall(monday - day);
    watch.look();
    expect(state()).toEqual(['behind', false]);
  });

  test('no more when the clock is set right, and anew when it goes wrong again', () => {
    const { watch, hands, state } = opened({ tapped: monday });
    const set = (to: number) => {
      hands.setWall(to);
      watch.look();
      return state();
    };
    set(monday - day);
    watch.putAway();
    expect(set(monday + minute)).toEqual([null, false]);
    expect(set(monday - day)).toEqual(['behind', true]);
  });
});

test('taps made in doubt are no measure: the clock is wrong until it is set right', () => {
  const { watch, hands, state } = opened({ tapped: monday });
  hands.setWall(monday - day);
  watch.look();
  const shop = aShop({ now: monday - day });
  shop.doubt('doubtful');
  watch.saw(tapsOf(shop));
  hands.pass(hour);
  watch.look();
  expect(state()).toEqual(['behind', true]);
});

test('a restart after nothing but taps in doubt does not make the clock right', () => {
  const shop = aShop({ now: monday });
  const [tap] = tapsOf(shop);
  if (!tap) throw new Error('a tap');
  // The clock had fallen back by a day: the stamps stayed where they were.
  const inDoubt = [1, 2, 3].map((tick) => ({
    ...tap,
    seq: tap.seq + tick,
    stamp: { ...tap.stamp, tick },
    day: '2026-03-01' as typeof tap.day,
    clock: 'doubtful' as const,
  }));
  const hands = handClock(monday - day);
  const watch = clockWatch({ clock: hands.clock, built: 0 });
  watch.saw(inDoubt);
  watch.look();
  expect(watch.doubt.value).toBe('behind');
  hands.setWall(monday);
  watch.look();
  expect(watch.doubt.value).toBeNull();
});

test('nights of sleep do not add up to a jump', () => {
  const { watch, hands, state } = opened();
  for (let night = 0; night < 200; night += 1) {
    hands.pass(10 * hour);
    hands.setWall(hands.clock.now() + 14 * hour);
    watch.look();
    expect(state()).toEqual([null, false]);
  }
});

test('a clock that was wrong at the opening and is set right by the network has not jumped', () => {
  const { watch, hands, state } = opened({ now: minute });
  expect(state()).toEqual(['before-build', true]);
  hands.setWall(monday);
  watch.look();
  expect(state()).toEqual([null, false]);
});

describe('a maker who says that the clock is right', () => {
  test('is believed after taps of a clock that was years ahead, then and after their own next tap', () => {
    const { watch, hands, state } = opened({ tapped: Date.UTC(2032, 2, 2), now: monday });
    expect(state()).toEqual(['behind', true]);
    watch.trust();
    expect(state()).toEqual([null, false]);
    // The stamp of the next tap stays ahead; its day tells what the clock said, also to a later opening.
    const ahead = aShop({ now: Date.UTC(2032, 2, 2) });
    const [tap] = tapsOf(ahead);
    if (!tap) throw new Error('a tap');
    const next = [{ ...tap, seq: tap.seq + 1, day: '2026-03-02' as typeof tap.day }];
    watch.saw(next);
    watch.look();
    expect(state()).toEqual([null, false]);
    const later = clockWatch({ clock: hands.clock, built: 0 });
    later.saw([tap, ...next]);
    later.look();
    expect(later.doubt.value).toBeNull();
  });

  test('is believed after a jump, until the next one', () => {
    const { watch, hands, state } = opened();
    hands.setWall(monday - hour);
    watch.look();
    expect(state()).toEqual(['jumped', true]);
    watch.trust();
    hands.pass(minute);
    watch.look();
    expect(state()).toEqual([null, false]);
    hands.setWall(monday - 3 * hour);
    watch.look();
    expect(state()).toEqual(['jumped', true]);
  });

  test('is not believed before the app was made', () => {
    const { watch, state } = opened({ now: Date.UTC(2020, 0, 1) });
    watch.trust();
    expect(state()).toEqual(['before-build', true]);
  });
});
