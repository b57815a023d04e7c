// @vitest-environment happy-dom
import { render, screen } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { goDeaf } from '../../../src/ui/press/deafness.ts';
import { takeKeys } from '../../../src/ui/press/page-keys.ts';
import { PressButton } from '../../../src/ui/press/press-button.tsx';

/** The page remembers keys for as long as it stands, so each test has a time of its own. */
let now = 0;
let acts: string[] = [];
let stop = (): void => undefined;
beforeEach(() => {
  now += 1_000_000;
  acts = [];
});
afterEach(() => stop());

const listenFor = (key: string, closing = false) => {
  stop = takeKeys({ takes: (each) => each === key, act: (each) => acts.push(each), closing });
};

const send = (
  kind: 'keydown' | 'keyup',
  key: string,
  at: number,
  to: EventTarget = document.body,
  repeat = false,
) => {
  const event = new KeyboardEvent(kind, { key, repeat, bubbles: true, cancelable: true });
  Object.defineProperty(event, 'timeStamp', { value: now + at });
  to.dispatchEvent(event);
  return event;
};

const pressed = (
  key: string,
  at: number,
  { to, upAfter = 60 }: { to?: EventTarget; upAfter?: number } = {},
) => [send('keydown', key, at, to), send('keyup', key, at + upAfter, to)];

describe('with the focus on a button', () => {
  const focused = () => {
    render(<PressButton label="Undo" onAct={() => acts.push('the button')} />);
    const button = screen.getByRole('button');
    button.focus();
    return button;
  };

  test.each(['Enter', ' ', 'PageDown'])('a taught “%s” does its own act alone', (key) => {
    listenFor(key);
    const [down, up] = pressed(key, 0, { to: focused() });
    expect(acts).toEqual([key]);
    expect([down?.defaultPrevented, up?.defaultPrevented]).toEqual([true, true]);
  });

  test('its repeats do not reach the button either', () => {
    listenFor('Enter');
    const button = focused();
    for (const at of [0, 500, 533, 566]) send('keydown', 'Enter', at, button);
    send('keyup', 'Enter', 600, button);
    expect(acts).toEqual(['Enter']);
  });

  test('Enter and space that were not taught press the button', () => {
    listenFor('PageDown');
    const button = focused();
    pressed('Enter', 0, { to: button });
    pressed(' ', 500, { to: button });
    expect(acts).toEqual(['the button', 'the button']);
  });
});

test('a key that ends something is deaf for 700 ms after it acted', () => {
  listenFor('n', true);
  for (const at of [0, 300, 560, 720]) pressed('n', at);
  expect(acts).toEqual(['n', 'n']);
});

test('a key that is held soon after a short press of it counts once more, when its repeats begin at once, too', () => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  listenFor('PageDown');
  pressed('PageDown', 0, { upAfter: 10 });
  send('keydown', 'PageDown', 300);
  for (const at of [330, 360, 390]) send('keydown', 'PageDown', at, document.body, true);
  vi.advanceTimersByTime(500);
  expect(acts).toEqual(['PageDown', 'PageDown']);
  vi.useRealTimers();
});

test('a pedal that goes on to pulse while it is held counts once, and two presses of it count twice', () => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  listenFor('PageDown');
  const pulse = (at: number) => pressed('PageDown', at, { upAfter: 10 });
  for (const at of [0, 500, 533, 566]) pulse(at);
  vi.advanceTimersByTime(500);
  expect(acts).toEqual(['PageDown']);
  pulse(1000);
  expect(acts).toEqual(['PageDown']);
  vi.advanceTimersByTime(120);
  expect(acts).toEqual(['PageDown', 'PageDown']);
  pulse(1500);
  stop();
  vi.advanceTimersByTime(120);
  expect(acts).toEqual(['PageDown', 'PageDown']);
  vi.useRealTimers();
});

test('a key held from one screen to the next counts once', () => {
  listenFor('n');
  send('keydown', 'n', 0);
  stop();
  listenFor('n');
  for (const at of [400, 433, 466]) send('keydown', 'n', at);
  expect(acts).toEqual(['n']);
});

test.each(['ctrlKey', 'metaKey', 'altKey'])('with %s held it is left to the browser', (modifier) => {
  listenFor('1');
  const event = new KeyboardEvent('keydown', { key: '1', cancelable: true, [modifier]: true });
  dispatchEvent(event);
  expect([acts, event.defaultPrevented]).toEqual([[], false]);
});

test('a key typed into a field is not for the page, nor is any while a sheet is laid over it', () => {
  listenFor('1');
  const { rerender } = render(<input />);
  pressed('1', 0, { to: screen.getByRole('textbox') });
  rerender(<dialog open>Which flaw?</dialog>);
  pressed('1', 500, { to: screen.getByRole('dialog') });
  pressed('1', 1000);
  expect(acts).toEqual([]);
  rerender(<dialog>Which flaw?</dialog>);
  pressed('1', 1500);
  expect(acts).toEqual(['1']);
});

test('while the page is deaf no key counts, not even one that is still held when it hears again', () => {
  listenFor('1');
  const hearAgain = goDeaf();
  pressed('1', 0);
  send('keydown', '1', 900);
  hearAgain();
  send('keydown', '1', 1000);
  expect(acts).toEqual([]);
  send('keyup', '1', 1100);
  pressed('1', 1300);
  expect(acts).toEqual(['1']);
});

test('while the page is deaf a button with the focus hears no key and no click', () => {
  render(<PressButton label="Sand" onAct={() => acts.push('the button')} />);
  const button = screen.getByRole('button');
  button.focus();
  const hearAgain = goDeaf();
  pressed('Enter', 0, { to: button });
  button.click();
  hearAgain();
  expect(acts).toEqual([]);
  pressed('Enter', 500, { to: button });
  expect(acts).toEqual(['the button']);
});
