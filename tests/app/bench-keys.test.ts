import { expect, test } from 'vitest';
import { keysOf, teachKey, usualKeys } from '../../src/app/bench-keys.ts';
import { benchActs, type StationFact } from '../../src/domain/set-up/facts.ts';

const untaught: Pick<StationFact, 'keys'> = { keys: [] };

test('the keys 1 to 8 are pass, six flaws and the next tray; Backspace takes back, 0 pauses', () => {
  expect(keysOf(undefined)).toEqual(usualKeys);
  expect(benchActs.map((act) => usualKeys[act])).toEqual([
    ...['1', '2', '3', '4', '5', '6', '7', '8'],
    'Backspace',
    '0',
  ]);
});

test('an act that was taught a key has that one, and the others keep theirs', () => {
  const keys = keysOf({ keys: [{ act: 'pass', key: 'PageDown' }] });
  expect(keys).toEqual({ ...usualKeys, pass: 'PageDown' });
});

test('a pedal that sends PageDown can be taught to pass, and taught something else later', () => {
  const first = teachKey(untaught, { act: 'pass', key: 'PageDown' });
  expect(first).toEqual({ kind: 'taught', keys: [{ act: 'pass', key: 'PageDown' }] });
  if (first.kind !== 'taught') throw new Error('not taught');
  expect(teachKey(first, { act: 'pass', key: 'F13' })).toEqual({
    kind: 'taught',
    keys: [{ act: 'pass', key: 'F13' }],
  });
});

test('a key that does another act is refused, whether that act has it as usual or was taught it', () => {
  expect(teachKey(untaught, { act: 'next', key: '1' })).toEqual({ kind: 'taken', by: 'pass' });
  const taught = { keys: [{ act: 'undo' as const, key: 'z' }] };
  expect(teachKey(taught, { act: 'pass', key: 'z' })).toEqual({ kind: 'taken', by: 'undo' });
});

test('a usual key is free for another act once its own act was taught another', () => {
  const taught = { keys: [{ act: 'pass' as const, key: 'Enter' }] };
  expect(teachKey(taught, { act: 'next', key: '1' })).toEqual({
    kind: 'taught',
    keys: [...taught.keys, { act: 'next', key: '1' }],
  });
});

test('of Enter and space one is left to press the button that has the focus', () => {
  const taught = { keys: [{ act: 'pass' as const, key: 'Enter' }] };
  expect(teachKey(taught, { act: 'undo', key: ' ' })).toEqual({ kind: 'needed' });
  expect(teachKey(taught, { act: 'pass', key: ' ' })).toEqual({
    kind: 'taught',
    keys: [{ act: 'pass', key: ' ' }],
  });
});

test('an act that is taught its usual key again is as if it had never been taught', () => {
  expect(teachKey({ keys: [{ act: 'pass', key: 'Enter' }] }, { act: 'pass', key: '1' })).toEqual({
    kind: 'taught',
    keys: [],
  });
  expect(teachKey(untaught, { act: 'pass', key: '1' })).toEqual({ kind: 'taught', keys: [] });
});

test.each([
  'Tab',
  'Escape',
  'Shift',
  'Control',
  'Alt',
  'Meta',
  'F5',
  'F12',
  'Dead',
  'BrowserBack',
  '',
  'x'.repeat(33),
])('the key “%s” is left to the browser and the system', (key) => {
  expect(teachKey(untaught, { act: 'pass', key })).toEqual({ kind: 'unfit' });
});
