import { describe, expect, test } from 'vitest';
import type { ShelfLine } from '../../../src/domain/command/command.ts';
import type { ShelfPlace } from '../../../src/domain/log/shelf-facts.ts';
import { blemishesOf, shelfRow, shelfStock } from '../../../src/domain/rollup/shelf-stock.ts';
import { aWorkshop, lowered, type TestShop } from '../../support/a-shop.ts';
import { aFullShelf } from '../../support/full-shelf.ts';
import { variant } from '../../support/workshop.ts';

const line = (pieces: number, more: Partial<ShelfLine> = {}): ShelfLine => ({
  ...{ variant: variant['ash-copper'], grade: 'first', from: 'shelf', pieces, shown: 0, price: null },
  ...more,
});
const firsts = ({ shop }: TestShop) => shelfRow(shop, { variant: variant['ash-copper'], grade: 'first' }).at;
const move = (shop: TestShop, to: ShelfPlace, ...lines: ShelfLine[]) =>
  shop.act({ kind: 'move-on-shelf', to, lines });

describe('finished pieces', () => {
  test('stand on the shelf until they are listed, sold, given away or kept', () => {
    const shop = aFullShelf();
    expect(firsts(shop)).toEqual({ shelf: 10, listed: 0, sold: 0, given: 0, kept: 0 });
    move(shop, 'listed', line(6));
    move(shop, 'sold', line(4, { from: 'listed', price: 4800 }));
    move(shop, 'given', line(1));
    move(shop, 'kept', line(1));
    move(shop, 'shelf', line(1, { from: 'listed' }));
    expect(firsts(shop)).toEqual({ shelf: 3, listed: 1, sold: 4, given: 1, kept: 1 });
    expect(shop.shop.shelf.takings.get(`${variant['ash-copper']}|first`)).toBe(4 * 4800);
  });

  test('are listed once: a second listing of the same pieces is refused', () => {
    const shop = aFullShelf();
    move(shop, 'listed', line(10));
    expect(shop.refusal({ kind: 'move-on-shelf', to: 'listed', lines: [line(1)] })).toEqual({
      kind: 'nothing-on-shelf',
    });
    expect(
      shop.refusal({ kind: 'move-on-shelf', to: 'sold', lines: [line(11, { from: 'listed' })] }),
    ).toEqual({
      kind: 'too-many',
      there: 10,
    });
  });

  test('come back when a sale is taken back, its takings too', () => {
    const shop = aFullShelf();
    const sale = move(shop, 'sold', line(2, { price: 4800 }));
    shop.undo(sale);
    expect(firsts(shop).shelf).toBe(10);
    expect(shop.shop.shelf.takings.size).toBe(0);
  });

  test('that come back from a buyer take back what they brought', () => {
    const shop = aFullShelf();
    move(shop, 'sold', line(2, { price: 4800 }));
    move(shop, 'shelf', line(1, { from: 'sold', price: 4800 }));
    expect(shop.shop.shelf.takings.get(`${variant['ash-copper']}|first`)).toBe(4800);
  });

  test('of several kinds move in one act or not at all', () => {
    const shop = aFullShelf();
    const bad = line(1, { variant: variant['plum-copper'] });
    expect(shop.refusal({ kind: 'move-on-shelf', to: 'listed', lines: [line(3), bad] })).toEqual({
      kind: 'nothing-on-shelf',
    });
    expect(shop.refusal({ kind: 'move-on-shelf', to: 'listed', lines: [] })).toEqual({
      kind: 'nothing-on-shelf',
    });
    expect(firsts(shop).listed).toBe(0);
  });

  test('a piece in the hand is not refused because another tablet was quicker', () => {
    const shop = aFullShelf();
    move(shop, 'listed', line(10));
    move(shop, 'sold', line(1, { shown: 10 }));
    expect(firsts(shop).shelf).toBe(-1);
    expect(shelfStock(shop.shop)).toHaveLength(1);
  });

  test.each([0, -1, 1.5, Number.NaN])('%d pieces are refused', (pieces) => {
    const shop = aFullShelf();
    expect(shop.refusal({ kind: 'move-on-shelf', to: 'sold', lines: [line(pieces)] }).kind).toBe('number');
  });
});

test('blemishes are what pieces were lowered for, the most frequent first', () => {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 10);
  shop.flaw(tray, 'bore', { why: 'scratch', outcome: lowered });
  shop.flaw(tray, 'bore', { why: ['gap', 'catch'], outcome: lowered, pieces: 2 });
  const slip = shop.flaw(tray, 'bore', { why: 'blown', outcome: lowered, pieces: 5 });
  shop.undo(slip);
  expect(blemishesOf(shop.shop, variant['ash-copper'])).toEqual([
    { reason: 'gap', pieces: 2 },
    { reason: 'catch', pieces: 2 },
    { reason: 'scratch', pieces: 1 },
  ]);
});
