import fc from 'fast-check';
import { expect, test } from 'vitest';
import { seededRandom } from '../../src/domain/chance/seeded-random.ts';
import { handClock } from '../support/hand-clock.ts';
import { memoryBroker, type Weather } from '../support/memory-broker.ts';
import { aReplica, areSame, type Replica, until } from '../support/replicas.ts';

type Step =
  | { readonly kind: 'tap'; readonly on: number; readonly taps: number }
  | { readonly kind: 'switch'; readonly on: number }
  | { readonly kind: 'wait'; readonly seconds: number }
  | { readonly kind: 'lose-tail' | 'lose-middle'; readonly share: number }
  | { readonly kind: 'wipe' | 'down' | 'up' };

const on = fc.nat(2);
const share = fc.double({ min: 0, max: 1, noNaN: true });
const step: fc.Arbitrary<Step> = fc.oneof(
  { weight: 8, arbitrary: fc.record({ kind: fc.constant('tap'), on, taps: fc.integer({ min: 1, max: 4 }) }) },
  { weight: 3, arbitrary: fc.record({ kind: fc.constant('switch'), on }) },
  {
    weight: 5,
    arbitrary: fc.record({ kind: fc.constant('wait'), seconds: fc.integer({ min: 1, max: 90 }) }),
  },
  { weight: 2, arbitrary: fc.record({ kind: fc.constantFrom('lose-tail', 'lose-middle'), share }) },
  { weight: 2, arbitrary: fc.record({ kind: fc.constantFrom('wipe', 'down', 'up') }) },
);

const seats = ['A', 'B', 'C'] as const;

/** Plays a life of three tablets and their broker; resolves with the tablets and a newcomer, which all hold what was tapped. */
async function played(steps: readonly Step[], seed: number) {
  const hand = handClock();
  const broker = memoryBroker();
  const weather: Weather = { random: seededRandom(seed), cut: 0.04, shuffle: 0.3 };
  const open = (seat: Replica['seat']) => broker.open(seat, weather);
  const tablets = await Promise.all(
    seats.map((seat, index) => aReplica({ open, seat, hand, seed: seed + index })),
  );
  const isOn = seats.map(() => false);
  let tapped = 0;
  const play = async (next: Step) => {
    const messages = broker.messages();
    const last = messages.at(-1)?.at ?? 0;
    if (next.kind === 'tap') {
      tapped += next.taps;
      await tablets[next.on]?.tap(next.taps);
    } else if (next.kind === 'switch') {
      if (isOn[next.on]) await tablets[next.on]?.stop();
      else tablets[next.on]?.start();
      isOn[next.on] = !isOn[next.on];
    } else if (next.kind === 'wait') {
      for (let second = 0; second < next.seconds; second += 1) {
        hand.pass(1000);
        await new Promise((resolve) => setImmediate(resolve));
      }
    } else if (next.kind === 'lose-tail') broker.lose(({ at }) => at > last * next.share);
    else if (next.kind === 'lose-middle') {
      const draw = seededRandom(Math.floor(next.share * 1e6));
      broker.lose(({ at }) => at < last && draw() < next.share / 2);
    } else if (next.kind === 'wipe') broker.wipe();
    else broker.setUp(next.kind === 'up');
  };
  const everyone = [...tablets];
  try {
    for (const next of steps) await play(next);
    weather.cut = 0;
    broker.setUp(true);
    tablets.forEach((tablet, index) => {
      if (!isOn[index]) tablet.start();
    });
    const holdAll = async () =>
      (await areSame(everyone)) && (await everyone[0]?.store.holding())?.records === tapped;
    await until(hand, holdAll);
    const newcomer = await aReplica({ open: broker.open, seat: 'D', hand, seed });
    everyone.push(newcomer);
    newcomer.start();
    await until(hand, async () => (await holdAll()) && newcomer.status().kind === 'up-to-date');
    return everyone;
  } finally {
    for (const each of everyone) await each.stop();
  }
}

/** The broker loses all and is filled again between two looks, with other messages in the same places. */
const filledAgain: readonly Step[] = [
  { kind: 'switch', on: 1 },
  { kind: 'tap', on: 1, taps: 1 },
  { kind: 'wait', seconds: 10 },
  { kind: 'switch', on: 0 },
  { kind: 'tap', on: 1, taps: 1 },
  { kind: 'lose-tail', share: 0 },
  { kind: 'wait', seconds: 30 },
  { kind: 'switch', on: 2 },
  { kind: 'tap', on: 1, taps: 3 },
  { kind: 'wait', seconds: 84 },
  { kind: 'tap', on: 0, taps: 2 },
  { kind: 'tap', on: 1, taps: 2 },
];

test('whatever lines and broker lose, every tablet holds every tap in the end, and nothing is set aside', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(step, { minLength: 4, maxLength: 40, size: 'max' }),
      fc.nat(1e6),
      async (steps, seed) => {
        const everyone = await played(steps, seed);
        expect(everyone.flatMap(({ aside }) => aside)).toEqual([]);
      },
    ),
    { numRuns: 30, examples: Array.from({ length: 8 }, (_, at) => [[...filledAgain], 585_611 + at]) },
  );
}, 300_000);
