import { expect, test } from 'vitest';
import { type Bar, median, quantile, rowOf } from './row.ts';

const rowWith = (bar: Bar) =>
  rowOf({
    id: 'tap',
    work: 'one tap',
    unit: 'ms',
    figures: { ours: [10, 11, 30], limit: [9, 10, 27], Slow: [100, 121, 270] },
    bars: [bar],
  });

test.each<[Bar, boolean]>([
  [{ kind: 'at-most-times', times: 1.12, of: 'limit' }, true],
  [{ kind: 'at-most-times', times: 1.11, of: 'limit' }, false],
  [{ kind: 'times-less', times: 10, than: 'Slow' }, true],
  [{ kind: 'times-less', times: 10.1, than: 'Slow' }, false],
  [{ kind: 'at-most-more', more: 1, than: 'limit' }, true],
  [{ kind: 'at-most-more', more: 0.9, than: 'limit' }, false],
  [{ kind: 'at-most', value: 11 }, true],
  [{ kind: 'at-most', value: 10.9 }, false],
])('a row is held against its bar round by round: %o is met: %s', (bar, met) => {
  const row = rowWith(bar);
  expect(row.ok).toBe(met);
  expect(row.missed).toEqual(met ? [] : row.bar);
});

test('a row gives medians, ratios of the rounds, and the least and the most of ours', () => {
  expect(rowWith({ kind: 'at-most', value: 1 })).toMatchObject({
    ours: 11,
    limit: 10,
    peers: { Slow: 121 },
    ratio: { limit: 10 / 9, Slow: 10 },
    spread: [10, 30],
    rounds: 3,
  });
});

test('a bar that names a figure nobody measured is an error', () => {
  expect(() => rowWith({ kind: 'at-most-times', times: 2, of: 'Fast' })).toThrow('no figure named Fast');
});

test('half the figures lie on either side of the median, and a share of them at or below a quantile', () => {
  expect([median([3, 1, 2]), median([4, 1, 2, 3])]).toEqual([2, 2.5]);
  const hundred = Array.from({ length: 100 }, (_, at) => 100 - at);
  expect([quantile(hundred, 0.95), quantile([7], 0.95), quantile([1, 2], 0.5)]).toEqual([95, 7, 1]);
});
