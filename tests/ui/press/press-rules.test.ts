import { describe, expect, test } from 'vitest';
import {
  feel,
  type PressSignal,
  type PressSurroundings,
  pressLimits,
  untouched,
} from '../../../src/ui/press/press-rules.ts';

const calm: PressSurroundings = { closing: false, backInViewAt: undefined, liftedAt: undefined };
const closing: PressSurroundings = { ...calm, closing: true };

/** How often a button acts on a run of signals. */
const actsOn = (signals: readonly PressSignal[], around: PressSurroundings = calm): number => {
  let memory = untouched;
  let acts = 0;
  for (const signal of signals) {
    const step = feel(memory, signal, around);
    memory = step.memory;
    if (step.acts) acts += 1;
  }
  return acts;
};

const down = (
  at: number,
  more: { pointer?: number; widthPx?: number; fingers?: number } = {},
): PressSignal => ({
  kind: 'contact',
  pointer: 1,
  at,
  widthPx: 25,
  fingers: 1,
  ...more,
});
const up = (at: number, { pointer = 1, inside = true } = {}): PressSignal => ({
  kind: 'lifted',
  pointer,
  at,
  inside,
});
const move = (inside: boolean, widthPx = 25): PressSignal => ({ kind: 'moved', pointer: 1, inside, widthPx });
const tap = (at: number): PressSignal[] => [down(at), up(at + 30)];
const keyDown = (at: number, { key = 'Enter', repeat = false } = {}): PressSignal => ({
  kind: 'key-down',
  key,
  at,
  repeat,
});
const keyUp = (at: number, key = 'Enter'): PressSignal => ({ kind: 'key-up', key, at });

describe('a tap', () => {
  test('acts as the finger is lifted, not before', () => {
    expect(actsOn([down(0)])).toBe(0);
    expect(actsOn([down(0), up(80)])).toBe(1);
  });

  test.each([0, 2000])('of %i ms counts once', (ms) => {
    expect(actsOn([down(0), up(ms)])).toBe(1);
  });

  test('that slides off is taken back, even if it comes back', () => {
    expect(actsOn([down(0), move(false), up(90, { inside: false })])).toBe(0);
    expect(actsOn([down(0), move(false), move(true), up(90)])).toBe(0);
  });

  test('that is lifted outside without a move in between is taken back', () => {
    expect(actsOn([down(0), up(90, { inside: false })])).toBe(0);
  });

  test('that moves inside the button counts', () => {
    expect(actsOn([down(0), move(true), up(90)])).toBe(1);
  });

  test('that the browser takes away to scroll is taken back', () => {
    expect(actsOn([down(0), { kind: 'cancelled', pointer: 1 }, up(90)])).toBe(0);
  });

  test('after one that was taken back counts at once', () => {
    expect(actsOn([down(0), { kind: 'cancelled', pointer: 1 }, ...tap(30)])).toBe(1);
  });

  test('of a second finger on the same button is part of the first', () => {
    expect(actsOn([down(0), down(20, { pointer: 2 }), up(60, { pointer: 2 }), up(80)])).toBe(1);
  });
});

describe('two taps of one button', () => {
  test.each([
    [40, 1],
    [119, 1],
    [120, 2],
    [121, 2],
    [180, 2],
  ])('%i ms apart count as %i', (apart, counted) => {
    expect(actsOn([...tap(0), ...tap(apart)])).toBe(counted);
  });

  test('are measured from touch-down to touch-down, however long the first was held', () => {
    expect(actsOn([down(0), up(100), ...tap(140)])).toBe(2);
  });

  test('twenty in a row, 140 ms apart, all count', () => {
    expect(actsOn(Array.from({ length: 20 }, (_, n) => tap(n * 140)).flat())).toBe(20);
  });

  test('a bounce does not put off the next tap', () => {
    expect(actsOn([...tap(0), ...tap(60), ...tap(121)])).toBe(2);
  });
});

describe('a button that ends something', () => {
  test.each([
    [121, 1],
    [699, 1],
    [700, 2],
    [701, 2],
  ])('tapped again %i ms after it acted acts %i times', (later, counted) => {
    expect(actsOn([down(0), up(50), ...tap(50 + later)], closing)).toBe(counted);
  });

  test('is deaf to keys and to screen readers for as long', () => {
    expect(actsOn([...tap(0), keyDown(600), keyUp(640), { kind: 'click', at: 700 }], closing)).toBe(1);
  });

  test('is not deaf before it acted', () => {
    expect(actsOn([down(0), { kind: 'cancelled', pointer: 1 }, ...tap(200)], closing)).toBe(1);
  });
});

