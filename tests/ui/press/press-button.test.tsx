// @vitest-environment happy-dom
import { render, screen } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { beforeEach, describe, expect, test } from 'vitest';
import { PressButton, type PressButtonProps } from '../../../src/ui/press/press-button.tsx';
import { cancelAt, clickAt, downAt, keyAt, moveAt, pressAt, upAt } from './press-at.ts';

/** The button and how often it acted. The page remembers lifted fingers, so each test has a time of its own. */
let now = 0;
beforeEach(() => {
  now += 1_000_000;
});

const shown = (props: Partial<PressButtonProps> = {}) => {
  const counted = { acts: 0 };
  render(
    <PressButton
      label="Pass"
      {...props}
      onAct={() => {
        counted.acts += 1;
      }}
    />,
  );
  return { button: screen.getByRole('button'), counted };
};

describe('with a finger', () => {
  test('one tap is one act, although the browser adds a click', () => {
    const { button, counted } = shown();
    pressAt(button, now);
    expect(counted.acts).toBe(1);
  });

  test('looks pressed from touch-down until it is let go', () => {
    const { button } = shown();
    expect(button.hasAttribute('data-held')).toBe(false);
    downAt(button, now);
    expect(button.hasAttribute('data-held')).toBe(true);
    upAt(button, now + 60);
    expect(button.hasAttribute('data-held')).toBe(false);
  });

  test('sliding off takes it back', () => {
    const { button, counted } = shown();
    downAt(button, now);
    moveAt(button, now + 30, { x: 500 });
    expect(button.hasAttribute('data-held')).toBe(false);
    upAt(button, now + 60, { x: 500 });
    expect(counted.acts).toBe(0);
  });

  test('a scroll takes it back', () => {
    const { button, counted } = shown();
    downAt(button, now);
    cancelAt(button, now + 30);
    expect(counted.acts).toBe(0);
    expect(button.hasAttribute('data-held')).toBe(false);
  });

  test('a palm that lies across or along is not felt', () => {
    const { button, counted } = shown();
    pressAt(button, now, { width: 160 });
    pressAt(button, now + 1000, { height: 160 });
    expect(counted.acts).toBe(0);
  });

  test('a third finger elsewhere on the screen takes it back', () => {
    const { button, counted } = shown();
    downAt(document.body, now, { pointer: 7 });
    downAt(button, now + 5);
    downAt(document.body, now + 10, { pointer: 8 });
    expect(button.hasAttribute('data-held')).toBe(false);
    for (const pointer of [1, 7, 8]) upAt(pointer === 1 ? button : document.body, now + 50, { pointer });
    expect(counted.acts).toBe(0);
    pressAt(button, now + 1000);
    expect(counted.acts).toBe(1);
  });

  test('a button that ends something is deaf to the second tap', () => {
    const { button, counted } = shown({ closing: true });
    pressAt(button, now);
    pressAt(button, now + 400);
    pressAt(button, now + 800);
    expect(counted.acts).toBe(2);
  });

  test('the first touch after the app came back to view is not felt', () => {
    const { button, counted } = shown();
    const seen = new Event('visibilitychange');
    Object.defineProperty(seen, 'timeStamp', { value: now });
    document.dispatchEvent(seen);
    pressAt(button, now + 100);
    expect(counted.acts).toBe(0);
    pressAt(button, now + 400);
    expect(counted.acts).toBe(1);
  });

  test('another mouse button does nothing', () => {
    const { button, counted } = shown();
    downAt(button, now, { button: 2 });
    expect(button.hasAttribute('data-held')).toBe(false);
    expect(counted.acts).toBe(0);
  });
});

/** A button that gives way to a plain one when it acts. */
const Swap = ({ onOpen }: { onOpen: () => void }) => {
  const [over, setOver] = useState(false);
  return over ? (
    <button type="button" onClick={onOpen}>
      Under
    </button>
  ) : (
    <PressButton label="Over" onAct={() => setOver(true)} />
  );
};

