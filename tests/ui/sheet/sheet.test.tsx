// @vitest-environment happy-dom
/** What only a browser does, the focus kept inside and Escape, is looked at in the gallery's own run. */
import { render, screen } from '@testing-library/preact';
import { beforeEach, expect, test } from 'vitest';
import { Sheet } from '../../../src/ui/sheet/sheet.tsx';
import { pressAt } from '../press/press-at.ts';

let closed = 0;
beforeEach(() => {
  closed = 0;
});

const NewBatch = () => (
  <Sheet title="A new batch" closeLabel="Close" onClose={() => (closed += 1)} foot={<p>At the foot</p>}>
    <p>Inside</p>
  </Sheet>
);

test('is an open dialog named by its title, which has the focus', () => {
  render(<NewBatch />);
  const dialog = screen.getByRole('dialog', { name: 'A new batch' });
  expect(dialog.hasAttribute('open')).toBe(true);
  expect(document.activeElement?.textContent).toBe('A new batch');
  expect(dialog.textContent).toContain('At the foot');
});

test('asks to be closed by its button', () => {
  render(<NewBatch />);
  pressAt(screen.getByRole('button', { name: 'Close' }), 1000);
  expect(closed).toBe(1);
});

test('asks to be closed by Escape, and leaves it to its parent', () => {
  render(<NewBatch />);
  const cancel = new Event('cancel', { cancelable: true });
  screen.getByRole('dialog').dispatchEvent(cancel);
  expect(closed).toBe(1);
  expect(cancel.defaultPrevented).toBe(true);
});

test('tells its parent when the browser closed it by itself, but not when the parent took it away', () => {
  const shown = render(<NewBatch />);
  const dialog = screen.getByRole('dialog');
  dialog.dispatchEvent(new Event('close'));
  expect(closed).toBe(1);
  shown.unmount();
  dialog.dispatchEvent(new Event('close'));
  expect(closed).toBe(1);
});
