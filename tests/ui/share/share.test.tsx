// @vitest-environment happy-dom
import { render, screen } from '@testing-library/preact';
import { describe, expect, test } from 'vitest';
import { BarRow } from '../../../src/ui/share/bar-row.tsx';
import { ShareBar } from '../../../src/ui/share/share-bar.tsx';

const widthOf = (name: string): string | null | undefined =>
  screen.getByTestId('bar').querySelector(`.${name}`)?.getAttribute('width');
const ends = (): readonly (string | null)[] => {
  const line = screen.getByTestId('bar').querySelector('.share-interval line');
  return [line?.getAttribute('x1') ?? null, line?.getAttribute('x2') ?? null];
};

describe('a share', () => {
  test.each([
    [3, 6, '50%'],
    [0, 6, '0%'],
    [6, 6, '100%'],
    [0, 0, '0%'],
    [7, 6, '100%'],
    [-1, 6, '0%'],
  ])('of %i in %i is %s long', (part, whole, width) => {
    render(<ShareBar label="Yew" part={part} whole={whole} shown="so many" testId="bar" />);
    expect(widthOf('share-part')).toBe(width);
  });

  test('shows its interval from end to end, and none where none was computed', () => {
    const shown = render(
      <ShareBar label="Yew" part={3} whole={6} low={0.25} high={0.75} shown="3 of 6" testId="bar" />,
    );
    expect(ends()).toEqual(['25%', '75%']);
    shown.rerender(<ShareBar label="Yew" part={3} whole={6} shown="3 of 6" testId="bar" />);
    expect(ends()).toEqual([null, null]);
  });

  test('is read out as its words', () => {
    render(<ShareBar label="Yew" part={3} whole={6} shown="3 of 6" testId="bar" />);
    expect(screen.getByTestId('bar').textContent).toBe('Yew3 of 6');
  });
});

test.each([
  [20, 40, '50%'],
  [50, 40, '100%'],
  [5, 0, '0%'],
])('a bar of %i where %i is full is %s long', (value, most, width) => {
  render(<BarRow label="Sand" value={value} most={most} shown="so much" testId="bar" />);
  expect(widthOf('share-part')).toBe(width);
});
