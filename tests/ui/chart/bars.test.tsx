// @vitest-environment happy-dom
import { fireEvent, render, screen } from '@testing-library/preact';
import { describe, expect, test } from 'vitest';
import { DifferenceBar } from '../../../src/ui/chart/difference-bar.tsx';
import { ParetoBars, type ParetoRow } from '../../../src/ui/chart/pareto-bars.tsx';

const part = (name: string) => screen.getByTestId('bar').querySelector(`.${name}`);

describe('a difference', () => {
  const shown = (value: number, low: number, high: number) =>
    render(
      <DifferenceBar
        label="Jig"
        value={value}
        low={low}
        high={high}
        most={0.2}
        shown="so much"
        ends={{ below: 'fewer', above: 'more' }}
        testId="bar"
      />,
    );

  test.each([
    [0.1, '50%', '25%'],
    [-0.1, '25%', '25%'],
    [0, '50%', '0%'],
    [0.9, '50%', '50%'],
    [-0.9, '0%', '50%'],
  ])('of %d begins at %s of the bar and is %s long', (value, from, width) => {
    shown(value, value, value);
    expect(part('share-part')?.getAttribute('x')).toBe(from);
    expect(part('share-part')?.getAttribute('width')).toBe(width);
  });

  test('shows its interval from end to end', () => {
    shown(0, -0.1, 0.1);
    const [line] = part('share-interval')?.querySelectorAll('line') ?? [];
    expect([line?.getAttribute('x1'), line?.getAttribute('x2')]).toEqual(['25%', '75%']);
    expect(part('difference-point')).toBeNull();
  });

  test('an interval that reaches beyond the bar ends in a point there', () => {
    shown(0, -0.1, 0.3);
    expect([...screen.getByTestId('bar').querySelectorAll('.difference-point')]).toHaveLength(1);
    expect(part('difference-point')?.getAttribute('x')).toBe('100%');
  });

  test('is read out as its words', () => {
    shown(0.1, 0, 0.2);
    expect(screen.getByTestId('bar').textContent).toBe('Jigso muchfewermore');
  });
});

describe('what loses most', () => {
  const rows: readonly ParetoRow[] = [
    { id: 'tear', label: 'Torn grain', value: 8, shown: '8', running: 0.8, runningShown: '80 %' },
    { id: 'crack', label: 'Crack', value: 2, shown: '2', running: 1, runningShown: '100 %', detail: 'late' },
  ];

  test('stands as given, with its length and the running share', () => {
    render(<ParetoBars label="Flaws" rows={rows} most={8} />);
    const items = screen.getAllByRole('listitem');
    expect(items.map((item) => item.textContent)).toEqual(['Torn grain880 %', 'Crack late2100 %']);
    expect(items.map((item) => item.querySelector('.share-part')?.getAttribute('width'))).toEqual([
      '100%',
      '25%',
    ]);
    expect(items.map((item) => item.querySelector('.pareto-end')?.getAttribute('cx'))).toEqual([
      '80%',
      '100%',
    ]);
    expect(screen.queryByRole('button')).toBeNull();
  });

  test('can be picked row by row', () => {
    const picked: string[] = [];
    render(<ParetoBars label="Flaws" rows={rows} most={8} onPick={(id) => picked.push(id)} />);
    fireEvent.click(screen.getByRole('button', { name: /^Crack late/ }));
    expect(picked).toEqual(['crack']);
  });
});
