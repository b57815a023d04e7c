/**
 * How often runs of key signals count. Bounce times are those of the rules for the bench screens (24, 26); how pedals
 * misbehave is common practice, no source.
 */
import { expect, test } from 'vitest';
import { hearKey, type KeySignal, keyLimits, unheard } from '../../../src/ui/press/key-rules.ts';

const down = (at: number, { repeat = false, key = 'PageDown' } = {}): KeySignal => ({
  kind: 'down',
  key,
  at,
  repeat,
});
const up = (at: number, key = 'PageDown'): KeySignal => ({ kind: 'up', key, at });
/** The key down at a time and up `ms` later. */
const tap = (at: number, ms = 10): readonly KeySignal[] => [down(at), up(at + ms)];
/** Every `every` ms from one time to another. */
const times = (from: number, to: number, every: number): readonly number[] =>
  Array.from({ length: Math.floor((to - from) / every) + 1 }, (_, n) => from + n * every);

/** How many presses count; one that counts if it is alone does when no other signal of its key comes down in time. */
const countOf = (signals: readonly KeySignal[]): number => {
  let memory = unheard;
  let counted = 0;
  for (const [place, signal] of signals.entries()) {
    const heard = hearKey(memory, signal);
    memory = heard.memory;
    const next = signals.slice(place + 1).find(({ kind, key }) => kind === 'down' && key === signal.key);
    const isAlone = !next || next.at - signal.at >= 120;
    if (heard.counts === 'yes' || (heard.counts === 'if-alone' && isAlone)) counted += 1;
  }
  return counted;
};

test.each<[string, readonly KeySignal[], number]>([
  ['one press', tap(0, 80), 1],
  ['a pedal that goes down and up within 10 ms', tap(0, 10), 1],
  ['a pedal that goes down and up at one moment', tap(0, 0), 1],
  ['ten presses of such a pedal, 150 ms apart', times(0, 1350, 150).flatMap((at) => tap(at)), 10],
  ['two presses 40 ms apart: a bounce', [...tap(0), ...tap(40)], 1],
  ['two presses 119 ms apart: a bounce', [...tap(0, 60), ...tap(119, 60)], 1],
  ['two presses 120 ms apart', [...tap(0, 60), ...tap(120, 60)], 2],
  ['two presses 180 ms apart', [...tap(0, 90), ...tap(180, 90)], 2],
  ['a switch that bounces three times as it closes', [0, 4, 9].flatMap((at) => tap(at, 2)), 1],
  ['one that bounces as it opens after half a second', [...tap(0, 500), ...tap(506, 3)], 1],
  ['the next real press after such a bounce', [...tap(0, 500), ...tap(506, 3), ...tap(700)], 2],
  [
    'a held key whose repeats say so',
    [down(0), ...times(500, 5000, 33).map((at) => down(at, { repeat: true })), up(5001)],
    1,
  ],
  ['a held key whose repeats do not say so', [down(0), ...times(500, 5000, 33).map((at) => down(at))], 1],
  [
    'a held key that goes up and down anew at each repeat',
    [down(0), ...times(660, 3000, 40).flatMap((at) => [up(at), down(at)]), up(3001)],
    1,
  ],
  [
    'one whose repeats leave it up for 20 ms',
    [down(0), ...times(500, 3000, 60).flatMap((at) => [up(at), down(at + 20)]), up(3100)],
    1,
  ],
  ['pulses every 100 ms, as long as a pedal is held', times(0, 2000, 100).flatMap((at) => tap(at)), 1],
  [
    'pulses that begin half a second after the first',
    [...tap(0), ...times(500, 3000, 33).flatMap((at) => tap(at))],
    1,
  ],
  [
    'such a pedal held twice',
    [0, 4000].flatMap((from) => [from, ...times(from + 900, from + 3000, 50)]).flatMap((at) => tap(at)),
    2,
  ],
  ['two presses of a pedal that pulses, half a second apart', [...tap(0), ...tap(500)], 2],
  [
    'a key that is stuck for a minute and then let go',
    [down(0), ...times(500, 60_000, 100).map((at) => down(at)), up(60_050), ...tap(61_000)],
    2,
  ],
  ['a key that is held for an hour without a word, and let go', [down(0), up(3_600_000)], 1],
  [
    'a held key of the slowest repeat that a system offers',
    [down(0), ...[2000, 4000, 6000].map((at) => down(at))],
    1,
  ],
  [
    'a key whose release was lost, pressed again after a while',
    [down(0), ...tap(keyLimits.lostReleaseMs)],
    2,
  ],
  ['a key that was down before the page saw it', [down(0, { repeat: true }), down(100), up(200)], 0],
  ['a release of which the press was never seen', [up(0), ...tap(200)], 1],
  [
    'two keys at once, each by itself',
    [down(0, { key: '1' }), down(5, { key: '2' }), up(60, '1'), up(70, '2')],
    2,
  ],
])('%s', (_, signals, counted) => {
  expect(countOf(signals)).toBe(counted);
});

test('only after a pulse does a press wait for another, and not for long', () => {
  const countsAfter = (first: readonly KeySignal[], at: number) => {
    const memory = first.reduce((held, signal) => hearKey(held, signal).memory, unheard);
    return hearKey(memory, down(at)).counts;
  };
  expect(countsAfter(tap(0, 10), 500)).toBe('if-alone');
  expect(countsAfter(tap(0, 10), 1199)).toBe('if-alone');
  expect(countsAfter(tap(0, 10), 1200)).toBe('yes');
  expect(countsAfter(tap(0, 60), 500)).toBe('yes');
  expect(countsAfter([...tap(0, 500), ...tap(506, 3)], 700)).toBe('yes');
});

test('what is remembered of keys is never changed in place', () => {
  const before = hearKey(unheard, down(0)).memory;
  const copy = new Map(before);
  hearKey(before, up(10));
  expect(before).toEqual(copy);
  expect(unheard.size).toBe(0);
});
