import { describe, expect, test } from 'vitest';
import { chartColumns, cursorAfter, pointName, reading } from '../../../src/ui/chart/chart-reading.ts';
import { someChart } from './some-chart.ts';

const band = { low: [50, null, 70], high: [70, null, 95], label: 'Likely' };

test('a point is read with every series and the band, and with a dash for what is not known', () => {
  const chart = someChart({ band });
  expect(reading(chart, 0)).toEqual({ at: 'w10', values: 'Good 60 %, Aim 80 %, Likely 50 % – 70 %' });
  expect(reading(chart, 1)).toEqual({ at: 'w20', values: 'Good –, Aim 80 %, Likely –' });
});

test('the table says the same as the reading', () => {
  const chart = someChart({ band });
  const said = chartColumns(chart).map(({ head, shown }) => `${head} ${shown(2)}`);
  expect(said.join(', ')).toBe(reading(chart, 2).values);
});

test('a flagged point is called so, where there is a word for it', () => {
  const flagged = [1];
  const chart = someChart({ flagged });
  expect(pointName(chart, 1)).toBe('w20');
  const named = someChart({ flagged, texts: { ...chart.texts, flagged: 'strange' } });
  expect([0, 1].map((index) => pointName(named, index))).toEqual(['w10', 'w20 (strange)']);
});

describe('a key takes the cursor', () => {
  test.each([
    ['ArrowRight', 3, 4],
    ['ArrowLeft', 3, 2],
    ['ArrowLeft', 0, 0],
    ['ArrowRight', 39, 39],
    ['PageDown', 3, 7],
    ['PageUp', 3, 0],
    ['Home', 3, 0],
    ['End', 3, 39],
    ['ArrowRight', undefined, 0],
    ['ArrowLeft', undefined, 39],
    ['Enter', 3, undefined],
  ])('%s from %s to %s of 40', (key, from, to) => {
    expect(cursorAfter(key, from, 40)).toBe(to);
  });
});
