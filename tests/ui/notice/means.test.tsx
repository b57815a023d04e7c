// @vitest-environment happy-dom
import { fireEvent, render, screen } from '@testing-library/preact';
import { expect, test } from 'vitest';
import { Means } from '../../../src/ui/notice/means.tsx';

const shown = () =>
  render(
    <Means label="What this means" testId="means">
      Of ten begun, nine were good at once.
    </Means>,
  );
const line = () => document.getElementById(screen.getByTestId('means').getAttribute('aria-controls') ?? '');

test('what a figure means is shown by a tap, and put away by another', () => {
  shown();
  const button = screen.getByRole('button', { name: 'What this means' });
  expect(line()?.hidden).toBe(true);
  expect(button.getAttribute('aria-expanded')).toBe('false');
  fireEvent.click(button);
  expect(line()?.hidden).toBe(false);
  expect(line()?.textContent).toBe('Of ten begun, nine were good at once.');
  expect(button.getAttribute('aria-expanded')).toBe('true');
  fireEvent.click(button);
  expect(line()?.hidden).toBe(true);
});

test('the line follows its button, where a screen reader goes next', () => {
  shown();
  expect(screen.getByTestId('means').nextElementSibling).toBe(line());
});
