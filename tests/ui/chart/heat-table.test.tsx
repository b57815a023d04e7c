// @vitest-environment happy-dom
import { fireEvent, render, screen, within } from '@testing-library/preact';
import { expect, test } from 'vitest';
import { heatOf } from '../../../src/ui/chart/heat-of.ts';
import { type HeatCell, HeatTable } from '../../../src/ui/chart/heat-table.tsx';

const rows = [
  { id: 'ash', label: 'Ash' },
  { id: 'yew', label: 'Yew' },
];
const cols = [
  { id: 'turn', label: 'Turn' },
  { id: 'sand', label: 'Sand' },
];
const shares: Readonly<Record<string, number>> = { 'ash/turn': 0.1, 'ash/sand': 0, 'yew/turn': 0.4 };
const cell = (row: string, col: string): HeatCell | null => {
  const share = shares[`${row}/${col}`];
  if (share === undefined) return null;
  return { share, shown: `${100 * share} %`, detail: 'of 10', name: `${row} at ${col}: ${100 * share} %` };
};
const shown = (more: object = {}) =>
  render(
    <HeatTable caption="Flaws" corner="Wood" rows={rows} cols={cols} cell={cell} most={0.2} {...more} />,
  );

test.each([
  [0, 0],
  [0.001, 1],
  [0.04, 1],
  [0.041, 2],
  [0.2, 5],
  [0.9, 5],
])('a share of %d is as hot as step %i where a fifth is the most', (share, step) => {
  expect(heatOf(share, 0.2)).toBe(step);
});

test('nothing is hot where nothing can be', () => {
  expect(heatOf(0.1, 0)).toBe(0);
});

test('is a table with a head for each row and column', () => {
  shown();
  const table = screen.getByRole('table', { name: 'Flaws' });
  expect(
    within(table)
      .getAllByRole('columnheader')
      .map((head) => head.textContent),
  ).toEqual(['Wood', 'Turn', 'Sand']);
  expect(
    within(table)
      .getAllByRole('rowheader')
      .map((head) => head.textContent),
  ).toEqual(['Ash', 'Yew']);
});

test('a cell is as long in its bar as it is hot, up to the most', () => {
  const { container } = shown();
  const cells = [...container.querySelectorAll('.heat-cell')];
  expect(cells.map((one) => one.getAttribute('data-heat'))).toEqual(['3', '0', '5']);
  expect(cells.map((one) => one.querySelector('.heat-length')?.getAttribute('width'))).toEqual([
    '50%',
    '0%',
    '100%',
  ]);
});

test('where row and column do not meet stands a dash, and no button', () => {
  shown({ onPick: () => undefined });
  const bare = screen.getAllByRole('cell').at(-1);
  expect(bare?.textContent).toBe('–');
  expect(screen.getAllByRole('button')).toHaveLength(3);
});

test('a cell is picked by its row and column, and says both', () => {
  const picked: string[] = [];
  shown({ onPick: (row: string, col: string) => picked.push(`${row}/${col}`) });
  fireEvent.click(screen.getByRole('button', { name: 'yew at turn: 40 %' }));
  expect(picked).toEqual(['yew/turn']);
});

test('cells that cannot be picked are read out once, by their whole name', () => {
  shown();
  expect(screen.queryByRole('button')).toBeNull();
  const [first] = screen.getAllByRole('cell');
  expect(first?.querySelector('.unseen')?.textContent).toBe('ash at turn: 10 %');
  expect(first?.querySelector('.heat-box')?.getAttribute('aria-hidden')).toBe('true');
});

test('its buttons are one stop of the Tab key, and arrow keys lead from one to the next that is there', () => {
  shown({ onPick: () => undefined });
  const [first, right, below] = screen.getAllByRole('button');
  if (!first || !right || !below) throw new Error('there are three buttons');
  const stops = () => screen.getAllByRole('button').map(({ tabIndex }) => tabIndex);
  expect(stops()).toEqual([0, -1, -1]);
  first.focus();
  for (const [key, reached] of [
    ['ArrowRight', right],
    ['ArrowRight', right],
    // Nothing is below it.
    ['ArrowDown', right],
    ['a', right],
    ['ArrowLeft', first],
    ['ArrowDown', below],
  ] as const) {
    if (document.activeElement) fireEvent.keyDown(document.activeElement, { key });
    expect(document.activeElement).toBe(reached);
  }
  expect(stops()).toEqual([-1, -1, 0]);
});
