import { expect, test } from 'vitest';
import { eventWords } from '../../src/words/event-words.ts';
import { movesWords } from '../../src/words/shelf-move-words.ts';
import { lowered } from '../support/a-shop.ts';
import { aFullShelf, finish } from '../support/full-shelf.ts';
import { variant } from '../support/workshop.ts';

test('a move on the shelf is said with its price, several in one act in one sentence', () => {
  const shop = aFullShelf();
  const tray = shop.tray('ash-copper', 2);
  shop.flaw(tray, 'bore', { why: 'scratch', outcome: lowered, pieces: 2 });
  finish(shop, tray, { pieces: 2, grade: 'second', from: 'glue' });
  const its = { variant: variant['ash-copper'], from: 'shelf', shown: 0 } as const;
  const sale = shop.act({
    kind: 'move-on-shelf',
    to: 'sold',
    lines: [{ ...its, grade: 'first', pieces: 2, price: 3050 }],
  });
  expect(sale.map((event) => eventWords(event, shop.shop.registers))).toEqual([
    '2 pieces of ash with copper (firsts): on the shelf → sold, 30.50 each',
  ]);
  expect(movesWords(sale)).toBeUndefined();
  const listing = shop.act({
    kind: 'move-on-shelf',
    to: 'listed',
    lines: [
      { ...its, grade: 'first', pieces: 8, price: null },
      { ...its, grade: 'second', pieces: 1, price: null },
    ],
  });
  expect(movesWords(listing)).toBe('9 pieces of 2 kinds: now listed');
});
