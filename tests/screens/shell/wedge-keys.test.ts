// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { listenToWedge } from '../../../src/screens/shell/wedge-keys.ts';
import { goDeaf } from '../../../src/ui/press/deafness.ts';

let read: string[];
let heard: { readonly key: string; readonly at: number }[];
let stop: () => void;
let at = 1000;
const hear = (event: KeyboardEvent) => heard.push({ key: event.key, at: event.timeStamp });

beforeEach(() => {
  vi.useFakeTimers();
  read = [];
  heard = [];
  document.body.innerHTML =
    '<button>Save</button><input id="name" value="Ash"><textarea></textarea><select><option>A<option>C</select>';
  stop = listenToWedge((text) => read.push(text));
  addEventListener('keydown', hear);
});
afterEach(() => {
  stop();
  removeEventListener('keydown', hear);
  vi.useRealTimers();
});

function event(type: 'keydown' | 'keyup', key: string): KeyboardEvent {
  const made = new KeyboardEvent(type, { key, bubbles: true, cancelable: true });
  Object.defineProperty(made, 'timeStamp', { value: at });
  (document.activeElement ?? document.body).dispatchEvent(made);
  return made;
}

/** Presses a key after a pause (ms), types it into the field that has the focus, and lifts it. */
function press(key: string, { pause = 5, dwell = 1 } = {}): KeyboardEvent {
  at += pause;
  vi.advanceTimersByTime(pause);
  const down = event('keydown', key);
  const field = document.activeElement;
  const isField = field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement;
  if (isField && !down.defaultPrevented && key.length === 1) field.value += key;
  at += dwell;
  vi.advanceTimersByTime(dwell);
  event('keyup', key);
  return down;
}
const pressAll = (text: string, how?: { pause?: number; dwell?: number }) => {
  for (const key of text) press(key, how);
};
const keys = () => heard.map(({ key }) => key).join('');

test('a burst on a button is read, and its Enter does not press the button', () => {
  document.querySelector('button')?.focus();
  pressAll('A17R-CKWX');
  expect(press('Enter').defaultPrevented).toBe(true);
  expect(read).toEqual(['A17R-CKWX']);
  expect(keys()).toBe('');
});

test('keys that were held back in vain act later, as of when they were pressed', () => {
  press('A');
  press('1', { pause: 200 });
  expect(keys()).toBe('');
  const pressed = at - 1;
  vi.advanceTimersByTime(400);
  expect(keys()).toBe('A1');
  expect(heard.at(-1)?.at).toBe(pressed);
  expect(read).toEqual([]);
});

test('a letter that a hand presses acts as the finger lifts', () => {
  press('K', { dwell: 80 });
  expect(keys()).toBe('K');
});

test('what was held back acts before a field takes the next key', () => {
  press('A');
  document.querySelector('input')?.focus();
  press('x');
  expect(keys()).toBe('Ax');
});

describe('a burst in a field', () => {
  test.each(['input', 'textarea'])('leaves the %s as it was, and its form hears of it', (name) => {
    const field = document.querySelector<HTMLInputElement>(name);
    if (!field) throw new Error('the field is there');
    const before = field.value;
    let last: string | undefined;
    field.addEventListener('input', () => {
      last = field.value;
    });
    field.focus();
    pressAll('A17R-CKWX');
    expect(field.value).toBe(`${before}A17R-CKWX`);
    expect(press('Enter').defaultPrevented).toBe(true);
    expect([field.value, last]).toEqual([before, before]);
    expect(read).toEqual(['A17R-CKWX']);
  });

  test('leaves a list at what was chosen', () => {
    const list = document.querySelector('select');
    list?.focus();
    press('A');
    if (list) list.value = 'C';
    pressAll('17R-CKWX');
    press('Tab');
    expect(list?.value).toBe('A');
  });

  test('what a hand types stays, with its Enter', () => {
    const field = document.querySelector('input');
    field?.focus();
    pressAll('A17R', { pause: 120, dwell: 70 });
    expect(press('Enter', { pause: 120 }).defaultPrevented).toBe(false);
    expect(field?.value).toBe('AshA17R');
    expect(read).toEqual([]);
  });

  test('what one field began, another does not end', () => {
    document.querySelector('input')?.focus();
    pressAll('A17R-');
    document.querySelector('textarea')?.focus();
    pressAll('CKWX');
    press('Enter');
    expect(read).toEqual([]);
  });
});

test('keys with Ctrl, Alt or Meta are not for it', () => {
  const made = new KeyboardEvent('keydown', { key: 'a', ctrlKey: true, bubbles: true, cancelable: true });
  document.body.dispatchEvent(made);
  expect(made.defaultPrevented).toBe(false);
  expect(keys()).toBe('a');
});

test('while the screen is wiped a reader is not heard', () => {
  const hearAgain = goDeaf();
  pressAll('A17R-CKWX');
  press('Enter');
  hearAgain();
  expect(read).toEqual([]);
  pressAll('A17R-CKWX');
  press('Enter');
  expect(read).toEqual(['A17R-CKWX']);
});
