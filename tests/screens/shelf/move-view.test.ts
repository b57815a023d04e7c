import { describe, expect, test } from 'vitest';
import type { ShelfRow } from '../../../src/domain/rollup/shelf-stock.ts';
import {
  asksPrice,
  likelyMove,
  type MoveDraft,
  placesWithPieces,
  readMove,
} from '../../../src/screens/shelf/move-view.ts';
import { belowZero, totals } from '../../../src/screens/shelf/shelf-view.ts';
import { variant } from '../../support/workshop.ts';

const row = (at: Partial<ShelfRow['at']>, grade: ShelfRow['grade'] = 'first'): ShelfRow => ({
  ...{ variant: variant['ash-copper'], grade, finished: 10 },
  at: { shelf: 0, listed: 0, sold: 0, given: 0, kept: 0, ...at },
});

describe('the move that is most likely meant', () => {
  test.each([
    ['a sale of what is listed', { shelf: 4, listed: 2 }, 'listed', 'sold'],
    ['a listing of what is on the shelf', { shelf: 4 }, 'shelf', 'listed'],
    ['a way back of what was kept', { kept: 1 }, 'kept', 'shelf'],
  ] as const)('is %s', (_what, at, from, to) => {
    expect(likelyMove([row(at)])).toEqual({ grade: 'first', from, to, pieces: '1', price: null });
  });

  test('is of the grade that has pieces, or of the one that was asked for', () => {
    const rows = [row({ shelf: -1 }), row({ shelf: 3 }, 'second')];
    expect(likelyMove(rows)?.grade).toBe('second');
    expect(likelyMove([row({ shelf: 2 }), row({ sold: 3 }, 'second')], 'second')).toMatchObject({
      grade: 'second',
      from: 'sold',
    });
  });

  test('is none where nothing is', () => {
    expect(likelyMove([row({ shelf: -1 }), row({}, 'second')])).toBeUndefined();
  });
});

test('a price is asked for where money changes hands, there or back', () => {
  const asked = (from: MoveDraft['from'], to: MoveDraft['to']) => asksPrice({ from, to });
  expect([asked('listed', 'sold'), asked('shelf', 'sold'), asked('sold', 'shelf')]).toEqual([
    true,
    true,
    true,
  ]);
  expect([asked('shelf', 'listed'), asked('shelf', 'given'), asked('kept', 'shelf')]).toEqual([
    false,
    false,
    false,
  ]);
});

describe('a move that was said', () => {
  const sale: MoveDraft = { grade: 'first', from: 'listed', to: 'sold', pieces: '2', price: null };
  const its = { row: row({ listed: 5 }), usual: 3200 };
  const line = { variant: variant['ash-copper'], grade: 'first', from: 'listed', pieces: 2, shown: 5 };

  test.each([
    ['has the usual price where nobody said another', {}, 3200],
    ['has the price that was typed', { price: '28,50' }, 2850],
    ['has no price where it was emptied', { price: '' }, null],
    ['has no price where nothing is sold', { to: 'given', price: '28' }, null],
  ] as const)('%s', (_what, part, price) => {
    expect(readMove({ ...sale, ...part }, its)).toEqual({ line: { ...line, price } });
  });

  test('says what is wrong with its count and its price', () => {
    expect(readMove({ ...sale, pieces: '0', price: 'dear' }, its)).toEqual({
      pieces: { kind: 'too-small', least: 1 },
      price: 'bad',
    });
    expect(readMove({ ...sale, pieces: '' }, its)).toEqual({ pieces: { kind: 'missing' } });
  });
});

test('pieces can be taken from where some are; a place below zero asks for a count', () => {
  const short = row({ shelf: -2, listed: 3, sold: 9 });
  expect(placesWithPieces(short)).toEqual(['listed', 'sold']);
  expect(belowZero(short)).toEqual(['shelf']);
});

test('all pieces are the sum of the rows', () => {
  expect(totals([row({ shelf: 4, sold: 6 }), row({ shelf: -1, kept: 11 }, 'second')])).toEqual({
    finished: 20,
    at: { shelf: 3, listed: 0, sold: 6, given: 0, kept: 11 },
  });
});
