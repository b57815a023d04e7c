// @vitest-environment happy-dom
import { render, screen } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { beforeEach, expect, test } from 'vitest';
import { Stepper } from '../../../src/ui/entry/stepper.tsx';
import { keyAt, pressAt } from '../press/press-at.ts';

let now = 0;
beforeEach(() => {
  now += 1_000_000;
});

const tap = (name: string): void => {
  now += 1000;
  pressAt(screen.getByRole('button', { name }), now);
};

const Bad = ({ start }: { start: string }) => {
  const [typed, setTyped] = useState(start);
  return (
    <Stepper
      label="Bad ones"
      typed={typed}
      onTyped={setTyped}
      least={0}
      most={24}
      refusal={({ why }) => (why === 'above' ? 'Only 24 in this tray.' : `Refused: ${why}`)}
      minusLabel="Fewer"
      plusLabel="More"
      pad={{ openLabel: 'Type', eraseLabel: 'Erase', closeLabel: 'Done' }}
    />
  );
};

const number = (): HTMLElement => screen.getByRole('group').querySelector('output') ?? document.body;
const reason = (): string | undefined =>
  document.getElementById(number().getAttribute('aria-describedby') ?? '')?.textContent ?? undefined;

test('an untouched count shows a dash, a counted nothing shows zero', () => {
  render(<Bad start="" />);
  expect(number().textContent).toBe('–');
  tap('More');
  expect(number().textContent).toBe('1');
  tap('Fewer');
  expect(number().textContent).toBe('0');
  expect(reason()).toBeUndefined();
});

test('one too many stays as it is, with the reason beside it, until it is mended', () => {
  render(<Bad start="24" />);
  tap('More');
  expect(number().textContent).toBe('25');
  expect(reason()).toBe('Only 24 in this tray.');
  tap('Fewer');
  expect(number().textContent).toBe('24');
  expect(reason()).toBeUndefined();
});

test('below nothing is refused too', () => {
  render(<Bad start="0" />);
  tap('Fewer');
  expect(number().textContent).toBe('-1');
  expect(reason()).toBe('Refused: below');
});

test('what is no number stands until it is mended', () => {
  render(<Bad start="2x" />);
  expect(reason()).toBe('Refused: not-a-number');
  tap('More');
  expect(number().textContent).toBe('2x');
});

test('the pad opens from it, writes into it and closes', () => {
  render(<Bad start="3" />);
  tap('Type');
  expect(screen.getByRole('dialog', { name: 'Bad ones' })).toBeTruthy();
  keyAt(screen.getByRole('dialog'), now + 100, { type: 'keydown', key: '1' });
  tap('Done');
  expect(screen.queryByRole('dialog')).toBeNull();
  expect(number().textContent).toBe('31');
  expect(reason()).toBe('Only 24 in this tray.');
});