describe('a palm, a sleeve, a rag', () => {
  test.each([
    [150, 1],
    [151, 0],
    [160, 0],
  ])('a contact %i px wide counts %i times', (widthPx, counted) => {
    expect(actsOn([down(0, { widthPx }), up(60)])).toBe(counted);
  });

  test('a contact that grows wide while it lies there is taken back', () => {
    expect(actsOn([down(0), move(true, 170), up(90)])).toBe(0);
  });

  test.each([
    [1, 1],
    [2, 1],
    [3, 0],
    [5, 0],
  ])('with %i fingers down a touch counts %i times', (fingers, counted) => {
    expect(actsOn([down(0, { fingers }), up(60)])).toBe(counted);
  });

  test('a third finger anywhere takes back what is held', () => {
    expect(actsOn([down(0), { kind: 'crowded' }, up(60)])).toBe(0);
  });

  test('a third finger does not take back a key', () => {
    expect(actsOn([keyDown(0), { kind: 'crowded' }, keyUp(60)])).toBe(1);
  });
});

describe('back in view', () => {
  test.each([
    [0, 0],
    [299, 0],
    [300, 1],
    [301, 1],
  ])('a touch %i ms after it counts %i times', (later, counted) => {
    expect(actsOn(tap(1000 + later), { ...calm, backInViewAt: 1000 })).toBe(counted);
  });

  test('a touch that began too soon does not count, however late it ends', () => {
    expect(actsOn([down(1100), up(1900)], { ...calm, backInViewAt: 1000 })).toBe(0);
  });
});

describe('keys', () => {
  test.each(['Enter', ' '])('"%s" acts as it is let go', (key) => {
    expect(actsOn([keyDown(0, { key })])).toBe(0);
    expect(actsOn([keyDown(0, { key }), keyUp(50, key)])).toBe(1);
  });

  test('a held key acts once', () => {
    const repeats = Array.from({ length: 30 }, (_, n) => keyDown(500 + 33 * n, { repeat: true }));
    expect(actsOn([keyDown(0), ...repeats, keyUp(1600)])).toBe(1);
  });

  test('a repeat that begins on this button, the key having gone down on another, does nothing', () => {
    expect(actsOn([keyDown(0, { repeat: true }), keyUp(40)])).toBe(0);
  });

  test('a key let go here that went down elsewhere does nothing', () => {
    expect(actsOn([keyUp(40)])).toBe(0);
  });

  test('a key whose button lost the focus does nothing', () => {
    expect(actsOn([keyDown(0), { kind: 'focus-lost' }, keyUp(40)])).toBe(0);
  });

  test('a finger goes on when the focus is lost', () => {
    expect(actsOn([down(0), { kind: 'focus-lost' }, up(40)])).toBe(1);
  });

  test.each([
    [119, 1],
    [120, 2],
  ])('twice within %i ms counts as %i: pedals bounce as well', (apart, counted) => {
    expect(actsOn([keyDown(0), keyUp(20), keyDown(apart), keyUp(apart + 20)])).toBe(counted);
  });
});

describe('clicks', () => {
  test('a bare one, as screen readers send it, acts', () => {
    expect(actsOn([{ kind: 'click', at: 10 }])).toBe(1);
  });

  test.each([
    [1, 0],
    [399, 0],
    [400, 1],
  ])('%i ms after a finger was lifted anywhere acts %i times', (later, counted) => {
    expect(actsOn([{ kind: 'click', at: 5000 + later }], { ...calm, liftedAt: 5000 })).toBe(counted);
  });

  test('while a finger is down it does nothing', () => {
    expect(actsOn([down(0), { kind: 'click', at: 300 }])).toBe(0);
  });
});

test('the limits are those of the rules for the bench screens', () => {
  expect(pressLimits).toMatchObject({
    bounceMs: 120,
    closingDeafMs: 700,
    wakeDeafMs: 300,
    widestContactPx: 150,
    handFingers: 3,
  });
});
