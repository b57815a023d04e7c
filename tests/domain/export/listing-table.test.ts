import { expect, test } from 'vitest';
import { listingColumns } from '../../../src/domain/export/listing-columns.ts';
import { linesListedBy, linesListedNow, listingTable } from '../../../src/domain/export/listing-table.ts';
import { lowered, type TestShop } from '../../support/a-shop.ts';
import { aFullShelf, finish } from '../../support/full-shelf.ts';
import { batch, partFacts, variant } from '../../support/workshop.ts';

/** Ten firsts and two seconds of ash and copper, the seconds scratched or with a gap. */
function aShelf(): TestShop {
  const shop = aFullShelf();
  for (const set of partFacts) shop.set(set);
  const tray = shop.tray('ash-copper', 2);
  shop.flaw(tray, 'bore', { why: ['scratch', 'gap'], outcome: lowered });
  shop.flaw(tray, 'bore', { why: 'gap', outcome: lowered });
  finish(shop, tray, { pieces: 2, grade: 'second', from: 'glue' });
  return shop;
}

const its = { variant: variant['ash-copper'], shown: 0, price: null } as const;
const list = (shop: TestShop, first: number, second: number) =>
  shop.act({
    kind: 'move-on-shelf',
    to: 'listed',
    lines: [
      ...(first > 0 ? [{ ...its, grade: 'first', from: 'shelf', pieces: first } as const] : []),
      ...(second > 0 ? [{ ...its, grade: 'second', from: 'shelf', pieces: second } as const] : []),
    ],
  });

test('a listing sheet has a line a kind, with the columns in the order that was chosen', () => {
  const shop = aShelf();
  const listing = list(shop, 4, 2);
  const sheet = {
    lines: linesListedBy(shop.shop, listing),
    filesOf: () => ['ash-1.jpg', 'ash-2.jpg'],
    nameOf: ({ id }: { readonly id: string }) => id,
  };
  expect(listingTable(shop.shop, { ...sheet, columns: listingColumns })).toEqual({
    columns: listingColumns,
    rows: [
      ...[
        ['ash-copper', 'ash', 'copper-ferrule', 'first', 4, 32, null, 'ash-1.jpg; ash-2.jpg', batch.spring],
      ],
      ...[
        [
          'ash-copper',
          'ash',
          'copper-ferrule',
          'second',
          2,
          19,
          'gap; scratch',
          'ash-1.jpg; ash-2.jpg',
          batch.spring,
        ],
      ],
    ],
  });
  expect(listingTable(shop.shop, { ...sheet, columns: ['pieces', 'name'] }).rows).toEqual([
    [4, 'ash-copper'],
    [2, 'ash-copper'],
  ]);
});

test('what one act listed is told apart from all that is listed now', () => {
  const shop = aShelf();
  list(shop, 4, 0);
  const later = list(shop, 3, 1);
  expect(linesListedBy(shop.shop, later).map(({ grade, pieces }) => [grade, pieces])).toEqual([
    ['first', 3],
    ['second', 1],
  ]);
  expect(linesListedNow(shop.shop).map(({ grade, pieces }) => [grade, pieces])).toEqual([
    ['first', 7],
    ['second', 1],
  ]);
  shop.undo(later);
  expect(linesListedNow(shop.shop).map(({ pieces }) => pieces)).toEqual([4]);
});
