import { expect, test } from 'vitest';
import { makingWay } from '../../src/worker/making-way.ts';

/** A clock that goes on only while somebody sleeps. */
function aClock() {
  const slept: number[] = [];
  const clock = {
    at: 1000,
    slept,
    now: () => clock.at,
    sleep: async (ms: number) => {
      slept.push(ms);
      clock.at += ms;
    },
    turn: async () => undefined,
  };
  return clock;
}

test('work that nobody disturbs goes on at once', async () => {
  const clock = aClock();
  await makingWay(clock).turn();
  expect(clock.slept).toEqual([]);
});

test('after a touch it rests, and after another one meanwhile longer', async () => {
  const clock = aClock();
  const way = makingWay({
    ...clock,
    sleep: async (ms) => {
      if (clock.slept.length === 0) {
        clock.at += 100;
        clock.slept.push(100);
        way.touched();
      } else await clock.sleep(ms);
    },
  });
  way.touched();
  await way.turn();
  expect(clock.slept).toEqual([100, 1500]);
  await way.turn();
  expect(clock.slept).toHaveLength(2);
});

test('a touch that comes while others have their turn is heeded at once', async () => {
  const clock = aClock();
  const way = makingWay({ ...clock, turn: async () => way.touched() });
  await way.turn();
  expect(clock.slept).toEqual([1500]);
});
