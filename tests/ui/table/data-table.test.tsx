// @vitest-environment happy-dom
import { fireEvent, render, screen, within } from '@testing-library/preact';
import { expect, test } from 'vitest';
import { type Column, DataTable } from '../../../src/ui/table/data-table.tsx';

interface Tray {
  code: string;
  pieces: number;
}

const trays: readonly Tray[] = [
  { code: 'C08R', pieces: 6 },
  { code: 'A17K', pieces: 24 },
  { code: 'D11F', pieces: 12 },
];
const columns: readonly Column<Tray>[] = [
  { key: 'code', head: 'Tray', cell: (tray) => tray.code },
  {
    key: 'pieces',
    head: 'Pieces',
    cell: (tray) => tray.pieces,
    numeric: true,
    sortBy: (tray) => tray.pieces,
  },
];
const codes = (): readonly (string | null)[] =>
  screen.getAllByRole('rowheader').map((cell) => cell.textContent);
const shown = (more: object = {}) =>
  render(<DataTable caption="Trays" columns={columns} rows={trays} rowKey={(tray) => tray.code} {...more} />);

test('has a caption, and stands as given until it is sorted', () => {
  shown();
  expect(screen.getByRole('table', { name: 'Trays' })).toBeTruthy();
  expect(codes()).toEqual(['C08R', 'A17K', 'D11F']);
});

test('is sorted by the head of a column, one way and the other, and says which', () => {
  shown();
  const head = screen.getByRole('columnheader', { name: 'Pieces' });
  expect(head.getAttribute('aria-sort')).toBe('none');
  fireEvent.click(within(head).getByRole('button'));
  expect(codes()).toEqual(['C08R', 'D11F', 'A17K']);
  expect(head.getAttribute('aria-sort')).toBe('ascending');
  fireEvent.click(within(head).getByRole('button'));
  expect(codes()).toEqual(['A17K', 'D11F', 'C08R']);
  expect(head.getAttribute('aria-sort')).toBe('descending');
});

test('a column without an order has no button', () => {
  shown();
  const head = screen.getByRole('columnheader', { name: 'Tray' });
  expect(within(head).queryByRole('button')).toBeNull();
  expect(head.hasAttribute('aria-sort')).toBe(false);
});

test('can begin sorted', () => {
  shown({ sorted: { key: 'pieces', way: 'descending' } });
  expect(codes()).toEqual(['A17K', 'D11F', 'C08R']);
});

test('a row is picked by the button in its first cell', () => {
  const picked: string[] = [];
  shown({ onPick: (tray: Tray) => picked.push(tray.code) });
  fireEvent.click(screen.getByRole('button', { name: 'D11F' }));
  expect(picked).toEqual(['D11F']);
});

test('without rows says so across the whole width', () => {
  shown({ rows: [], empty: 'No trays yet' });
  expect(screen.getByText('No trays yet').getAttribute('colspan')).toBe('2');
});

test('its frame can be scrolled with the keyboard', () => {
  shown();
  expect(screen.getByRole('group', { name: 'Trays' }).tabIndex).toBe(0);
});
