import { expect, test } from 'vitest';
import { type Held, judgeTaps, type Tap, type TapKind } from './tap-ledger.ts';

const held = (...taps: readonly (TapKind | null)[]): Held[] =>
  taps.map((tap, index) => ({ key: `a/${index + 1}`, text: `event ${index + 1}`, tap }));
const tapped = (...kinds: readonly TapKind[]): Tap[] => kinds.map((kind) => ({ kind, acknowledged: true }));
const unsaved = (kind: TapKind): Tap => ({ kind, acknowledged: false });
const sound = { lost: 0, doubled: 0 };

test('every acknowledged tap there once is neither lost nor doubled, whatever else the log says', () => {
  const now = held(null, 'pass', 'undo', 'mended', null);
  expect(judgeTaps({ before: now.slice(0, 1), now, taps: tapped('pass', 'undo', 'mended') })).toEqual(sound);
});

test('a tap that was not acknowledged may be there or not', () => {
  const taps = [...tapped('pass', 'mended'), unsaved('pass')];
  expect(judgeTaps({ before: [], now: held('pass', 'mended'), taps })).toEqual(sound);
  expect(judgeTaps({ before: [], now: held('pass', 'mended', 'pass'), taps })).toEqual(sound);
});

test('an acknowledged tap without an event is lost', () => {
  expect(judgeTaps({ before: [], now: held('pass'), taps: tapped('pass', 'pass') }).lost).toBe(1);
  expect(judgeTaps({ before: [], now: [], taps: tapped('pass', 'undo') }).lost).toBe(2);
});

test('taps that stand in another order than they were tapped are lost, too', () => {
  expect(judgeTaps({ before: [], now: held('undo', 'pass'), taps: tapped('pass', 'undo') }).lost).toBe(1);
});

test('an event that was there before and is gone, or reads otherwise, is lost', () => {
  const [first, second] = held('pass', 'pass');
  if (!first || !second) throw new Error('two events were made');
  expect(judgeTaps({ before: [first, second], now: [second], taps: [] }).lost).toBe(1);
  const changed = { ...second, text: 'another' };
  expect(judgeTaps({ before: [first, second], now: [first, changed], taps: [] }).lost).toBe(1);
});

test('an event that no tap accounts for is doubled', () => {
  expect(judgeTaps({ before: [], now: held('pass', 'pass'), taps: tapped('pass') }).doubled).toBe(1);
  expect(judgeTaps({ before: [], now: held('undo', 'pass'), taps: tapped('pass') }).doubled).toBe(1);
  const [twice] = held('pass');
  expect(judgeTaps({ before: [], now: twice ? [twice, twice] : [], taps: tapped('pass', 'pass') })).toEqual({
    lost: 0,
    doubled: 1,
  });
});