test('what an act puts under the finger does not feel the click that follows', () => {
  let opened = 0;
  render(<Swap onOpen={() => (opened += 1)} />);
  const over = screen.getByRole('button');
  downAt(over, now);
  upAt(over, now + 40);
  clickAt(screen.getByText('Under'), now + 45);
  expect(opened).toBe(0);
  clickAt(screen.getByText('Under'), now + 900);
  expect(opened).toBe(1);
});

test.each([60, 1000])('the next tap, %i ms after an act whose click never came, is felt', (later) => {
  let opened = 0;
  render(<Swap onOpen={() => (opened += 1)} />);
  // The button is gone before the browser sends its click, so that nobody hears it.
  pressAt(screen.getByRole('button'), now);
  pressAt(screen.getByText('Under'), now + 40 + later);
  expect(opened).toBe(1);
});

describe('without a finger', () => {
  test.each(['Enter', ' '])('key "%s" acts once as it is let go, however long it is held', (key) => {
    const { button, counted } = shown();
    keyAt(button, now, { type: 'keydown', key });
    for (const n of [1, 2, 3]) keyAt(button, now + 200 * n, { type: 'keydown', key, repeat: true });
    expect(counted.acts).toBe(0);
    keyAt(button, now + 900, { type: 'keyup', key });
    expect(counted.acts).toBe(1);
  });

  test('other keys are left to the page', () => {
    const { button, counted } = shown();
    const key = new KeyboardEvent('keydown', { key: 'a', bubbles: true, cancelable: true });
    button.dispatchEvent(key);
    expect(key.defaultPrevented).toBe(false);
    expect(counted.acts).toBe(0);
  });

  test('the bare click of a screen reader acts', () => {
    const { button, counted } = shown();
    clickAt(button, now);
    expect(counted.acts).toBe(1);
  });
});

describe('what it says', () => {
  test('its name is its label and its detail', () => {
    shown({ detail: '11 left', icon: 'pass', keyHint: '1' });
    expect(screen.getByRole('button', { name: 'Pass 11 left' }).getAttribute('aria-keyshortcuts')).toBe('1');
  });

  test('a sign drawn on a key is shown but is no key name', () => {
    const { button } = shown({ keyHint: '⌫' });
    expect(button.textContent).toContain('⌫');
    expect(button.hasAttribute('aria-keyshortcuts')).toBe(false);
  });

  test('one that cannot be pressed says why, stays in reach and does nothing', () => {
    const { button, counted } = shown({ disabledReason: 'None left here' });
    expect(button.getAttribute('aria-disabled')).toBe('true');
    expect(button.hasAttribute('disabled')).toBe(false);
    const reason = document.getElementById(button.getAttribute('aria-describedby') ?? '');
    expect(reason?.textContent).toBe('None left here');
    pressAt(button, now);
    keyAt(button, now + 500, { type: 'keydown', key: 'Enter' });
    keyAt(button, now + 520, { type: 'keyup', key: 'Enter' });
    clickAt(button, now + 2000);
    expect(counted.acts).toBe(0);
  });

  test('one of several tells whether it is on', () => {
    const { button } = shown({ selected: true });
    expect(button.getAttribute('aria-pressed')).toBe('true');
  });
});

test('a tapped bench button leaves the focus where it was, a normal one may take it', () => {
  const { button } = shown({ size: 'bench' });
  const onBench = new MouseEvent('mousedown', { bubbles: true, cancelable: true });
  button.dispatchEvent(onBench);
  expect(onBench.defaultPrevented).toBe(true);
  render(<PressButton label="Elsewhere" onAct={() => undefined} />);
  const elsewhere = new MouseEvent('mousedown', { bubbles: true, cancelable: true });
  screen.getByRole('button', { name: 'Elsewhere' }).dispatchEvent(elsewhere);
  expect(elsewhere.defaultPrevented).toBe(false);
});
